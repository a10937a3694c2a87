using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Sizes of one leaf of a door in an opening.</summary>
/// <param name="Width">Of one leaf.</param>
/// <param name="Height">Of it.</param>
/// <param name="Rest">What equal leaves leave of the opening in steps too fine to set: it goes to the middle gap, or to the last one.</param>
public sealed record DoorSizes(Working<Length> Width, Working<Length> Height, Length Rest)
{
    /// <summary>Gaps.</summary>
    public static readonly SourceNote Reveal = new("Geometry; gaps of 1/16 in a side for furniture and 3/32 in for cabinets, trade forum", Certainty.Read);

    /// <summary>Leaves that stand in the opening with a gap all round and one between two.</summary>
    /// <param name="opening">Clear width.</param>
    /// <param name="height">Clear height.</param>
    /// <param name="leaves">One or two.</param>
    /// <param name="gap">All round and between.</param>
    public static DoorSizes Inset(Working<Length> opening, Working<Length> height, int leaves, Working<Length> gap)
    {
        var free = opening.Value.Ticks - (gap.Value.Ticks * (leaves + 1));
        var number = Working.Given("Leaves", leaves, QuantityKind.Bare, 0);
        var width = Working.Of(
            "Door width", Length.FromTicks(free / leaves), leaves == 1 ? "{opening} − 2 × {gap}" : "({opening} − 3 × {gap}) ÷ {leaves}", Reveal,
            ("opening", opening), ("gap", gap), ("leaves", number));
        return new(width, Working.Of("Door height", height.Value - (gap.Value * 2), "{height} − 2 × {gap}", Reveal, ("height", height), ("gap", gap)), Length.FromTicks(free % leaves));
    }

    /// <summary>Leaves that lie on the face around the opening; two have a gap between them.</summary>
    /// <param name="opening">Clear width.</param>
    /// <param name="height">Clear height.</param>
    /// <param name="leaves">One or two.</param>
    /// <param name="overlay">How far they cover the face at each side, below and above.</param>
    /// <param name="gap">Between two leaves.</param>
    public static DoorSizes Overlay(Working<Length> opening, Working<Length> height, int leaves, Working<Length> overlay, Working<Length> gap)
    {
        var free = opening.Value.Ticks + (overlay.Value.Ticks * 2) - (gap.Value.Ticks * (leaves - 1));
        var width = Working.Of(
            "Door width", Length.FromTicks(free / leaves), leaves == 1 ? "{opening} + 2 × {overlay}" : "({opening} + 2 × {overlay} − {gap}) ÷ 2", Reveal,
            ("opening", opening), ("overlay", overlay), ("gap", gap));
        return new(width, Working.Of("Door height", height.Value + (overlay.Value * 2), "{height} + 2 × {overlay}", Reveal, ("height", height), ("overlay", overlay)), Length.FromTicks(free % leaves));
    }
}
