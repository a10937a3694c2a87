using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Stability;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Whether a piece stands.</summary>
internal static class StabilityCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("width", "Width of the base", "30 in", most: "10 ft"),
        Key.Length("depth", "Depth of the base", most: "5 ft"),
        Key.Length("height", "Height", most: "10 ft"),
        Key.Quantity("weight", "Weight, empty", QuantityKind.Mass, null, "1 lb", "2000 lb"),
        Key.Count("doors", "Doors or drawers that open at once", "1", "0", "12"),
        Key.Length("reach", "How far each reaches out", most: "5 ft").Optional().Hint("As deep as the base where left out"),
        Key.Quantity("open-weight", "Weight of what stands open, all together", QuantityKind.Mass, "10 lb", "0 lb", "1000 lb"),
        Key.Quantity("leaning", "Load at the end of what stands open", QuantityKind.Mass, "60 lb", "0 lb", "500 lb")
            .Hint("60 lb stands for a child that climbs"),
        Key.Choice("floor", "Floor", "hard", new("hard", "hard floor"), new("carpet", "carpet")),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<StabilityAsked, StabilityMade>(
        "stability",
        "Stability",
        "Whether a piece tips when its doors or drawers are open."
    )
    {
        Keys = Keys,
        Read = StabilityAsked.Read,
        Make = asked => new(asked.Height, asked.Factor),
        Results = made => [made.Shown],
        Verdicts =
        [
            new(
                Fails,
                made => made.Factor.Value < 1,
                "It tips: fix it to the wall, make the base deeper, or let only one drawer open at a time."
            ),
            new(Watch, made => made.Factor.Value is >= 1 and < 1.5, "It stands, but not by much: fix it to the wall."),
            new(
                Fine,
                made => made.Factor.Value is not < 1.5,
                "It stands by this reckoning, which counts no climbing, no slope and no bump."
            ),
            new(
                Watch,
                made => made.Height >= Tipping.TallFrom,
                "At 27 in and more, anchor it to the wall whatever the figure says: a home-made piece is not tested."
            ),
        ],
        Cautions = [Cautions.Tipping, Cautions.WallFixing],
    }.Form;

    /// <summary>What is asked of a piece; nothing stands open where nothing opens.</summary>
    private sealed record StabilityAsked(
        Length Depth,
        Length Height,
        Length Reach,
        double Weight,
        double Open,
        double Leaning,
        bool IsOnCarpet
    )
    {
        public Working<double> Factor =>
            Tipping.Factor(
                Working.Given("Depth", Depth),
                Working.Given("Weight", Weight, QuantityKind.Mass, 0),
                Working.Given("Reach", Reach),
                Working.Given("Open weight", Open, QuantityKind.Mass, 0),
                Working.Given("Load leaning", Leaning, QuantityKind.Mass, 0),
                IsOnCarpet
            );

        public static StabilityAsked Read(FormReader reader)
        {
            var (depth, height, opens) = (reader.Length("depth"), reader.Length("height"), reader.Count("doors") > 0);
            var reach = reader.MaybeLength("reach") ?? depth;
            var weight = reader.Quantity("weight");
            var (open, leaning) = (reader.Quantity("open-weight"), reader.Quantity("leaning"));
            var isOnCarpet = reader.Choice("floor") == "carpet";
            // The width is drawn; nothing tips over its ends.
            _ = reader.Length("width");
            return opens
                ? new(depth, height, reach, weight, open, leaning, isOnCarpet)
                : new(depth, height, Length.Zero, weight, 0, 0, isOnCarpet);
        }
    }

    private sealed record StabilityMade(Length Height, Working<double> Factor)
    {
        public Working Shown =>
            double.IsFinite(Factor.Value)
                ? Factor
                : Working.Looked(
                    "Righting over tipping",
                    "nothing tips it",
                    new WordFigure("nothing stands out in front"),
                    Tipping.Statics
                );
    }
}
