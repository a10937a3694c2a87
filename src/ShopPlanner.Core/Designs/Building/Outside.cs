using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>The outside size of a piece with how each came about; a top's overhang lies within it.</summary>
/// <param name="Width">Along x.</param>
/// <param name="Depth">Along y.</param>
/// <param name="Height">Along z; for a frame less the top.</param>
internal sealed record Outside(Working<Length> Width, Working<Length> Depth, Working<Length> Height);

/// <summary>How far a top stands out over its frame.</summary>
internal sealed record Overhang(Length Ends, Length Front, Length Back)
{
    public static readonly Overhang None = new(Length.Zero, Length.Zero, Length.Zero);
}
