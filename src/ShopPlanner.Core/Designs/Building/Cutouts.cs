using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Where the boxes of two copies overlap, but their wood does not, because a piece of one is cut out there.</summary>
internal static class Cutouts
{
    /// <summary>Whether the shared place is free of one of the two: a notch or groove of either holds all of it, or both are
    /// beveled there, as in a miter.</summary>
    public static bool Clear(Draft one, Draft other, Box shared) =>
        IsCut(one, shared) || IsCut(other, shared) || (IsBeveled(one, shared) && IsBeveled(other, shared));

    /// <summary>Whether one box holds all of another.</summary>
    public static bool Holds(Box outer, Box inner) => outer.Around(inner) == outer;

    private static bool IsCut(Draft draft, Box shared) =>
        draft.Features.Any(one => one.IsSquare && Holds(one.Room(draft.Box), shared));

    private static bool IsBeveled(Draft draft, Box shared) =>
        draft.Features.Any(one => one is Bevel && Holds(one.Room(draft.Box), shared));
}
