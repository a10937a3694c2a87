using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>The built-in designs, read as the application reads them.</summary>
internal static class DesignFiles
{
    public static IEnumerable<string> Names =>
        Directory.GetFiles(Folder, "*.json").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal);

    public static string PathOf(string name) => Path.Combine(Folder, name + ".json");

    public static DesignDocument Read(string name)
    {
        var reading = DesignJson.Read(File.ReadAllBytes(PathOf(name)));
        Assert.Empty(reading.Faults);
        return reading.Document!;
    }

    /// <summary>The repository.</summary>
    public static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder!.FullName, "ShopPlanner.sln")))
                folder = folder.Parent;
            return folder.FullName;
        }
    }

    private static string Folder => Path.Combine(Root, "wwwroot-assets", "designs");
}
