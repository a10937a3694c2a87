using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>The cut list: every kind of part once, by its mark, with its finished size and the size that it is cut to.</summary>
internal static class CutListSection
{
    /// <summary>Its title.</summary>
    public const string Title = "Cut list";

    /// <summary>The title of what could not be placed.</summary>
    public const string LeftOut = "Not in this plan";

    /// <summary>Whether there is any part.</summary>
    public static bool Has(PacketModel model) => !model.Parts.IsEmpty || model.Pieces.Any(piece => !piece.Parts.IsEmpty);

    /// <summary>How many pieces of wood the furniture has, test pieces and spacers left out.</summary>
    public static int CountOf(PacketModel model) =>
        model.Parts.IsEmpty && model.Plan is null
            ? model.Pieces.SelectMany(piece => piece.Parts).Where(part => !part.IsHelp).Sum(part => part.Quantity)
            : model.Parts.Where(part => !part.IsPractice).Sum(part => part.Marks.Length);

    /// <summary>Adds the list; without a plan, that of the designs.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        IEnumerable<ImmutableArray<Cell>> rows = model.Parts.IsEmpty
            ? model.Pieces.SelectMany(piece => piece.Parts.Select(part => Row(part, piece.Unit, model)))
            : model.Parts.Select(part => Row(part, model));
        var table = new Table(
            [
                new("", 0.4),
                new("Marks", 2),
                new("Part", 3.2),
                new("Material", 2.8),
                new("Pieces", 0.8, Anchor.End),
                new("Cut to", 2.6, Anchor.End),
                new("Finished", 2.6, Anchor.End),
                new("Thick", 1.3, Anchor.End),
            ],
            [.. rows]
        );
        flow.Section(Title, table.Blocks(flow.Width));
    }

    /// <summary>Adds what the plan has no stock for.</summary>
    public static void AddUnplaced(PageFlow flow, PacketModel model)
    {
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
        flow.Section(LeftOut, table.Blocks(flow.Width));
    }

    private static ImmutableArray<Cell> Row(PacketPart part, PacketModel model)
    {
        var unit = part.Unit ?? model.Unit;
        var finished = (part.FinishedLength ?? part.Length, part.FinishedWidth ?? part.Width);
        return
        [
            new TickCell(),
            new MarkCell(Words.Of(part.Marks)),
            new TextCell(part.Trim is { } trim ? $"{part.Name}: {trim}" : part.Name),
            new TextCell(part.Material),
            new TextCell(Words.Of(part.Marks.Length)),
            new TextCell(Words.Of(part.Length, part.Width, unit, model.Unit), 10, Weight.Bold),
            Finished(finished, (part.Length, part.Width), unit, model.Unit),
            new TextCell(part.Thickness is { } thickness ? Words.Of(thickness, unit, model.Unit) : "—"),
        ];
    }

    private static ImmutableArray<Cell> Row(PacketPiecePart part, LengthUnit unit, PacketModel model) =>
        [
            new TickCell(),
            new MarkCell(Words.Of(part.Marks)),
            new TextCell(part.Name),
            new TextCell(part.Material),
            new TextCell(Words.Of(part.Quantity)),
            new TextCell(Words.Of(part.RoughLength, part.RoughWidth, unit, model.Unit), 10, Weight.Bold),
            Finished((part.Length, part.Width), (part.RoughLength, part.RoughWidth), unit, model.Unit),
            new TextCell(Words.Of(part.Thickness, unit, model.Unit)),
        ];

    private static TextCell Finished(
        (Length Length, Length Width) finished,
        (Length Length, Length Width) cut,
        LengthUnit unit,
        LengthUnit packet
    ) =>
        finished == cut
            ? new TextCell("the same", Tone: Tone.Faded)
            : new TextCell(Words.Of(finished.Length, finished.Width, unit, packet), Weight: Weight.Medium);
}
