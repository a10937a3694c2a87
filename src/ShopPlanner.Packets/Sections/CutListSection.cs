using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>The cut list: every kind of part once.</summary>
internal static class CutListSection
{
    /// <summary>Adds the list and what could not be placed.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        AddParts(flow, model);
        AddUnplaced(flow, model);
    }

    private static void AddParts(PageFlow flow, PacketModel model)
    {
        if (model.Parts.IsEmpty)
            return;
        var table = new Table(
            [
                new("", 0.5),
                new("Marks", 2),
                new("Part", 3.4),
                new("Material", 3),
                new("Pieces", 0.9, Anchor.End),
                new("Length", 1.6, Anchor.End),
                new("Width", 1.6, Anchor.End),
                new("Thickness", 1.4, Anchor.End),
            ],
            [.. model.Parts.Select(p => Row(p, model))]
        );
        flow.Heading("Cut list", table.Beginning(flow.Width));
        table.AddTo(flow);
    }

    private static ImmutableArray<Cell> Row(PacketPart part, PacketModel model)
    {
        string Says(Length length) => Words.Of(length, part.Unit ?? model.Unit, model.Unit);
        return
        [
            new TickCell(),
            new MarkCell(Words.Of(part.Marks)),
            new TextCell(part.Trim is { } trim ? $"{part.Name}: {trim}" : part.Name),
            new TextCell(part.Material),
            new TextCell(Words.Of(part.Marks.Length)),
            new TextCell(Says(part.Length), 10.5, Weight.Bold),
            new TextCell(Says(part.Width), 10.5, Weight.Bold),
            new TextCell(part.Thickness is { } thickness ? Says(thickness) : "—"),
        ];
    }

    private static void AddUnplaced(PageFlow flow, PacketModel model)
    {
        if (model.Unplaced.IsEmpty)
            return;
        var table = new Table(
            [new("Marks", 2), new("Part", 4), new("Why", 5)],
            [
                .. model.Unplaced.Select(u =>
                    ImmutableArray.Create<Cell>(
                        new MarkCell(Words.Of(u.Marks)),
                        new TextCell(u.Name),
                        new TextCell(u.Reason, Tone: Tone.Pencil)
                    )
                ),
            ]
        );
        flow.Heading("Not in this plan", table.Beginning(flow.Width));
        table.AddTo(flow);
    }
}
