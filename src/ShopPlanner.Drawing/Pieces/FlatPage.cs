using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Puts flat views on a page: one with all its dimensions, or the three beside each other at one scale.</summary>
internal sealed class FlatPage(Piece piece, PieceRoom room, string? highlight)
{
    private const double Margin = 6;

    private readonly ImmutableArray<ShownPart> parts = ShownPart.Of(piece);

    private double Dimensions => FlatView.DimensionRoom(room.Type);

    private double Column => Callouts.Column(room.RingType);

    private double Row => Callouts.Row(room.RingType);

    private double Note => room.Type * 1.7;

    /// <summary>One view.</summary>
    public LineDrawing One(ViewFrom side, string title)
    {
        var (across, up) = (Mm(FlatView.Across(side)), Mm(FlatView.Up(side)));
        var scale = PieceScale.Fit(
            across,
            up,
            room.Width - Dimensions - Column - (2 * Margin),
            room.Height - Row - Dimensions - Note - (2 * Margin),
            room.WholeScale
        );
        var (wide, high) = (across * scale.PerMm, up * scale.PerMm);
        var left = Margin + Dimensions + ((room.Width - (2 * Margin) - Dimensions - Column - wide) / 2);
        var view = new FlatView(piece, parts, side, room, scale, new(left, Margin + Row + high));
        var foot = Margin + Row + high + Dimensions;
        return new(
            title,
            Describe(side),
            room.Width,
            foot + Note + Margin,
            [
                .. view.Wood(highlight),
                .. view.Marks(left + wide + Column, Margin),
                .. view.Below(),
                .. view.Left(),
                Words(room.Width / 2, foot + (Note / 2), scale),
            ]
        );
    }

    /// <summary>The front, the right side at its right, the plan above it: third angle, as ASME Y14.3 has it (from memory). Each
    /// size is given once.</summary>
    public LineDrawing Three(string title)
    {
        var (x, y, z) = (Mm(Axis.X), Mm(Axis.Y), Mm(Axis.Z));
        var (beside, above) = (Column + (2 * Margin), Row + Caption + Margin);
        var scale = PieceScale.Fit(
            x + y,
            y + z,
            room.Width - Dimensions - beside - Column - (2 * Margin),
            room.Height - (2 * Row) - (2 * Caption) - Dimensions - Note - (3 * Margin),
            room.WholeScale
        );
        var (wide, deep, high) = (x * scale.PerMm, y * scale.PerMm, z * scale.PerMm);
        var left = Margin + Dimensions + ((room.Width - (2 * Margin) - Dimensions - beside - Column - wide - deep) / 2);
        var (planY, right) = (Margin + Row + deep, left + wide + beside);
        var frontY = planY + Caption + above + high;
        var plan = new FlatView(piece, parts, ViewFrom.Above, room, scale, new(left, planY));
        var front = new FlatView(piece, parts, ViewFrom.Front, room, scale, new(left, frontY));
        var end = new FlatView(piece, parts, ViewFrom.Right, room, scale, new(right, frontY));
        var foot = frontY + Dimensions;
        return new(
            title,
            Describe(ViewFrom.Front),
            room.Width,
            foot + Note + Margin,
            [
                .. plan.Wood(highlight),
                .. plan.Marks(left + wide + Column, Margin),
                Name(left + (wide / 2), planY, "Top"),
                .. front.Wood(highlight),
                .. front.Marks(left + wide + Column, frontY - high - Row),
                .. front.Below(),
                .. front.Left(),
                .. end.Wood(highlight),
                .. end.Marks(right + deep + Column, frontY - high - Row),
                .. end.Below(),
                Words(room.Width / 2, foot + (Note / 2), scale),
            ]
        );
    }

    private double Caption => room.Type * 1.6;

    private double Mm(Axis axis) => PieceScale.Mm(piece.Outside.Extent(axis));

    private Caption Name(double x, double outline, string words) =>
        new(new(x, outline + (room.Type * 0.9)), words, room.Type * 0.9, Anchor.Middle, Lettering.Weight.Regular, Tone.Faded);

    private Caption Words(double x, double y, PieceScale scale) =>
        new(new(x, y), scale.Note(piece.Unit), room.Type * 0.9, Anchor.Middle, Lettering.Weight.Regular, Tone.Faded);

    private string Describe(ViewFrom side)
    {
        var (across, up) = (piece.Outside.Extent(FlatView.Across(side)), piece.Outside.Extent(FlatView.Up(side)));
        return FormattableString.Invariant(
            $"{piece.Name}: {PieceScale.Figure(across, piece.Unit)} by {PieceScale.Figure(up, piece.Unit)} {Figures.UnitName(piece.Unit)}, {parts.Length} parts."
        );
    }
}
