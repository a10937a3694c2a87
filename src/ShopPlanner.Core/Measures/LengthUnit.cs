namespace ShopPlanner.Core.Measures;

/// <summary>The unit a project, a document or a field is written in.</summary>
public enum LengthUnit
{
    /// <summary>Inches, written with fractions.</summary>
    Inch,

    /// <summary>Millimetres, written with decimals.</summary>
    Millimetre,
}
