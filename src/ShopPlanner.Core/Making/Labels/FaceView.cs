using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Labels;

/// <summary>A copy as it lies before someone who looks at one of its faces: its length runs from left to right, so that the end
/// nearest the origin is at the left, and it is turned, never mirrored.</summary>
/// <param name="Copy">The copy.</param>
/// <param name="Face">The face that is looked at; its axis is the direction of the copy's thickness.</param>
public sealed record FaceView(PartCopy Copy, BoxSide Face)
{
    /// <summary>Its extent from left to right.</summary>
    public Length Wide => Copy.Box.Extent(Copy.Along);

    /// <summary>Its extent from top to bottom.</summary>
    public Length High => Copy.Box.Extent(Copy.Across);

    /// <summary>Whether the far side across the copy is at the top of the view.</summary>
    public bool IsFarOnTop => Face.IsFar() == IsCyclic(Copy.Flat, Copy.Along);

    /// <summary>The side of the box at the left.</summary>
    public BoxSide Left => BoxSides.Of(Copy.Along, isFar: false);

    /// <summary>The side of the box at the right.</summary>
    public BoxSide Right => BoxSides.Of(Copy.Along, isFar: true);

    /// <summary>The side of the box at the top.</summary>
    public BoxSide Top => BoxSides.Of(Copy.Across, IsFarOnTop);

    /// <summary>The side of the box at the bottom.</summary>
    public BoxSide Bottom => Top.Opposite();

    /// <summary>Distance from the top of the view.</summary>
    /// <param name="fromStart">Distance across the copy from its side nearest the origin.</param>
    public Length FromTop(Length fromStart) => IsFarOnTop ? High - fromStart : fromStart;

    // Right, up and toward the eye are as x, y and z to each other: the first axis turned to the second leads to the third.
    private static bool IsCyclic(Axis one, Axis other) => ((int)other - (int)one + 3) % 3 == 1;
}
