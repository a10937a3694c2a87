using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>One of the six directions in which a part can move.</summary>
/// <param name="Axis">Along which.</param>
/// <param name="Forward">To the right, to the back or up; else the other way.</param>
internal readonly record struct Way(Axis Axis, bool Forward)
{
    /// <summary>All of them.</summary>
    public static readonly Way[] All =
    [
        new(Axis.X, true),
        new(Axis.X, false),
        new(Axis.Y, true),
        new(Axis.Y, false),
        new(Axis.Z, true),
        new(Axis.Z, false),
    ];

    /// <summary>The axes.</summary>
    public static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    /// <summary>Place in <see cref="All"/>.</summary>
    public int Index => ((int)Axis * 2) + (Forward ? 0 : 1);

    /// <summary>The opposite one.</summary>
    public Way Turned() => this with { Forward = !Forward };

    /// <summary>How far a box reaches this way; greater is farther.</summary>
    public Length Ahead(Box box) => Forward ? box.End(Axis) : -box.Start(Axis);

    /// <summary>Where a box begins this way.</summary>
    public Length Behind(Box box) => Forward ? box.Start(Axis) : -box.End(Axis);

    /// <summary>Twice the middle of a box this way.</summary>
    public Length Middle(Box box) => Ahead(box) + Behind(box);

    /// <summary>Whether two boxes overlap in both other directions, so that one is in the other's way.</summary>
    public bool Beside(Box one, Box other)
    {
        foreach (var axis in Axes)
            if (axis != Axis && !Overlap(one, other, axis).IsPositive)
                return false;
        return true;
    }

    /// <summary>How far two boxes overlap along an axis; not positive where they lie apart or only touch.</summary>
    public static Length Overlap(Box one, Box other, Axis axis) =>
        Length.Min(one.End(axis), other.End(axis)) - Length.Max(one.Start(axis), other.Start(axis));
}
