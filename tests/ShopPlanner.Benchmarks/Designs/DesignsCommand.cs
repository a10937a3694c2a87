using System.Diagnostics;
using System.Globalization;
using System.Text;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>designs [--runs N]</c>: reads designs, works them out and writes them as a scene, warm, and prints the mean of so many runs
/// for each: those that come with the application, a cupboard of 60 pieces and a case of 500 that are made up.
/// </summary>
public static class DesignsCommand
{
    private const int WarmRuns = 30;

    private static readonly Dictionary<string, string> Nothing = [];

    public static int Run(IReadOnlyList<string> words)
    {
        var runs = Options.ParseWithoutPath(words, ["runs"], []).Whole("runs", 200);
        Console.WriteLine("| design | pieces | kinds | read ms | work out ms | scene ms |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- |");
        foreach (var (name, text) in BuiltIn().Concat(MadeUpDesigns.All()))
            Console.WriteLine(Row(name, Encoding.UTF8.GetBytes(text), runs));
        return 0;
    }

    internal static IEnumerable<(string Name, string Text)> BuiltIn()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ShopPlanner.sln")))
            folder = folder.Parent;
        if (folder is null)
            throw new UsageException("The designs are read from the repository: run the program from within it.");
        var designs = Path.Combine(folder.FullName, "wwwroot-assets", "designs");
        return Directory
            .GetFiles(designs, "*.json")
            .Order(StringComparer.Ordinal)
            .Select(path => (Path.GetFileNameWithoutExtension(path), File.ReadAllText(path)));
    }

    private static string Row(string name, byte[] json, int runs)
    {
        var document = DesignJson.Read(json).Document ?? throw new InvalidOperationException(name + " cannot be read");
        var piece = WorkOut(document);
        var (read, work) = (Mean(() => DesignJson.Read(json), runs), Mean(() => WorkOut(document), runs));
        var (scene, pieces) = (Mean(() => PieceGltf.Write(piece), runs), piece.Parts.Sum(part => part.Quantity));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {pieces} | {piece.Parts.Length} | {read:0.000} | {work:0.000} | {scene:0.000} |"
        );
    }

    private static Piece WorkOut(DesignDocument document)
    {
        var evaluation = DesignEvaluator.Evaluate(document, Nothing);
        return evaluation.Piece ?? throw new InvalidOperationException(string.Join(Environment.NewLine, evaluation.Faults));
    }

    private static double Mean<T>(Func<T> work, int runs)
    {
        for (var i = 0; i < WarmRuns; i++)
            work();
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < runs; i++)
            work();
        return watch.Elapsed.TotalMilliseconds / Math.Max(1, runs);
    }
}
