using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Calculators;

/// <summary>What was asked of a calculator.</summary>
/// <param name="Unit">Lengths are told in it.</param>
internal abstract record Question(LengthUnit Unit)
{
    /// <summary>The length as a person reads it.</summary>
    public string Say(Length length) => LengthFormat.WithUnit(length, Unit);
}
