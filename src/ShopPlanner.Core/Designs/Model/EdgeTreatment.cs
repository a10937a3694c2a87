using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Model;

/// <summary>What is done to an edge that shows.</summary>
public enum EdgeWork
{
    /// <summary>A thin band is ironed on; sizes stay as they are.</summary>
    Band,

    /// <summary>A strip of solid wood as high as the edge is glued on; the panel is narrower by it.</summary>
    Lipping,

    /// <summary>A strip of solid wood that reaches down below the panel and stiffens it; the panel is narrower by it.</summary>
    Strip,

    /// <summary>Both corners of the edge are rounded over.</summary>
    RoundOver,
}

/// <summary>How an edge of a copy is treated.</summary>
/// <param name="Side">The edge.</param>
/// <param name="Work">What is done to it.</param>
/// <param name="Size">Radius of a round-over, thickness of a lipping or strip; nothing for a band.</param>
public sealed record EdgeTreatment(BoxSide Side, EdgeWork Work, Length Size);
