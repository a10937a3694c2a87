using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Under a drawing: the cuts to check off, in order, with tool and setting. What each cut gives carries its mark on the
/// drawing, its size too.</summary>
internal static class LayoutTable
{
    /// <summary>The table of a layout. It has no head: what its columns are is plain from the first.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="packet">The packet's unit: another one is named beside each figure.</param>
    /// <param name="isNarrow">Whether it stands beside its drawing.</param>
    public static Table Of(PacketLayout layout, LengthUnit packet, bool isNarrow) =>
        new(
            isNarrow
                ? [new("", 0.65), new("", 0.7, Anchor.End), new("", 2.5, Anchor.End), new("", 6.2)]
                : [new("", 0.4), new("", 0.55, Anchor.End), new("", 1.95, Anchor.End), new("", 7.1)],
            [.. Cuts(layout, packet)]
        )
        {
            HasHead = false,
        };

    // The store's cuts and those at home are listed apart.
    private static IEnumerable<ImmutableArray<Cell>> Cuts(PacketLayout layout, LengthUnit packet)
    {
        var (store, home) = (layout.Cuts.Where(c => c.ByStore).ToList(), layout.Cuts.Where(c => !c.ByStore).ToList());
        var homes = Rows(home, layout, packet);
        return store.Count == 0 ? homes : [Place("At the store"), .. Rows(store, layout, packet), Place("At home"), .. homes];
    }

    private static ImmutableArray<Cell> Place(string words) =>
        [Cell.Empty, Cell.Empty, Cell.Empty, new TextCell(words, Weight: Weight.Bold)];

    private static IEnumerable<ImmutableArray<Cell>> Rows(List<PacketCut> cuts, PacketLayout layout, LengthUnit packet) =>
        cuts.Select(
            (cut, i) => Row(cut, i > 0 && cut.Alike.Length > 0 && cut.Alike == cuts[i - 1].Alike, layout.Picture.Unit, packet)
        );

    private static ImmutableArray<Cell> Row(PacketCut cut, bool isAlike, LengthUnit unit, LengthUnit packet) =>
        [
            new TickCell(),
            new TextCell(Words.Of(cut.N), Weight: Weight.Medium),
            Figure(Setting(cut, unit, packet)),
            new TextCell($"{(isAlike ? cut.Piece : cut.Doing)}: {cut.Gives}.{After(cut.Shimmed)}{After(cut.Caution)}"),
        ];

    // "just under 21 3/16" is set smaller than the figure alone.
    private static TextCell Figure(string setting)
    {
        const int longest = 9;
        return new(setting, setting.Length > longest ? Blocks.TextSize : 11, Weight.Bold);
    }

    private static string After(string sentence) => sentence.Length > 0 ? $" {sentence}." : "";

    // The layout's own unit is named beside a figure where it is not the packet's.
    private static string Setting(PacketCut cut, LengthUnit unit, LengthUnit packet) =>
        cut.IsKerfOnly ? "kerf"
        : cut.ByStore ? Words.Of(cut.Setting, unit, packet)
        : Words.Setting(cut.Setting, cut.TakesOff, unit, packet);
}
