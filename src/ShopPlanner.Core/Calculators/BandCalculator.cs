using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Edge banding and veneer.</summary>
internal static class BandCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("length", "Panel length", most: "20 ft"),
        Key.Length("width", "Panel width", most: "10 ft"),
        Key.Count("count", "Panels", "1", "1", "1000"),
        Sides("long", "Long edges banded", "1"),
        Sides("short", "Short edges banded", "0"),
        Key.LengthOrZero("trim", "Extra length per edge, to trim", "1 in", "6 in"),
        Key.Number("waste", "For waste, percent", "10", "0", "100"),
        Key.Length("roll", "Length of a roll", least: "1 ft", most: "300 ft").Optional().Hint("Gives the rolls to buy"),
        Sides("faces", "Faces veneered", "0"),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<BandAsked, BandAsked>(
        "edge-band",
        "Edge banding and veneer",
        "How much banding and veneer to buy for a number of panels, with waste."
    )
    {
        Keys = Keys,
        Read = BandAsked.Read,
        Refusals =
        [
            new(
                "long",
                asked => asked is { Edges: 0, Faces: 0 },
                "and 0 elsewhere leave nothing to band: pick an edge or a face"
            ),
        ],
        Make = asked => asked,
        Results = asked => asked.Figures,
        Verdicts =
        [
            new(
                Tip,
                asked => asked.Edges > 0,
                "Buy from one batch: color and thickness differ between rolls. Cut panels smaller by thick banding, 1/16 in "
                    + "(1.5 mm) and more, on each banded edge."
            ),
            new(
                Watch,
                asked => asked.Faces == 1,
                "Veneer on one face alone pulls the panel hollow. Veneer the other face too, with the grain the same way."
            ),
        ],
        Cautions = [ShopCautions.HotIron],
    }.Form;

    private static FormKey Sides(string name, string label, string usual) =>
        Key.Choice(name, label, usual, new("0", "none"), new("1", "one"), new("2", "both"));

    private sealed record BandAsked(
        LengthUnit Unit,
        Working<Length> PanelLength,
        Working<Length> PanelWidth,
        Working<double> Panels,
        int Long,
        int Short,
        int Faces,
        Working<Length> Trim,
        Working<double> Waste,
        Working<Length>? Roll
    ) : Question(Unit)
    {
        public int Edges => Long + Short;

        public IEnumerable<Working?> Figures =>
            Edges == 0
                ? [Veneer]
                : [Band, Roll is { } roll ? EdgeBands.Rolls(Band, roll) : null, All, Faces == 0 ? null : Veneer];

        // A panel that is wider than long is named the other way round: long edges are the longer ones.
        private Working<Length> Longer => PanelLength.Value >= PanelWidth.Value ? PanelLength : PanelWidth;

        private Working<Length> Shorter => PanelLength.Value >= PanelWidth.Value ? PanelWidth : PanelLength;

        private Working<Length> All =>
            Working.Of(
                "All banded edges",
                ((Longer.Value * Long) + (Shorter.Value * Short)) * (long)Panels.Value,
                $"{{panels}} × ({Long} × {{longer}} + {Short} × {{shorter}})",
                Working.Geometry,
                ("panels", Panels),
                ("longer", Longer),
                ("shorter", Shorter)
            );

        private Working<Length> Band => EdgeBands.Band(All, Number("Edges", Edges * Panels.Value), Trim, Waste);

        private Working<double> Veneer => EdgeBands.Veneer(PanelLength, PanelWidth, Number("Faces", Faces * Panels.Value), Waste);

        public static BandAsked Read(FormReader reader) =>
            new(
                reader.Unit,
                reader.Given("Panel length", "length"),
                reader.Given("Panel width", "width"),
                Number("Panels", reader.Count("count")),
                Sides(reader, "long"),
                Sides(reader, "short"),
                Sides(reader, "faces"),
                reader.Given("Extra to trim", "trim"),
                Working.Given("Waste", reader.Number("waste"), QuantityKind.Percent, 1),
                reader.MaybeGiven("Roll", "roll")
            );

        private static int Sides(FormReader reader, string key) =>
            int.Parse(reader.Choice(key), NumberStyles.None, CultureInfo.InvariantCulture);

        private static Working<double> Number(string name, double value) => Working.Given(name, value, QuantityKind.Bare, 0);
    }
}
