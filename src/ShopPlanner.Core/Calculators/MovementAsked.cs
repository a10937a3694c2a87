using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of wood that moves.</summary>
internal sealed record MovementAsked(Shrinkage Wood, Working<Length> Width, Working<double> From, Working<double> To, Sawn Sawn)
{
    public static MovementAsked Read(FormReader reader) =>
        new(
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
        var isHumidity = text.Contains("RH", StringComparison.OrdinalIgnoreCase);
        var number = text.Replace("RH", "", StringComparison.OrdinalIgnoreCase).Replace("%", "", StringComparison.Ordinal).Trim();
        var (least, most) = isHumidity ? (0.0, 100.0) : (0.0, 40.0);
        if (!QuantityText.TryNumber(number, out var value))
            reader.Refuse(key, "isn't a moisture: write a percent like 8%, or a humidity like 45% RH");
        else if (value < least || value > most)
            reader.Refuse(key, FormattableString.Invariant($"is out of range: {least} to {most}%"));
        return !isHumidity
            ? Working.Given("Moisture", value, QuantityKind.Percent, 1)
            : Moisture.Equilibrium(
                Working.Given("Temperature", Moisture.RoomCelsius, QuantityKind.Temperature, 0),
                Working.Given("Humidity", value, QuantityKind.Percent, 0)
            );
    }
}

/// <summary>Movement worked out.</summary>
/// <param name="Width">Before.</param>
/// <param name="Change">Of the width.</param>
internal sealed record MovementMade(Working<Length> Width, Working<Length> Change)
{
    /// <summary>Whether it moves so little that it may be fixed across its width.</summary>
    public bool IsFixedSafe => Movement.IsFixedSafe(Change.Value);

    /// <summary>The change, the width then, and the room it wants.</summary>
    public IEnumerable<Working> Changes => [Change, After, Slot, Gap];

    private Length Size => Length.FromTicks(Math.Abs(Change.Value.Ticks));

    private Length Half => Length.FromTicks((Size.Ticks + 1) / 2);

    private Working<Length> After =>
        Working.Of(
            "New width",
            Width.Value + Change.Value,
            "{width} + {change}",
            Working.Geometry,
            ("width", Width),
            ("change", Change)
        );

    private Working<Length> Slot =>
        Working.Of(
            "Slot length beyond the screw, total",
            Size,
            new FineLengthFigure(Size),
            "same as {change}",
            Movement.FixedRule,
            ("change", Change)
        );

    private Working<Length> Gap =>
        Working.Of(
            "Clearance for a panel at each side",
            Half,
            new FineLengthFigure(Half),
            "{change} ÷ 2",
            Working.Geometry,
            ("change", Change)
        );
}
