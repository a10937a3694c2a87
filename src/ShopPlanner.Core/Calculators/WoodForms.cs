using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Moisture, movement, weight.</summary>
internal static class WoodForms
{
    public static readonly ImmutableArray<WorkingForm> All = [MoistureForm(), MovementForm(), WeightForm()];

    private static readonly string[] SideKeys = ["thickness", "width", "length"];

    /// <summary>Woods with shrinkage, to choose from.</summary>
    public static ImmutableArray<FormChoice> Shrinking =>
        [.. ShrinkageTable.All.Select(row => new FormChoice(row.SpeciesId, Name(row.SpeciesId)))];

    /// <summary>Woods and panels with stiffness and gravity, to choose from.</summary>
    public static ImmutableArray<FormChoice> Strong => [.. StrengthTable.All.Select(row => new FormChoice(row.Id, row.Name))];

    private static string Name(string id) => MaterialCatalogue.TryFindSpecies(id, out var species) ? species.Name : id;

    private static WorkingForm MoistureForm() =>
        new(
            "moisture",
            "Moisture of wood in a room",
            "The moisture that wood comes to in a room's air.",
            [
                new("temperature", "Temperature", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Temperature,
                    Default = "70 F",
                    Least = "-20 F",
                    Most = "300 F",
                },
                new("humidity", "Relative humidity", KeyKind.Number)
                {
                    Least = "0",
                    Most = "100",
                    Hint = "Percent",
                },
            ],
            reader =>
            {
                var temperature = Working.Given("Temperature", reader.Quantity("temperature"), QuantityKind.Temperature, 0);
                var humidity = Working.Given("Humidity", reader.Number("humidity"), QuantityKind.Percent, 0);
                return () =>
                    new Answer([Moisture.Equilibrium(temperature, humidity)])
                    {
                        Verdicts =
                        [
                            new(
                                Severity.Fine,
                                "Right to about 1 % of moisture, whatever the wood; wood takes weeks to come to it."
                            ),
                        ],
                    };
            }
        );

    private static WorkingForm MovementForm() =>
        new(
            "movement",
            "Movement across the grain",
            "How much a board or panel moves across its grain, and what room it wants.",
            [
                new("species", "Wood", KeyKind.Choice) { Default = "oak-red", Choices = Shrinking },
                new("width", "Width across the grain", KeyKind.Length) { Most = "10 ft" },
                new("from", "Moisture when built", KeyKind.Text)
                {
                    Default = "6 %",
                    Hint = "write percent of moisture, 8 %, or a humidity, 45 % RH",
                },
                new("to", "Moisture it may come to", KeyKind.Text)
                {
                    Default = "11 %",
                    Hint = "write percent of moisture, 8 %, or a humidity, 45 % RH",
                },
                new("cut", "How it is sawn", KeyKind.Choice)
                {
                    Default = "flat",
                    Choices =
                    [
                        new("flat", "flat-sawn: rings along the width"),
                        new("quarter", "quarter-sawn: rings across it"),
                        new("mixed", "mixed"),
                    ],
                },
            ],
            reader =>
            {
                var row = ShrinkageTable.Find(reader.Choice("species"))!;
                var (width, from, to) = (
                    Working.Given("Width", reader.Length("width")),
                    MoistureOf(reader, "from"),
                    MoistureOf(reader, "to")
                );
                var sawn = reader.Choice("cut") switch
                {
                    "quarter" => Sawn.Quarter,
                    "mixed" => Sawn.Mixed,
                    _ => Sawn.Flat,
                };
                return () => Moves(Movement.Change(row, width, from, to, sawn), width);
            }
        );

    // A plain percentage is moisture; with RH it is the room's humidity at 70 °F.
    private static Working<double> MoistureOf(FormReader reader, string key)
    {
        var text = reader.Text(key) ?? "8";
        var isHumidity = text.Contains("RH", StringComparison.OrdinalIgnoreCase);
        var number = text.Replace("RH", "", StringComparison.OrdinalIgnoreCase).Replace("%", "", StringComparison.Ordinal).Trim();
        var (least, most) = isHumidity ? (0.0, 100.0) : (0.0, 40.0);
        if (!QuantityText.TryNumber(number, out var value))
            reader.Refuse(key, "is not a moisture: write percent, 8 %, or a humidity, 45 % RH");
        else if (value < least || value > most)
            reader.Refuse(key, FormattableString.Invariant($"is outside what can be: from {least} to {most} %"));
        return !isHumidity
            ? Working.Given("Moisture", value, QuantityKind.Percent, 1)
            : Moisture.Equilibrium(
                Working.Given("Temperature", Moisture.RoomCelsius, QuantityKind.Temperature, 0),
                Working.Given("Humidity", value, QuantityKind.Percent, 0)
            );
    }

    private static FormOutcome Moves(Working<Length> change, Working<Length> width)
    {
        var size = Length.FromTicks(Math.Abs(change.Value.Ticks));
        var slot = Working.Of(
            "Slot beyond the screw, in all",
            size,
            new FineLengthFigure(size),
            "as much as {change}",
            Movement.FixedRule,
            ("change", change)
        );
        var half = Length.FromTicks((size.Ticks + 1) / 2);
        var gap = Working.Of(
            "Room for a panel at each side",
            half,
            new FineLengthFigure(half),
            "{change} ÷ 2",
            Working.Geometry,
            ("change", change)
        );
        var after = Working.Of(
            "Width then",
            width.Value + change.Value,
            "{width} + {change}",
            Working.Geometry,
            ("width", width),
            ("change", change)
        );
        return new Answer([change, after, slot, gap])
        {
            Verdicts =
            [
                Movement.IsFixedSafe(change.Value)
                    ? new(Severity.Fine, "It may be fastened all across: it hardly moves (common practice: up to about 1/16 in).")
                    : new(
                        Severity.Watch,
                        "Do not glue or screw it fast across its width: it would split or bow. Slotted screws, buttons, or free in a groove."
                    ),
            ],
        };
    }

    private static WorkingForm WeightForm() =>
        new(
            "weight",
            "Weight",
            "What a board, a sheet or a volume of wood weighs, and whether one person lifts it.",
            [
                new("material", "Wood or sheet", KeyKind.Choice) { Default = "pine-eastern-white", Choices = Strong },
                new("thickness", "Thickness", KeyKind.Length) { Optional = true, Most = "2 ft" },
                new("width", "Width", KeyKind.Length) { Optional = true, Most = "20 ft" },
                new("length", "Length", KeyKind.Length) { Optional = true, Most = "40 ft" },
                new("count", "Pieces", KeyKind.Count)
                {
                    Default = "1",
                    Least = "1",
                    Most = "10000",
                },
                new("volume", "Or the volume in board feet", KeyKind.Number)
                {
                    Optional = true,
                    Least = "0",
                    Most = "100000",
                },
                new("moisture", "Moisture, percent", KeyKind.Number)
                {
                    Default = "8",
                    Least = "0",
                    Most = "40",
                },
            ],
            reader =>
            {
                var row = StrengthTable.Find(reader.Choice("material"))!;
                var sides = SideKeys.Select(reader.MaybeLength).ToArray();
                var (volume, count, moisture) = (
                    reader.MaybeNumber("volume"),
                    reader.Count("count"),
                    Working.Given("Moisture", reader.Number("moisture"), QuantityKind.Percent, 0)
                );
                if (volume is null && sides.Any(side => side is null) && reader.Faults.Count == 0)
                    reader.Refuse("volume", "is not given, nor are thickness, width and length: one or the others are wanted");
                return () =>
                    Weighs(
                        row,
                        volume is { } feet
                            ? OfBoardFeet(feet)
                            : Area.Of(sides[1]!.Value, sides[2]!.Value) * sides[0]!.Value * count,
                        moisture
                    );
            }
        );

    private static Volume OfBoardFeet(double feet) =>
        Area.Of(Length.FromInches(12), Length.FromInches(12)) * Length.FromTicks((long)Math.Round(feet * Length.TicksPerInch));

    private static FormOutcome Weighs(Strength row, Volume volume, Working<double> moisture)
    {
        var weight = Weight.Of(volume, Weight.Density(row, moisture));
        var one = weight.Value <= Weight.OnePerson;
        var persons = Math.Ceiling(weight.Value / Weight.OnePerson).ToString(CultureInfo.InvariantCulture);
        return new Answer([weight])
        {
            Verdicts =
            [
                one
                    ? new(
                        Severity.Fine,
                        "One person can lift it under good conditions: near the body, with good hold (51 lb, 23 kg; from memory of the NIOSH equation)."
                    )
                    : new(
                        Severity.Watch,
                        $"Too heavy for one person: help of {persons}, or a cart. Sheets are awkward before they are heavy."
                    ),
            ],
        };
    }
}
