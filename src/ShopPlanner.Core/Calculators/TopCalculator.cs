using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Table tops and how they are fastened.</summary>
internal static class TopCalculator
{
    private static readonly Length WidestForEights = Length.FromInches(18);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("width", "Width of the top, across the grain", least: "2 in", most: "10 ft"),
        Key.Length("length", "Length of the top, along the grain", least: "2 in", most: "20 ft"),
        Key.LengthOrZero("overhang", "Overhang at each edge", "1 in", "3 ft"),
        Key.Choice("species", "Wood of the top", "oak-red", WoodChoices.Shrinking),
        Key.Choice(
            "sawn",
            "Rings",
            "flat",
            new("flat", "flat-sawn"),
            new("quarter", "quarter-sawn"),
            new("mixed", "mixed, or not known")
        ),
        Key.Number("swell", "Moisture rises by, percentage points", "3", "0", "20")
            .Hint("From the day you fasten it to the dampest"),
        Key.Number("shrink", "Moisture falls by, percentage points", "2", "0", "20")
            .Hint("From the day you fasten it to the driest"),
        Key.Choice("fixed", "Held fast at", "center", new("center", "the center line"), new("edge", "one long edge")),
        Key.Choice(
            "fastener",
            "Fasteners",
            "slots",
            new("slots", "screws in slots"),
            new("buttons", "wood buttons in a groove"),
            new("eights", "figure-eights"),
            new("clips", "metal clips in a groove")
        ),
        Key.Choice("gauge", "Screw", "8", [.. WoodScrews.Gauges.Select(one => new FormChoice($"{one.Gauge}", $"#{one.Gauge}"))]),
        Key.LengthOrZero("offset", "Offset of the clip", "1/2 in", "2 in").Hint("From the clip's packet"),
    ];

    private static readonly ImmutableArray<Refusal<TopAsked>> Refusals =
    [
        new(
            "overhang",
            asked => !asked.Frame.Value.IsPositive || !asked.Rail.Value.IsPositive,
            asked =>
                "leaves no frame under the top: it must be less than "
                + asked.Say(Length.FromTicks(Length.Min(asked.Width.Value, asked.TopLength.Value).Ticks / 2))
        ),
    ];

    private static readonly ImmutableArray<Remark<TopMade>> Verdicts =
    [
        new(
            Fails,
            made => made.Asked.Fastener == "eights" && made.Asked.Width.Value > WidestForEights,
            made =>
                $"Figure-eights swing too little for a top wider than about {made.Say(WidestForEights)}: use buttons, clips or "
                + "screws in slots."
        ),
        new(
            Watch,
            made => made.Asked.Overhang.Value * 3 > made.Asked.Frame.Value,
            "The top hangs far out. Someone who leans or sits on the edge can tip the table: make the frame wider, or the "
                + "overhang less."
        ),
        new(
            Watch,
            made => made.Asked.Fastener is "buttons" or "clips",
            made =>
                "Leave a gap on both sides of each tongue in its groove: "
                + $"{made.Swells.Figure.Text(made.Asked.Unit)} outward and "
                + $"{made.Shrinks.Figure.Text(made.Asked.Unit)} inward, or "
                + "a little more."
        ),
        new(
            Tip,
            made => made.Asked.Fastener == "slots",
            "Cut the slots across the grain of the top, put a washer under each screw head, and don't drive the screws hard."
        ),
        new(Tip, "Only the line that is held fast gets glue or a tight screw. Everything else must be able to slide."),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<TopAsked, TopMade>(
        "top-fastening",
        "Fasten a top",
        "How far a solid top travels over its frame, how long the slots must be, and where fasteners go."
    )
    {
        Keys = Keys,
        Read = TopAsked.Read,
        Refusals = Refusals,
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [Cautions.SmallParts, Cautions.GrooveWithoutGuard, ShopCautions.Router, Cautions.Tipping],
    }.Form;

    private sealed record TopAsked(
        LengthUnit Unit,
        Working<Length> Width,
        Working<Length> TopLength,
        Working<Length> Overhang,
        Working<double> Coefficient,
        Working<double> Swell,
        Working<double> Shrink,
        bool IsCentered,
        string Fastener,
        ScrewGauge Gauge,
        Working<Length> Offset
    ) : Question(Unit)
    {
        public Working<Length> Frame { get; } = Less("Frame width", Width, Overhang);

        public Working<Length> Rail { get; } = Less("Frame length", TopLength, Overhang);

        public static TopAsked Read(FormReader reader)
        {
            var row = ShrinkageTable.All.First(one => one.SpeciesId == reader.Choice("species"));
            var gauge = reader.Choice("gauge");
            return new(
                reader.Unit,
                reader.Given("Width of the top", "width"),
                reader.Given("Length of the top", "length"),
                reader.Given("Overhang", "overhang"),
                TopFastening.Coefficient(row, Enum.Parse<Sawn>(reader.Choice("sawn"), true)),
                Working.Given("Moisture rises by", reader.Number("swell"), QuantityKind.Percent, 1),
                Working.Given("Moisture falls by", reader.Number("shrink"), QuantityKind.Percent, 1),
                reader.Choice("fixed") == "center",
                reader.Choice("fastener"),
                WoodScrews.Gauges.First(one => $"{one.Gauge}" == gauge),
                reader.Given("Offset of the clip", "offset")
            );
        }

        private static Working<Length> Less(string name, Working<Length> top, Working<Length> overhang) =>
            Working.Of(
                name,
                top.Value - (overhang.Value * 2),
                "{top} − 2 × {overhang}",
                Working.Geometry,
                ("top", top),
                ("overhang", overhang)
            );
    }

    private sealed record TopMade(TopAsked Asked)
    {
        public Working<Length> Swells { get; } =
            TopFastening.Travel("Travel outward", Distance(Asked), Asked.Coefficient, Asked.Swell);

        public Working<Length> Shrinks { get; } =
            TopFastening.Travel("Travel inward", Distance(Asked), Asked.Coefficient, Asked.Shrink);

        public IEnumerable<Working?> Sizes =>
            [
                Swells,
                Shrinks,
                .. Slots,
                Asked.Fastener == "clips" ? TopFastening.ClipGroove(Asked.Offset) : null,
                TopFastening.Places("Along each long rail, from its end", Asked.Rail),
                TopFastening.Places("Along each short rail, from its end", Asked.Frame),
            ];

        private IEnumerable<Working> Slots
        {
            get
            {
                if (Asked.Fastener != "slots")
                    return [];
                var shank = Working.Looked(
                    $"Shank of a #{Asked.Gauge.Gauge} screw",
                    Asked.Gauge.Diameter,
                    new FineLengthFigure(Asked.Gauge.Diameter),
                    WoodScrews.DrillSource
                );
                var slot = TopFastening.Slot(shank, Swells, Shrinks);
                return [slot, TopFastening.Cut(slot, Asked.Unit)];
            }
        }

        public string Say(Length length) => Asked.Say(length);

        // From the line that stays put to the farthest fastener.
        private static Working<Length> Distance(TopAsked asked) =>
            asked.IsCentered
                ? Working.Of(
                    "From the center line",
                    Length.FromTicks((asked.Frame.Value.Ticks + 1) / 2),
                    "{frame} ÷ 2",
                    Working.Geometry,
                    ("frame", asked.Frame)
                )
                : Working.Of("From the fixed edge", asked.Frame.Value, "{frame}", Working.Geometry, ("frame", asked.Frame));
    }
}
