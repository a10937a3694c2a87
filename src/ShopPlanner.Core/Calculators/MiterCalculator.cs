using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Angles;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Miters, bevels and splayed sides.</summary>
internal static class MiterCalculator
{
    private const double MostTilt = 45;
    private const double MostGauge = 60;

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Count("sides", "Number of equal sides", "4", "3", "60"),
        Key.Number("slope", "Slope of the sides, degrees from upright", "0", "0", "90")
            .Hint("0 = upright box, 90 = flat frame, between = splayed"),
        Key.Choice("corner", "Corners", "miter", new("miter", "mitered"), new("butt", "butted, four sides only")),
        Key.Length("across", "Size across", most: "40 ft").Optional().Hint("Gives the length of each side"),
        Key.Choice(
            "measure",
            "Measured across",
            "flats",
            new("flats", "flats (the circle inside)"),
            new("corners", "corners (the circle around)")
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<MiterAsked, MiterMade>(
        "miter",
        "Miters and splayed sides",
        "Saw angles for frames, boxes and tapered boxes of any number of equal sides."
    )
    {
        Keys = Keys,
        Read = reader =>
            new(
                reader.Unit,
                Working.Given("Sides", reader.Count("sides"), QuantityKind.Bare, 0),
                Slope(reader.Number("slope")),
                reader.Choice("corner") == "butt",
                reader.MaybeGiven("Size across", "across"),
                reader.Choice("measure") == "corners"
            ),
        Refusals =
        [
            new(
                "corner",
                asked => asked is { IsButt: true, Sides.Value: not 4 },
                "works for four sides only: choose mitered corners"
            ),
        ],
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Watch,
                made => made.Tilt.Value > MostTilt,
                made =>
                    "Most saws tilt to 45°. Stand the piece on edge in a jig and tilt the blade to "
                    + $"{Say(90 - made.Tilt.Value)} instead."
            ),
            new(
                Watch,
                made => made.Gauge.Value > MostGauge,
                "Most miter gauges stop at 60° or less: use a wedge or a sled for this angle."
            ),
            new(
                Tip,
                made => !made.Asked.IsButt,
                made =>
                    $"Errors add up: 0.1° in each of {2 * made.Asked.Sides.Value:0} cuts leaves the last joint open by "
                    + $"{Say(0.2 * made.Asked.Sides.Value)}. Cut a set from scrap and close it first."
            ),
            new(
                Tip,
                made => made.Asked.Slope.Value is > 0 and < 90,
                made => $"Bevel the top and bottom edges at {Say(made.Asked.Slope.Value)} so that they lie level."
            ),
            new(Tip, "Saw scales read from square: a 90° cut is 0 on the gauge."),
        ],
        MostSevereFirst = true,
        Cautions = [ShopCautions.AngledCuts, Cautions.Guards, Cautions.TrappedCutoff, Cautions.SmallParts],
    }.Form;

    private static Working<double> Slope(double degrees) =>
        Working.Looked("Slope", degrees, new AngleFigure(degrees), Working.AsGiven);

    private static string Say(double degrees) => Math.Round(degrees, 2).ToString("0.##", CultureInfo.InvariantCulture) + "°";

    private sealed record MiterAsked(
        LengthUnit Unit,
        Working<double> Sides,
        Working<double> Slope,
        bool IsButt,
        Working<Length>? Across,
        bool IsCorners
    ) : Question(Unit);

    private sealed record MiterMade(MiterAsked Asked)
    {
        public Working<double> Gauge { get; } =
            Asked.IsButt ? Miters.ButtGauge(Asked.Slope) : Miters.Gauge(Asked.Sides, Asked.Slope);

        public Working<double> Tilt { get; } =
            Asked.IsButt ? Miters.ButtTilt(Asked.Slope) : Miters.Tilt(Asked.Sides, Asked.Slope);

        public IEnumerable<Working?> Sizes =>
            [
                // A flat frame is cut by the gauge, an upright box by the tilt: what is set comes first.
                .. Asked.Slope.Value > 0 ? new[] { Gauge, Tilt } : [Tilt, Gauge],
                Miters.Between(Asked.Sides, Asked.Slope),
                Asked.Across is { } across ? Miters.Side(across, Asked.Sides, Asked.IsCorners) : null,
            ];
    }
}
