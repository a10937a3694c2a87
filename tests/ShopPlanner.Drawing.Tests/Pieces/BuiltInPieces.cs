using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>The built-in designs, worked out as they stand.</summary>
internal static class BuiltInPieces
{
    private const int Seed = 20261128;

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

    /// <summary>The design as it stands, then at values within its limits: at random, and one that takes the least of
    /// all.</summary>
    public static IEnumerable<(string Values, Piece Piece)> Varied(string design, int trials)
    {
        yield return ("as it stands", Read(design));
        var document = Document(design);
        var values = DesignValues.Of(document, trials, Seed).ToList();
        foreach (var one in values.Take(1).Concat(values.TakeLast(trials)))
            if (DesignEvaluator.Evaluate(document, one).Piece is { } piece)
                yield return (string.Join(", ", one.Select(set => $"{set.Key} {set.Value}")), piece);
    }

    private static DesignDocument Document(string design) =>
        DesignJson.Read(File.ReadAllBytes(Path.Combine(Folder, design + ".json"))).Document!;

    private static DesignDocument Joined(DesignDocument document, string? joint) =>
        joint is null
            ? document
            : document with
            {
                Frame = document.Frame with { Members = document.Frame.Members.SetItem("joint", joint) },
            };

    private static string Folder => Path.Combine(Root, "wwwroot-assets", "designs");
}
