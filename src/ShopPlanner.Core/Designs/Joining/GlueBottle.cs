using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Joining;

/// <summary>How much wood glue the joints of a piece take, in bottles that are sold.</summary>
internal static class GlueBottle
{
    // Common practice: about 200 g for a square metre of joint at 1.1 g a millilitre, and half as much again for what is squeezed
    // out and left in the bottle.
    private const double MillilitresPerSquareMetre = 200 / 1.1 * 1.5;

    private const double MillilitresPerOunce = 29.57;

    // Sizes that stores carry (common practice), fluid ounces.
    private static readonly int[] Sold = [4, 8, 16];

    public static Fastening For(IReadOnlyCollection<JointFit> glued)
    {
        var ounces = glued.Sum(SquareMetres) * MillilitresPerSquareMetre / MillilitresPerOunce;
        var size = Sold.Where(one => one >= ounces).DefaultIfEmpty(Sold[^1]).Min();
        var millilitres = (int)Math.Round(size * MillilitresPerOunce);
        var bottles = Math.Max(1, (int)Math.Ceiling(ounces / size));
        return new(FormattableString.Invariant($"Wood glue, bottle of {size} fl oz ({millilitres} mL)"), bottles, glued.Count);
    }

    // The face in which the two meet, and both cheeks of what is let in.
    private static double SquareMetres(JointFit fit) =>
        (double)(Area.Of(fit.Long, fit.Narrow) + (Area.Of(fit.Long, fit.Joint.Depth) * 2)).ToSquareMetres();
}
