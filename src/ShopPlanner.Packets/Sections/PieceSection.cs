using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Every piece: its views, its parts apart, the list of them, its joints and hardware.</summary>
internal static class PieceSection
{
    private const double CaptionHeight = 15,
        NameSize = 15,
        WarningSize = 9.5;

    /// <summary>Adds the pieces, each from a new page on.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        foreach (var piece in model.Pieces)
        {
            flow.Break();
            AddDrawings(flow, piece);
            AddWarnings(flow, piece);
            AddParts(flow, piece);
            JointSection.Add(flow, piece);
            AddHardware(flow, piece);
        }
    }

    private static string Title(PageFlow flow, string words) =>
        TextFit.Shorten(TextFit.Clean(words, Weight.Bold), Weight.Bold, NameSize, flow.Width);

    private static void AddDrawings(PageFlow flow, PacketPiece piece)
    {
        var first = piece.Drawings.IsEmpty ? 0 : piece.Drawings[0].Drawing.Height;
        flow.Heading(Title(flow, piece.Name), CaptionHeight + first);
        foreach (var drawing in piece.Drawings)
        {
            flow.Need(CaptionHeight + drawing.Drawing.Height);
            flow.Add(
                CaptionHeight,
                y => [new Caption(new(flow.Left, y + (CaptionHeight / 2)), drawing.Drawing.Title, 10, Weight: Weight.Medium)]
            );
            if (drawing.ToScale)
                flow.Add(drawing.Drawing);
            else
                Place(flow, drawing.Drawing);
        }
    }

    private static void Place(PageFlow flow, LineDrawing drawing) =>
        flow.Add(drawing.Height, y => drawing.Primitives().Select(shape => shape.Moved(flow.Left, y)));

    private static void AddWarnings(PageFlow flow, PacketPiece piece)
    {
        if (piece.Warnings.IsEmpty)
            return;
        flow.Heading("Check this first", 3 * WarningSize);
        foreach (var warning in piece.Warnings)
        {
            flow.Paragraph(TextFit.Clean(warning), WarningSize, tone: Tone.Pencil);
            flow.Space(3);
        }
    }

    private static void AddParts(PageFlow flow, PacketPiece piece)
    {
        if (piece.Parts.IsEmpty)
            return;
        var table = new Table(
            [
                new("Marks", 1.9),
                new("Part", 3),
                new("Material", 2.9),
                new("Pieces", 0.9, Anchor.End),
                new("Finished size", 3.2, Anchor.End),
                new("Cut size", 2.5, Anchor.End),
            ],
            [.. piece.Parts.Select(part => Row(part, piece.Unit))]
        );
        flow.Heading(Title(flow, "Parts of " + piece.Name), table.Beginning(flow.Width));
        table.AddTo(flow);
    }

    private static ImmutableArray<Cell> Row(PacketPiecePart part, LengthUnit unit)
    {
        var isAsFinished = part.RoughLength == part.Length && part.RoughWidth == part.Width;
        return
        [
            new MarkCell(Words.Of(part.Marks)),
            new TextCell(part.Name),
            new TextCell(part.Material),
            new TextCell(Words.Of(part.Quantity)),
            new TextCell($"{Words.Of(part.Length, part.Width, unit)} × {Words.Of(part.Thickness, unit)}", Weight: Weight.Medium),
            isAsFinished
                ? new TextCell("the same", Tone: Tone.Faded)
                : new TextCell(Words.Of(part.RoughLength, part.RoughWidth, unit), Weight: Weight.Bold),
        ];
    }

    private static void AddHardware(PageFlow flow, PacketPiece piece)
    {
        if (piece.Hardware.IsEmpty)
            return;
        var table = new Table(
            [new("", 0.5), new("Hardware", 9), new("Pieces", 1.5, Anchor.End)],
            [
                .. piece.Hardware.Select(one =>
                    ImmutableArray.Create<Cell>(
                        new TickCell(),
                        new TextCell(one.Name),
                        new TextCell(Words.Of(one.Quantity), 10.5, Weight.Bold)
                    )
                ),
            ]
        );
        flow.Heading("Hardware", table.Beginning(flow.Width));
        table.AddTo(flow);
    }
}
