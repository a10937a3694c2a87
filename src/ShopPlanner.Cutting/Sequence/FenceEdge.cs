using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>Which edges a fence guides safely. Common practice: none that is shorter than a foot, or shorter than the strip
/// between fence and blade is wide.</summary>
internal static class FenceEdge
{
    /// <summary>Returns whether an edge is too short for the fence.</summary>
    /// <param name="edge">Its length in ticks.</param>
    /// <param name="setting">From fence to blade in ticks.</param>
    public static bool IsShort(long edge, long setting) => edge < Math.Max(Length.TicksPerFoot, setting);
}
