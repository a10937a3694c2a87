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
        Key.Length("reach", "How far each reaches out", most: "5 ft").Optional().Hint("Blank = as deep as the base"),
        Key.Quantity("open-weight", "Weight of what is open, total", QuantityKind.Mass, "10 lb", "0 lb", "1000 lb"),
        Key.Quantity("leaning", "Load on the end of what is open", QuantityKind.Mass, "60 lb", "0 lb", "500 lb")
            .Hint("60 lb stands in for a child climbing"),
        Key.Choice("floor", "Floor", "hard", new("hard", "hard floor"), new("carpet", "carpet")),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<StabilityAsked, StabilityMade>(
        "stability",
        "Stability",
        "Whether a piece tips with its doors or drawers open."
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
                "It tips. Fix it to the wall, make the base deeper, or let only one drawer open at a time."
            ),
            new(Safety, made => made.Factor.Value is >= 1 and < 1.5, "It stays up, but only just. Fix it to the wall."),
            new(
                Fine,
                made => made.Factor.Value is not < 1.5,
                "By this figure it stays up. Climbing, sloping floors and bumps aren't counted."
            ),
            new(
                Safety,
                made => made.Height >= Tipping.TallFrom,
                "At 27 in or taller, anchor it to the wall whatever the figure says: a homemade piece has not been tested."
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
                Tipping.OnFloor(IsOnCarpet)
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
                    "Stability factor",
                    "nothing tips it",
                    new WordFigure("nothing reaches out in front"),
                    Tipping.Statics
                );
    }
}
