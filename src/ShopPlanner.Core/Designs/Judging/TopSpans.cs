using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>A top of boards or sheets with the longest stretches that nothing below carries.</summary>
/// <param name="Part">The part that it is mostly made of.</param>
/// <param name="Whole">The top, all layers and strips of it.</param>
/// <param name="Along">The stretch along the grain between what runs across; null where nothing does.</param>
/// <param name="Across">The stretch across the grain between what runs along; null where it rests on fewer than two such.</param>
internal sealed record TopSpans(PiecePart Part, Box Whole, Length? Along, Length? Across)
{
    private const string Name = "Top";

    /// <summary>The top of a piece; null where it has none that is glued up or cut in one.</summary>
    public static TopSpans? Of(Piece piece)
    {
        var parts = piece.Parts.Where(part => IsOf(part)).ToList();
        if (parts.Count == 0)
            return null;
        // Breadboard ends carry the strips as well.
        var whole = piece
            .Parts.Where(part => part.Assembly == Name)
            .SelectMany(part => part.Copies)
            .Where(copy => copy.Flat == Axis.Z)
            .Select(copy => copy.Box)
            .Aggregate((a, b) => a.Around(b));
        var below = piece
            .Parts.Where(part => part.Assembly != Name)
            .SelectMany(part => part.Copies)
            .Where(copy => copy.Box.EndZ == whole.Z && copy.Box.Meeting(whole) is not null)
            .Select(copy => copy.Box)
            .ToList();
        var axis = parts[0].Copies[0].Along;
        var (along, across) = Stretches(whole, axis, below);
        return new(parts[0], whole, along, across);
    }

    // Strips and layers, not the edging and the ends that run across them.
    private static bool IsOf(PiecePart part) =>
        part is { Assembly: Name, Copies.IsEmpty: false } && part.Copies[0].Flat == Axis.Z && part.Name is Name or "Top strip";

    private static (Length? Along, Length? Across) Stretches(Box whole, Axis axis, List<Box> below)
    {
        var other = axis == Axis.X ? Axis.Y : Axis.X;
        var runsAlong = below.Where(box => box.Extent(axis) * 2 > whole.Extent(axis)).ToList();
        var (from, to) = runsAlong.Count < 2 ? (whole.Start(other), whole.End(other)) : Widest(runsAlong, other);
        var middle = Length.FromTicks((from.Ticks + to.Ticks) / 2);
        var crossing = below.Where(box => box.Start(other) <= middle && box.End(other) >= middle).ToList();
        return (
            crossing.Count < 2 ? Single(crossing, axis, whole) : Gap(Widest(crossing, axis)),
            runsAlong.Count < 2 ? null : to - from
        );
    }

    // What lies under all of it carries it everywhere.
    private static Length? Single(List<Box> crossing, Axis axis, Box whole) =>
        crossing.Count == 1 && crossing[0].Extent(axis) * 2 > whole.Extent(axis) ? Length.Zero : null;

    private static Length Gap((Length From, Length To) stretch) => stretch.To - stretch.From;

    // The longest stretch between two neighbors; none where they overlap all the way.
    private static (Length From, Length To) Widest(List<Box> boxes, Axis axis)
    {
        var sorted = boxes.OrderBy(box => box.Start(axis)).ToList();
        var (reached, widest) = (sorted[0].End(axis), (From: sorted[0].End(axis), To: sorted[0].End(axis)));
        foreach (var box in sorted.Skip(1))
        {
            if (box.Start(axis) - reached > widest.To - widest.From)
                widest = (reached, box.Start(axis));
            reached = Length.Max(reached, box.End(axis));
        }

        return widest;
    }

    /// <summary>Its thickness, all layers together.</summary>
    public Length Thickness => Whole.Dz;

    /// <summary>Its extent across the grain.</summary>
    public Length Width => Part.Copies[0].Along == Axis.X ? Whole.Dy : Whole.Dx;

    /// <summary>Its extent along the grain.</summary>
    public Length Run => Part.Copies[0].Along == Axis.X ? Whole.Dx : Whole.Dy;
}
