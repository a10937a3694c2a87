using System.Diagnostics;
using System.Globalization;
using System.Text;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Packets.Labels;

namespace ShopPlanner.Benchmarks;

/// <summary><c>labels [--count N] [--runs N]</c>: prints so many labels with codes of a built-in piece on every kind of sheet,
/// cold and warm.</summary>
public static class LabelsCommand
{
    private const string Design = "post-and-rail-cabinet";

    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.ParseWithoutPath(words, ["count", "runs"], []);
        var (count, runs) = (options.Whole("count", 300), options.Whole("runs", 5));
        var (name, text) = DesignsCommand.BuiltIn().Single(one => one.Name == Design);
        var piece = DesignsCommand.WorkOut(DesignsCommand.Read(name, Encoding.UTF8.GetBytes(text)));
        var of = PartLabels.Of(piece);
        List<Label> labels =
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                    Label.For(of[i % of.Length], piece.Unit, piece.Name) with
                    {
                        Code = FormattableString.Invariant($"http://192.168.1.20:5080/bench/steps/{Guid.Empty}?part=A{i}"),
                    }
                ),
        ];
        Console.WriteLine("| sheet | labels | first ms | mean ms | kB |");
        Console.WriteLine("| --- | --- | --- | --- | --- |");
        foreach (var sheet in LabelSheets.All)
            Console.WriteLine(Row(sheet, labels, runs));
        return 0;
    }

    private static string Row(LabelSheet sheet, List<Label> labels, int runs)
    {
        var (first, bytes) = Print(sheet, labels);
        var mean = Enumerable.Range(0, runs).Average(_ => Print(sheet, labels).Time.TotalMilliseconds);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {sheet.Key} | {labels.Count} | {first.TotalMilliseconds:0} | {mean:0} | {bytes / 1024} |"
        );
    }

    private static (TimeSpan Time, long Bytes) Print(LabelSheet sheet, List<Label> labels)
    {
        var watch = Stopwatch.StartNew();
        using var file = new MemoryStream();
        LabelWriter.Write(labels, LabelPrint.On(sheet), "Labels", new DateOnly(2026, 11, 28), file);
        return (watch.Elapsed, file.Length);
    }
}
