using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Wood;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>What is known of the wood of a part.</summary>
internal static class PartStrength
{
    /// <summary>Its row of the table; null for a wood that is unknown.</summary>
    public static Strength? Strength(this PiecePart part) => StrengthTable.Find(part.Material.Species ?? "");
}
