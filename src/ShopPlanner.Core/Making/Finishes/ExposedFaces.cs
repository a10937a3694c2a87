using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What of a copy's faces other copies leave open, exact to the tick. Where boxes share wood, the face is that of what
/// is let in; what comes off again by hand covers nothing.</summary>
internal sealed class ExposedFaces
{
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];
    private static readonly bool[] Ends = [false, true];

    private readonly PieceBodies bodies;
    private readonly WoodBlock[] blocks;

    public ExposedFaces(Piece piece, PieceBodies bodies)
    {
        this.bodies = bodies;
        blocks = [.. piece.Parts.SelectMany(part => part.Copies).SelectMany(copy => WoodBlock.Of(copy))];
    }

    /// <summary>Open faces of a copy.</summary>
    public IEnumerable<ExposedFace> Of(PartCopy copy)
    {
        var reach = FinishFigures.Reach.Value;
        var space = copy.Box.Grown(Axis.X, reach, reach).Grown(Axis.Y, reach, reach).Grown(Axis.Z, reach, reach);
        var near = blocks.Where(block => block.IsIn(space) && !IsApart(block.Copy, copy)).ToList();
        return from block in WoodBlock.Of(copy) from axis in Axes from atEnd in Ends select Face(block, axis, atEnd, near);
    }

    private bool IsApart(PartCopy one, PartCopy other) => one != other && bodies.ComeApart(one.Mark, other.Mark);

    private ExposedFace Face(WoodBlock block, Axis axis, bool atEnd, List<WoodBlock> near)
    {
        var plane = atEnd ? block.Box.End(axis) : block.Box.Start(axis);
        var whole = block.Across(axis);
        var others = near.Where(other => other != block).ToList();
        var gone = others.Where(Hides).Select(Within).ToList();
        var close = others.Where(IsClose).Select(Within);
        var covered = FaceRect.Covered(gone);
        return new(axis, atEnd, whole.Area - covered, FaceRect.Covered(gone.Concat(close)) - covered);

        FaceRect Within(WoodBlock other) => whole.Within(other.Across(axis));

        // It lies on the face, or its wood is let in where the face would be.
        bool Hides(WoodBlock other) =>
            other.IsBeyond(axis, plane, atEnd)
            || (
                other.Copy.Mark != block.Copy.Mark
                && other.IsBeyond(axis, plane, !atEnd)
                && bodies.Owns(other.Copy.Mark, block.Copy.Mark)
            );

        bool IsClose(WoodBlock other) =>
            other.Copy.Mark != block.Copy.Mark
            && bodies.HoldTogether(other.Copy.Mark, block.Copy.Mark)
            && other.Before(axis, plane, atEnd) is { IsPositive: true } gap
            && gap < FinishFigures.Reach.Value;
    }
}

/// <summary>One face of a copy.</summary>
/// <param name="Axis">On which it stands square.</param>
/// <param name="AtEnd">Whether it is the one at the end of the axis.</param>
/// <param name="Open">What other copies leave open.</param>
/// <param name="Close">Of that, where other wood stands too close for a hand with a brush.</param>
internal sealed record ExposedFace(Axis Axis, bool AtEnd, Area Open, Area Close);
