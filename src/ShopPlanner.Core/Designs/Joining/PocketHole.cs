using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Joining;

/// <summary>How much wood a pocket hole needs.</summary>
internal static class PocketHole
{
    // A drill of 3/8 in at 15 degrees, as jigs hold it (common practice).
    private const double Slant = 15 * Math.PI / 180;
    private static readonly Length Radius = Length.FromInches(0.1875m);

    /// <summary>How far from the joint the hole opens in the face of the piece: a shorter piece is cut through at its other
    /// end.</summary>
    /// <param name="thickness">Of the piece; the screw comes out of the middle of its end.</param>
    public static Length Reach(Length thickness) =>
        Length.FromTicks((long)Math.Ceiling((thickness.Ticks / 2 / Math.Tan(Slant)) + (Radius.Ticks / Math.Sin(Slant))));
}
