using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>A box of solid wood: a copy, or one of the two that a notched copy is made of.</summary>
/// <param name="Copy">The copy.</param>
/// <param name="Box">Where it is.</param>
internal sealed record WoodBlock(PartCopy Copy, Box Box)
{
    /// <summary>The blocks of a copy. A notch is at the lower front corner, through the whole thickness.</summary>
    public static ImmutableArray<WoodBlock> Of(PartCopy copy)
    {
        if (copy.ToeNotch is not { } notch)
            return [new(copy, copy.Box)];
        var (box, split) = (copy.Box, copy.Box.Z + notch.High);
        var blocks = new[]
        {
            box.With(Axis.Z, split, box.EndZ),
            box.With(Axis.Z, box.Z, split).With(Axis.Y, box.Y + notch.Deep, box.EndY),
        };
        return [.. blocks.Where(one => one is { Dx.IsPositive: true, Dy.IsPositive: true, Dz.IsPositive: true }).Select(Whole)];

        WoodBlock Whole(Box one) => new(copy, one);
    }

    public FaceRect Across(Axis axis)
    {
        var (u, v) = BoxSides.Others(axis);
        return new(Box.Start(u).Ticks, Box.Start(v).Ticks, Box.End(u).Ticks, Box.End(v).Ticks);
    }

    /// <summary>Whether it reaches into a space, or up to it.</summary>
    public bool IsIn(Box space) =>
        Box.X <= space.EndX
        && space.X <= Box.EndX
        && Box.Y <= space.EndY
        && space.Y <= Box.EndY
        && Box.Z <= space.EndZ
        && space.Z <= Box.EndZ;

    /// <summary>Whether there is wood of it just beyond a plane.</summary>
    public bool IsBeyond(Axis axis, Length plane, bool atEnd) =>
        atEnd ? Box.Start(axis) <= plane && plane < Box.End(axis) : Box.Start(axis) < plane && plane <= Box.End(axis);

    /// <summary>How far its next side lies before a plane; nothing or less where it doesn't lie before it.</summary>
    public Length Before(Axis axis, Length plane, bool atEnd) => atEnd ? Box.Start(axis) - plane : plane - Box.End(axis);
}
