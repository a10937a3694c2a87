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
    /// <summary>The table of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="packet">The packet's unit: another one is named beside each figure.</param>
    public static Table Of(PacketLayout layout, LengthUnit packet) =>
        new(
            [
                new("", 0.45),
                new("Cut", 0.55, Anchor.End),
                new("Setting", 2.1, Anchor.End),
                new("What to do", 6.9),
            ],
            [.. Cuts(layout, packet)]
        );

    // The store's cuts and those at home are listed apart.
    private static IEnumerable<ImmutableArray<Cell>> Cuts(PacketLayout layout, LengthUnit packet)
    {
        var (store, home) = (layout.Cuts.Where(c => c.ByStore).ToList(), layout.Cuts.Where(c => !c.ByStore).ToList());
        var homes = home.Select(cut => Cut(cut, layout.Picture.Unit, packet));
        return store.Count == 0
            ? homes
            : [Place("At the store"), .. store.Select(cut => Cut(cut, layout.Picture.Unit, packet)), Place("At home"), .. homes];
    }

    private static ImmutableArray<Cell> Place(string words) =>
        [Cell.Empty, Cell.Empty, Cell.Empty, new TextCell(words, Weight: Weight.Bold)];

    private static ImmutableArray<Cell> Cut(PacketCut cut, LengthUnit unit, LengthUnit packet) =>
        [
            new TickCell(),
            new TextCell(Words.Of(cut.N), Weight: Weight.Medium),
            new TextCell(Setting(cut, unit, packet), 11, Weight.Bold),
            new TextCell($"{cut.Doing}: {cut.Gives}.{After(cut.Shimmed)}{After(cut.Caution)}"),
        ];

    private static string After(string sentence) => sentence.Length > 0 ? $" {sentence}." : "";

    // The layout's own unit is named beside a figure where it is not the packet's.
    private static string Setting(PacketCut cut, LengthUnit unit, LengthUnit packet) =>
        cut.IsKerfOnly ? "kerf"
        : cut.ByStore ? Words.Of(cut.Setting, unit, packet)
        : Words.Setting(cut.Setting, cut.TakesOff, unit, packet);
}
