using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>What to ask for at the counter of each store that makes first cuts: by sizes, to be handed over.</summary>
internal static class StoreSawSection
{
    /// <summary>Adds the lists; nothing where no store cuts.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        foreach (
            var store in model.Layouts.Where(layout => layout.Cuts.Any(cut => cut.ByStore)).GroupBy(layout => layout.Store ?? "")
        )
            AddStore(flow, model, store.Key, [.. store]);
    }

    private static void AddStore(PageFlow flow, PacketModel model, string store, List<PacketLayout> layouts)
    {
        var name = store.Length == 0 ? "Cuts at the store" : "Cuts at the store: " + store;
        var table = new Table(
            [
                new("", 0.5),
                new("Board or sheet", 3.4),
                new("Cut", 0.6),
                new("Piece", 0.9),
                new("Direction", 1.6),
                new("Setting", 1.5, Anchor.End),
                new("", 0.1),
                new("You get", 4),
            ],
            [.. layouts.SelectMany(layout => Rows(layout, model))]
        );
        flow.Section(
            Words.Title(name),
            [Blocks.Paragraph(Ask(model), flow.Width) with { Keep = true }, .. table.Blocks(flow.Width)]
        );
    }

    private static string Ask(PacketModel model)
    {
        const string order =
            "Please cut in this order, and write the names (1a, 1b) on the pieces. Measure each cut on the piece named beside "
            + "it, always from the same end.";
        return model.StoreTolerance is { IsPositive: true } off
            ? $"{order} Up to {LengthFormat.WithUnit(off, model.Unit)} off is fine."
            : order;
    }

    private static IEnumerable<ImmutableArray<Cell>> Rows(PacketLayout layout, PacketModel model)
    {
        var cuts = layout.Cuts.Where(cut => cut.ByStore).ToList();
        var copies = layout.Copies > 1 ? $" — {Words.Of(layout.Copies)} like this" : "";
        return cuts.Select((cut, i) => Row(cut, i == 0 ? layout.Picture.Title + copies : "", layout.Picture.Unit, model.Unit));
    }

    private static ImmutableArray<Cell> Row(PacketCut cut, string what, LengthUnit unit, LengthUnit packet) =>
        [
            new TickCell(),
            new TextCell(what, Weight: Weight.Medium),
            new TextCell(Words.Of(cut.N), Weight: Weight.Medium),
            new TextCell(cut.Piece),
            new TextCell(cut.Way == CutWay.Crosscut ? "across" : "along the length"),
            new TextCell(Words.Of(cut.Setting, unit, packet), 12, Weight.Bold),
            Cell.Empty,
            new TextCell(cut.Sizes),
        ];
}
