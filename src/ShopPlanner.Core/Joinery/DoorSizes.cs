using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Sizes of one leaf of a door in an opening.</summary>
/// <param name="Width">Of one leaf.</param>
/// <param name="Height">Of it.</param>
/// <param name="Rest">What two equal leaves leave of the opening, at most a tick: it lies in the gap between them.</param>
public sealed record DoorSizes(Working<Length> Width, Working<Length> Height, Length Rest)
{
    /// <summary>The gap between two leaves, so that leaves and gaps fill the opening to the tick; null where there is one
    /// leaf.</summary>
    public Working<Length>? Middle { get; private init; }

    /// <summary>Leaves that stand in the opening with a gap all round and one between two.</summary>
    /// <param name="opening">Clear width.</param>
    /// <param name="height">Clear height.</param>
    /// <param name="leaves">One or two.</param>
    /// <param name="gap">All round, and between two where no other is given.</param>
    /// <param name="middle">Between two leaves.</param>
    public static DoorSizes Inset(
        Working<Length> opening,
        Working<Length> height,
        int leaves,
        Working<Length> gap,
        Working<Length>? middle = null
    )
    {
        var across = EqualFronts.Of("Door width", opening, leaves, gap, middle ?? gap);
        var between =
            leaves == 1
                ? null
                : Working.Of(
                    "Gap between the doors",
                    opening.Value - (gap.Value * 2) - (across.Each.Value * 2),
                    "{opening} − 2 × {gap} − 2 × {width}",
                    Working.Geometry,
                    ("opening", opening),
                    ("gap", gap),
                    ("width", across.Each)
                );
        return new(across.Each, EqualFronts.Of("Door height", height, 1, gap, gap).Each, across.Rest) { Middle = between };
    }

    /// <summary>Leaves that lie on the face around the opening; two have a gap between them.</summary>
    /// <param name="opening">Clear width.</param>
    /// <param name="height">Clear height.</param>
    /// <param name="leaves">One or two.</param>
    /// <param name="overlay">How far they cover the face at each side, below and above.</param>
    /// <param name="gap">Between two leaves where no other is given.</param>
    /// <param name="middle">Between two leaves.</param>
    public static DoorSizes Overlay(
        Working<Length> opening,
        Working<Length> height,
        int leaves,
        Working<Length> overlay,
        Working<Length> gap,
        Working<Length>? middle = null
    )
    {
        var covered = Covered("Width covered", opening, overlay);
        var none = Working.Given("Nothing", Length.Zero);
        var across = EqualFronts.Of("Door width", covered, leaves, none, middle ?? gap);
        var width = Working.Of(
            "Door width",
            across.Each.Value,
            leaves == 1 ? "{opening} + 2 × {overlay}" : "({opening} + 2 × {overlay} − {gap}) ÷ 2",
            EqualFronts.Gaps,
            ("opening", opening),
            ("overlay", overlay),
            ("gap", middle ?? gap)
        );
        var between =
            leaves == 1
                ? null
                : Working.Of(
                    "Gap between the doors",
                    covered.Value - (width.Value * 2),
                    "{covered} − 2 × {width}",
                    Working.Geometry,
                    ("covered", covered),
                    ("width", width)
                );
        return new(width, Covered("Door height", height, overlay), across.Rest) { Middle = between };
    }

    private static Working<Length> Covered(string name, Working<Length> opening, Working<Length> overlay) =>
        Working.Of(
            name,
            opening.Value + (overlay.Value * 2),
            "{opening} + 2 × {overlay}",
            Working.Geometry,
            ("opening", opening),
            ("overlay", overlay)
        );
}
