using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A clear space that a frame or a split leaves, with the parts that bound it; null where a side is open.</summary>
/// <param name="Box">The clear space behind the face of the frame, to the inside of the back.</param>
/// <param name="Front">The opening in the face of the frame: its y is the front plane, its extent along y the thickness of a face
/// frame (nothing where the edges of the case are the face).</param>
internal sealed record Bay(Box Box, Box Front)
{
    public Draft? Left { get; init; }

    public Draft? Right { get; init; }

    public Draft? Bottom { get; init; }

    public Draft? Top { get; init; }

    /// <summary>How much of the frame's face beside <see cref="Front"/> an overlay door may cover at each side: a side's edge,
    /// half a divider's.</summary>
    public Length CoverLeft { get; init; }

    public Length CoverRight { get; init; }

    public Length CoverBottom { get; init; }

    public Length CoverTop { get; init; }
}
