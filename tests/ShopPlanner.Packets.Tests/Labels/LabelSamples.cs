using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Packets.Labels;

namespace ShopPlanner.Packets.Tests.Labels;

/// <summary>Invented labels.</summary>
internal static class LabelSamples
{
    /// <summary>Hints at all four edges, so that every edge has its line.</summary>
    public static readonly EdgeHints AllRound = new(["dado"], ["rabbet"], ["groove"], ["band"], []);

    /// <summary>Labels that are all alike but for their marks.</summary>
    public static List<Label> Many(int count) =>
        [
            .. Enumerable
                .Range(1, count)
                .Select(n => new Label($"Q{n}", "Side", "60″ × 11 ¼″ × ²³⁄₃₂″", "Bookcase") { Hints = AllRound }),
        ];

    /// <summary>The printed file.</summary>
    public static byte[] Print(IReadOnlyList<Label> labels, LabelPrint print)
    {
        using var file = new MemoryStream();
        LabelWriter.Write(labels, print, "Labels", new DateOnly(2026, 11, 28), file);
        return file.ToArray();
    }
}
