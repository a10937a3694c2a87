using System.Xml.Linq;

namespace ShopPlanner.Architecture.Tests;

/// <summary>The repository's own files, found by walking up from the test program.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static IEnumerable<string> Projects() =>
        Directory.EnumerateFiles(Root, "*.csproj", SearchOption.AllDirectories).Where(IsSource).Order();

    public static IEnumerable<string> Files(string pattern, params string[] folders) =>
        folders
            .Select(folder => Path.Combine(Root, folder))
            .Where(Directory.Exists)
            .SelectMany(folder => Directory.EnumerateFiles(folder, pattern, SearchOption.AllDirectories))
            .Where(IsSource);

    public static string Room(string project) => Path.GetFileNameWithoutExtension(project).Replace("ShopPlanner.", "");

    public static IEnumerable<string> References(string project, string element) =>
        XDocument.Load(project).Descendants(element).Select(item => (string)item.Attribute("Include")!);

    private static bool IsSource(string path) =>
        !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
        && !path.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal);

    private static string Find()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "ShopPlanner.sln")))
            folder =
                Path.GetDirectoryName(folder)
                ?? throw new InvalidOperationException("ShopPlanner.sln is in no folder above the tests");
        return folder;
    }
}
