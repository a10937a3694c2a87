using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Where the boxes of two copies overlap, but their wood does not, because a piece of one is cut out there.</summary>
internal static class Cutouts
{
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    /// <summary>Whether the shared place holds wood of one of the two at most: notches and grooves of both together take all of
    /// it, as around a leg or in a cross lap, or both are beveled there, as in a miter.</summary>
    public static bool Clear(Draft one, Draft other, Box shared) =>
        (!one.Features.IsEmpty || !other.Features.IsEmpty)
        && (IsTaken(shared, [.. Squares(one), .. Squares(other)]) || (IsBeveled(one, shared) && IsBeveled(other, shared)));

    private static IEnumerable<Box> Squares(Draft draft) =>
        draft.Features.Where(one => one.IsSquare).Select(one => one.Room(draft.Box));

    private static bool IsBeveled(Draft draft, Box shared) =>
        draft.Features.Any(one => one is Bevel && one.Room(draft.Box).Around(shared) == one.Room(draft.Box));

    // What the first cut leaves is left to the others.
    private static bool IsTaken(Box place, ReadOnlySpan<Box> cuts)
    {
        if (cuts.IsEmpty)
            return false;
        if (place.Shared(cuts[0]) is not { } gone)
            return IsTaken(place, cuts[1..]);
        foreach (var axis in Axes)
        {
            if (
                gone.Start(axis) > place.Start(axis)
                && !IsTaken(place.With(axis, place.Start(axis), gone.Start(axis)), cuts[1..])
            )
                return false;
            if (gone.End(axis) < place.End(axis) && !IsTaken(place.With(axis, gone.End(axis), place.End(axis)), cuts[1..]))
                return false;
            place = place.With(axis, gone.Start(axis), gone.End(axis));
        }

        return true;
    }
}
