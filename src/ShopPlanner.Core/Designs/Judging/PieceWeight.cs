using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>What a piece weighs, empty and without its hardware.</summary>
public static class PieceWeight
{
    // An unknown wood counts as the lightest that is usual, so that a piece is not thought to stand firmer than it does.
    private const string Lightest = "pine-eastern-white";

    /// <summary>Weight of the members among the parts, kg, at 8% moisture.</summary>
    public static Working<double> Of(IEnumerable<PiecePart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var weights = parts.Where(part => part.Purpose == PartPurpose.Member).Select(Of).ToList();
        return Working.Looked("Weight", weights.Sum(), QuantityKind.Mass, 0, Weight.Rule);
    }

    private static double Of(PiecePart part)
    {
        var row = part.Strength() ?? StrengthTable.Find(Lightest)!;
        var density = Weight.LeastDensity(row, Weight.Indoors);
        return Weight.Of(Area.Of(part.Length.Value, part.Width.Value) * part.Thickness.Value * part.Copies.Length, density).Value;
    }
}
