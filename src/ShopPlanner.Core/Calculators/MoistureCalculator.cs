using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>The moisture that wood comes to in a room's air.</summary>
internal static class MoistureCalculator
{
    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<Working<double>, Working<double>>(
        "moisture",
        "Moisture of wood in a room",
        "The moisture that wood comes to in a room's air."
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
        Verdicts = [new(Severity.Fine, "Right to about 1 % of moisture, whatever the wood; wood takes weeks to come to it.")],
    }.Form;
}
