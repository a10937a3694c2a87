using System.Collections.Concurrent;
using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Tests;

/// <summary>The pages of the samples before they become a file, and the words on them.</summary>
internal static class PrintedPages
{
    private const string Hostile = "שלום 🪚 Überlanges_Wort_ohne_Ende <b>&amp;</b> \u202Egnirts e\u0301 ";

    private static readonly ConcurrentDictionary<string, Lazy<ImmutableArray<Page>>> Made = new(StringComparer.Ordinal);

    public static ImmutableArray<Page> Pages(string sample) =>
        Made.GetOrAdd(sample, one => new Lazy<ImmutableArray<Page>>(() => PacketWriter.Pages(Model(one)))).Value;

    /// <summary>A sample with every section.</summary>
    public static PacketModel Model(string sample) => Whole(Sample(sample));

    public static PacketModel Whole(PacketModel model) =>
        model with
        {
            Sections = [.. PacketSections.All.Select(one => one.Section)],
        };

    private static PacketModel Sample(string sample) =>
        sample switch
        {
            "letter" => PacketSamples.Cabinet(),
            "a4" => PacketSamples.Cabinet(PaperSize.A4),
            "many" => PacketSamples.Many(20),
            "hostile" => PacketSamples.Named(string.Concat(Enumerable.Repeat(Hostile, 5000 / Hostile.Length))),
            "word" => PacketSamples.Named(new string('W', 5000)),
            "millimetres" => PacketSamples.Metric(),
            "pieces" => PacketSamples.WithPieces(PaperSize.Letter),
            "work" => PacketSamples.WithWork(PaperSize.Letter),
            "work-a4" => PacketSamples.WithWork(PaperSize.A4),
            "pieces-a4" => PacketSamples.WithPieces(PaperSize.A4),
            "unplanned" => PacketSamples.Unplanned(),
            _ => PacketSamples.Empty(),
        };

    public static List<string> Words(Page page) => [.. page.Drawing.Leaves().OfType<Caption>().Select(c => c.Words)];

    public static string Running(IEnumerable<string> words) => string.Join(' ', words);
}
