using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Materials;

/// <summary>Lengths in tables, written as the trade writes them.</summary>
internal static class Inches
{
    /// <summary>The length of a text in inches.</summary>
    public static Length Of(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
