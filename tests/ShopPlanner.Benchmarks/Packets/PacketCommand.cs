using System.Diagnostics;
using System.Globalization;
using System.Text;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Packets;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Packets;

namespace ShopPlanner.Benchmarks;

/// <summary><c>packet [--runs N]</c>: prints the packet of a project of at least 60 parts with all its sections, drawings included:
/// the first time, warm, what it takes of memory and on disk.</summary>
public static class PacketCommand
{
    private const int LeastParts = 60,
        UsualRuns = 5;
    private const string Design = "pantry-cupboard";
    private const double Mebi = 1024 * 1024;

    public static int Run(IReadOnlyList<string> words)
    {
        var runs = Options.ParseWithoutPath(words, ["runs"], []).Whole("runs", UsualRuns);
        var (document, request) = (
            DesignsCommand.BuiltIn().First(one => one.Item1 == Design).Item2,
            Enumerable.Range(1, 200).Select(FurnitureJobs.Of).First(one => one.Parts.Sum(part => part.Quantity) >= LeastParts)
        );
        var piece = DesignsCommand.WorkOut(DesignsCommand.Read(Design, Encoding.UTF8.GetBytes(document)));
        var plan = CutPlanner.Plan(request, new() { Time = TimeSpan.FromSeconds(1) });
        Console.WriteLine("| run | ms | MB allocated | MB at most | pages | kB |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- |");
        for (var run = 1; run <= runs; run++)
        {
            var (before, clock) = (GC.GetTotalAllocatedBytes(precise: true), Stopwatch.StartNew());
            var drawn = LoosePacket.Of(piece, WorkPlanner.Of(piece, WorkChoices.Usual), PaperSize.Letter, default);
            var cut = LoosePacket.Of(request, plan, piece.Name, PaperSize.Letter, default);
            var model = cut with
            {
                Pieces = drawn.Pieces,
                Work = drawn.Work,
                Supplies = drawn.Supplies,
                Sections = [.. PacketSections.All.Select(one => one.Section)],
            };
            using var file = new MemoryStream();
            PacketWriter.Write(model, file);
            clock.Stop();
            var allocated = GC.GetTotalAllocatedBytes(precise: true) - before;
            Console.WriteLine(
                Row(run, clock.Elapsed.TotalMilliseconds, allocated, PacketWriter.Pages(model).Length, file.Length)
            );
        }

        return 0;
    }

    private static string Row(int run, double milliseconds, long allocated, int pages, long bytes)
    {
        using var process = Process.GetCurrentProcess();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {run} | {milliseconds:0} | {allocated / Mebi:0} | {process.PeakWorkingSet64 / Mebi:0} | {pages} | {bytes / 1024.0:0} |"
        );
    }
}
