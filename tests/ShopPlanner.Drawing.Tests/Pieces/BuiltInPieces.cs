using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>The built-in designs, worked out as they stand.</summary>
internal static class BuiltInPieces
{
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

    public static IEnumerable<string> Names =>
        Directory.GetFiles(Folder, "*.json").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal);

    public static Piece Read(string design, string? joint = null) =>
        DesignEvaluator.Evaluate(Joined(Document(design), joint), new Dictionary<string, string>()).Piece!;

    public static DesignDocument Document(string design) =>
        DesignJson.Read(File.ReadAllBytes(Path.Combine(Folder, design + ".json"))).Document!;

    /// <summary>A design that a test makes up.</summary>
    public static Piece Of(string json) =>
        DesignEvaluator
            .Evaluate(DesignJson.Read(System.Text.Encoding.UTF8.GetBytes(json)).Document!, new Dictionary<string, string>())
            .Piece!;

    private static DesignDocument Joined(DesignDocument document, string? joint) =>
        joint is null
            ? document
            : document with
            {
                Frame = document.Frame with { Members = document.Frame.Members.SetItem("joint", joint) },
            };

    private static string Folder => Path.Combine(Root, "wwwroot-assets", "designs");
}
