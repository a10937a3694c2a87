using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A clear space that a frame or a split leaves, with the parts that bound it; null where a side is open.</summary>
/// <param name="Box">The clear space, from the front plane of the frame (its y) to the inside of the back.</param>
internal sealed record Bay(Box Box)
{
    public Draft? Left { get; init; }

    public Draft? Right { get; init; }

    public Draft? Bottom { get; init; }

    public Draft? Top { get; init; }

    public Draft? Back { get; init; }

    /// <summary>How much of the frame's front an overlay door may cover at each side: a side's thickness, half a divider's.</summary>
    public Length CoverLeft { get; init; }

    public Length CoverRight { get; init; }

    public Length CoverBottom { get; init; }

    public Length CoverTop { get; init; }
}
