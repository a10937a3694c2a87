using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>The moisture that wood comes to in a room's air.</summary>
internal static class MoistureCalculator
{
    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<Working<double>, Working<double>>(
        "moisture",
        "Wood moisture in a room",
        "The moisture content wood reaches in a room's air."
    )
    {
        Keys =
        [
            Key.Quantity("temperature", "Temperature", QuantityKind.Temperature, "70 F", "-20 F", "300 F"),
            Key.Number("humidity", "Relative humidity", least: "0", most: "100").Hint("Percent"),
        ],
        Read = reader =>
            Moisture.Equilibrium(
                reader.GivenQuantity("Temperature", "temperature", 0),
                Working.Given("Humidity", reader.Number("humidity"), QuantityKind.Percent, 0)
            ),
        Make = moisture => moisture,
        Results = moisture => [moisture],
        Verdicts = [new(Severity.Tip, "Good to about 1% moisture for any wood. Wood takes weeks to get there.")],
    }.Form;
}
