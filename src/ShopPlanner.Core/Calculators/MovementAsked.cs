using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of wood that moves.</summary>
internal sealed partial record MovementAsked(
    LengthUnit Unit,
    Shrinkage Wood,
    Working<Length> Width,
    Working<double> From,
    Working<double> To,
    Sawn Sawn
) : Question(Unit)
{
    public static MovementAsked Read(FormReader reader) =>
        new(
            reader.Unit,
            ShrinkageTable.Find(reader.Choice("species"))!,
            reader.Given("Width", "width"),
            MoistureOf(reader, "from"),
            MoistureOf(reader, "to"),
            Enum.Parse<Sawn>(reader.Choice("cut"), true)
        );

    // A plain percentage is moisture; with RH it is the room's humidity at 70 °F.
    private static Working<double> MoistureOf(FormReader reader, string key)
    {
        var text = reader.Text(key) ?? "8";
        var match = Percentage().Match(text.Length <= QuantityText.MaxCharacters ? text : "");
        var isHumidity = match.Groups["humidity"].Success;
        var (least, most) = isHumidity ? (0.0, 100.0) : (0.0, 40.0);
        if (!QuantityText.TryNumber(match.Groups["number"].Value, out var value))
            reader.Refuse(key, "isn't a moisture: write a percent like 8%, or a humidity like 45% RH");
        else if (value < least || value > most)
            reader.Refuse(key, string.Create(CultureInfo.InvariantCulture, $"is out of range: {least} to {most}%"));
        return !isHumidity
            ? Working.Given(key == "from" ? "Moisture when built" : "Moisture later", value, QuantityKind.Percent, 1)
            : Moisture.Equilibrium(
                Working.Given("Temperature", Moisture.RoomCelsius, QuantityKind.Temperature, 0),
                Working.Given("Humidity", value, QuantityKind.Percent, 0)
            );
    }

    [GeneratedRegex(
        @"^\s*(?<number>[-+0-9][^%A-Za-z]*?)\s*(%|percent)?\s*(?<humidity>r\.?h\.?|relative humidity)?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant
    )]
    private static partial Regex Percentage();
}
