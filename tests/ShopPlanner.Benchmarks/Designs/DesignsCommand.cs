using System.Diagnostics;
using System.Globalization;
using System.Text;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>designs [--runs N]</c>: reads designs, works them out, judges them, draws them for a page and writes them as a scene, warm,
/// and prints the mean of so many runs for each: those that come with the application, a cupboard of 60 pieces and a case of 500
/// that are made up. The last column goes from the document to the judged piece.
/// </summary>
public static class DesignsCommand
{
    private const int WarmRuns = 30;

    private static readonly Dictionary<string, string> Nothing = [];

    public static int Run(IReadOnlyList<string> words)
    {
        var runs = Options.ParseWithoutPath(words, ["runs"], []).Whole("runs", 200);
        Console.WriteLine(
            "| design | pieces | kinds | read ms | work out ms | judge ms | scene ms | isometric ms | front ms | exploded ms | "
                + "document to judged ms |"
        );
        Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
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
        var document = Read(name, json);
        var piece = WorkOut(document);
        var (read, work) = (Mean(() => DesignJson.Read(json), runs), Mean(() => WorkOut(document), runs));
        var (judge, scene) = (Mean(() => PieceJudge.Of(piece), runs), Mean(() => PieceGltf.Write(piece), runs));
        var all = Mean(() => PieceJudge.Of(WorkOut(DesignJson.Read(json).Document!)), runs);
        var pieces = piece.Parts.Sum(part => part.Quantity);
        Draw[] views = [PieceDrawings.Isometric, PieceDrawings.Front, PieceDrawings.Exploded];
        var drawn = views
            .Select(draw => Mean(() => SvgWriter.Write(draw(piece, DrawingRoom.PieceOnScreen), "p"), runs))
            .Select(mean => mean.ToString("0.00", CultureInfo.InvariantCulture));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {pieces} | {piece.Parts.Length} | {read:0.000} | {work:0.000} | {judge:0.000} | {scene:0.000} "
                + $"| {string.Join(" | ", drawn)} | {all:0.000} |"
        );
    }

    private delegate LineDrawing Draw(Piece piece, DrawingRoom room, string? highlight = null, PiecePicks? picks = null);

    internal static DesignDocument Read(string name, byte[] json) =>
        DesignJson.Read(json).Document ?? throw new InvalidOperationException(name + " cannot be read");

    internal static Piece WorkOut(DesignDocument document)
    {
        var evaluation = DesignEvaluator.Evaluate(document, Nothing);
        return evaluation.Piece ?? throw new InvalidOperationException(string.Join(Environment.NewLine, evaluation.Faults));
    }

    internal static double Mean<T>(Func<T> work, int runs)
    {
        for (var i = 0; i < WarmRuns; i++)
            work();
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < runs; i++)
            work();
        return watch.Elapsed.TotalMilliseconds / Math.Max(1, runs);
    }
}
