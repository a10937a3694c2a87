using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>An opening as it was measured in the standing piece; the least of several places.</summary>
/// <param name="Width">Clear width.</param>
/// <param name="Height">Clear height.</param>
public sealed record MeasuredOpening(Length Width, Length Height);

/// <summary>An opening with the doors that close it, as designed.</summary>
/// <param name="Marks">Copies of each leaf, from the left.</param>
/// <param name="Width">Clear width of the opening.</param>
/// <param name="Height">Clear height of the opening.</param>
/// <param name="LeafWidth">Of each leaf.</param>
/// <param name="LeafHeight">Of each leaf.</param>
/// <param name="WidestLeaf">As wide as a leaf is when it is glued up, before it is trimmed.</param>
/// <param name="HighestLeaf">As high as a leaf is then.</param>
public sealed record DoorOpening(
    ImmutableArray<ImmutableArray<string>> Marks,
    Length Width,
    Length Height,
    Length LeafWidth,
    Length LeafHeight,
    Length WidestLeaf,
    Length HighestLeaf
);

/// <summary>The size to which each leaf is trimmed.</summary>
/// <param name="Width">Of it.</param>
/// <param name="Height">Of it.</param>
public sealed record DoorTrim(Working<Length> Width, Working<Length> Height);

/// <summary>What a measured opening gave: a size, or what is wrong with what was measured.</summary>
/// <param name="Trim">The size; null where something is wrong.</param>
/// <param name="Faults">Each names <c>width</c> or <c>height</c>, and what would be right.</param>
public sealed record DoorFit(DoorTrim? Trim, ImmutableArray<Fault> Faults);

/// <summary>Fits doors to the opening as it came out: the gaps, or the overlay, stay as they were designed.</summary>
public static class DoorFitting
{
    // A case that comes out farther off than this was built wrong or measured wrong (our limit).
    private static readonly Length MostOff = Length.FromInches(0.5m);

    /// <summary>Returns the openings that doors close, from the left and from below.</summary>
    public static ImmutableArray<DoorOpening> Openings(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var solids = new Solids(piece);
        var doors = solids.All.Length == 0 ? [] : Bodies.Of(solids).Where(body => body.Kind == UnitKind.Door).ToList();
        var fixedParts = Enumerable.Range(0, solids.All.Length).Except(doors.SelectMany(door => door.Copies)).ToList();
        return
        [
            .. doors
                .Select(door => (Door: door, Clear: Clear(solids, fixedParts, solids.Around(door.Copies))))
                .GroupBy(one => one.Clear)
                .OrderBy(same => same.Key.X.Ticks)
                .ThenBy(same => same.Key.Z.Ticks)
                .Select(same =>
                    Opening(
                        solids,
                        same.Key,
                        [.. same.Select(one => one.Door).OrderBy(door => solids.Around(door.Copies).X.Ticks)]
                    )
                ),
        ];
    }

    /// <summary>Returns the size of each leaf in an opening as measured, or what is wrong.</summary>
    /// <param name="opening">As designed.</param>
    /// <param name="measured">As it came out.</param>
    /// <param name="unit">Unit of lengths in texts.</param>
    public static DoorFit Fit(DoorOpening opening, MeasuredOpening measured, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(opening);
        ArgumentNullException.ThrowIfNull(measured);
        var leaves = opening.Marks.Length;
        var width = Follow("Door width", opening.LeafWidth, opening.Width, measured.Width, leaves);
        var height = Follow("Door height", opening.LeafHeight, opening.Height, measured.Height, 1);
        ImmutableArray<Fault> faults =
        [
            .. Wrong("width", opening.Width, measured.Width, (opening.WidestLeaf - opening.LeafWidth) * leaves, unit),
            .. Wrong("height", opening.Height, measured.Height, opening.HighestLeaf - opening.LeafHeight, unit),
        ];
        return new(faults.IsEmpty ? new(width, height) : null, faults);
    }

    // Rounded down: a door that is a tick too narrow still goes in.
    private static Working<Length> Follow(string name, Length leaf, Length designed, Length measured, int leaves) =>
        Working.Of(
            name,
            leaf + Length.FromTicks((long)Math.Floor((decimal)(measured - designed).Ticks / leaves)),
            leaves == 1
                ? "{leaf} + ({measured} − {designed})"
                : FormattableString.Invariant($"{{leaf}} + ({{measured}} − {{designed}}) ÷ {leaves}"),
            Working.Geometry,
            ("leaf", Working.Given("As designed", leaf)),
            ("measured", Working.Given("Opening measured", measured)),
            ("designed", Working.Given("Opening as designed", designed))
        );

    // Doors can be trimmed as far as their stiles still look right, and grow as far as they were cut larger.
    private static IEnumerable<Fault> Wrong(string field, Length designed, Length measured, Length larger, LengthUnit unit)
    {
        var most = designed + Length.Min(MostOff, larger);
        var least = designed - MostOff;
        if (measured < least)
            yield return Fault.Of(
                field,
                LengthFormat.WithUnit(measured, unit),
                $"is less than {LengthFormat.WithUnit(least, unit)}, so the door would lose too much of its frame: "
                    + "measure again, or make a smaller door"
            );
        else if (measured > most)
            yield return Fault.Of(
                field,
                LengthFormat.WithUnit(measured, unit),
                $"is more than {LengthFormat.WithUnit(most, unit)}, so the door as cut can't fill it: measure again, or make a "
                    + "larger door"
            );
    }

    private static DoorOpening Opening(Solids solids, Box clear, List<Unit> doors)
    {
        var box = solids.Around(doors[0].Copies);
        var rough = doors[0].Copies.Select(copy => solids.All[copy]).MaxBy(one => one.Copy.Box.Dz.Ticks)!.Part;
        var isWhole = doors[0].Copies.Length == 1;
        return new(
            [.. doors.Select(door => door.Copies.Select(copy => solids.All[copy].Mark).ToImmutableArray())],
            clear.Dx,
            clear.Dz,
            box.Dx,
            box.Dz,
            isWhole ? Length.Max(box.Dx, rough.RoughWidth) : box.Dx,
            box.Dz + (rough.RoughLength - rough.Length.Value)
        );
    }

    // From the middle of the door to what stands beside it: in its plane for an inset door, behind it for an overlay one.
    private static Box Clear(Solids solids, List<int> others, Box door)
    {
        var inset = Beside(solids, others, door);
        if (inset.Dx >= door.Dx && inset.Dz >= door.Dz && IsBounded(solids, inset))
            return inset;
        var behind = door.With(Axis.Y, door.EndY, door.EndY + Length.FromInches(0.0625m));
        return Beside(solids, others, behind);
    }

    private static bool IsBounded(Solids solids, Box clear) =>
        clear.X > solids.Piece.Outside.X || clear.EndX < solids.Piece.Outside.EndX;

    private static Box Beside(Solids solids, List<int> others, Box slice)
    {
        var whole = solids.Piece.Outside;
        var (x, endX) = Span(solids, others, slice, Axis.X, Axis.Z, (whole.X, whole.EndX));
        var (z, endZ) = Span(solids, others, slice, Axis.Z, Axis.X, (whole.Z, whole.EndZ));
        return slice.With(Axis.X, x, endX).With(Axis.Z, z, endZ);
    }

    // The widest of three probes: a shelf or a divider behind the door stops one of them, not all.
    private static (Length, Length) Span(
        Solids solids,
        List<int> others,
        Box slice,
        Axis axis,
        Axis across,
        (Length Start, Length End) outside
    )
    {
        var best = (Length.Zero, Length.Zero);
        foreach (var part in new[] { 3, 8, 13 })
        {
            var at = slice.Start(across) + Length.FromTicks(slice.Extent(across).Ticks * part / 16);
            var probe = slice.With(across, at, at + Length.FromTicks(1));
            var middle = Length.FromTicks((slice.Start(axis) + slice.End(axis)).Ticks / 2);
            var met = others
                .Select(solids.Box)
                .Where(box => Way.Axes.All(one => one == axis || Way.Overlap(box, probe, one).IsPositive))
                .ToList();
            var start = met.Where(box => box.End(axis) <= middle)
                .Select(box => box.End(axis))
                .Aggregate(outside.Start, Length.Max);
            var end = met.Where(box => box.Start(axis) >= middle)
                .Select(box => box.Start(axis))
                .Aggregate(outside.End, Length.Min);
            if (end - start > best.Item2 - best.Item1)
                best = (start, end);
        }

        return best;
    }
}
