using System.Collections.Immutable;
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
        Key.Length("depth", "Depth of the case", most: "10 ft"),
        Key.LengthOrZero("toe", "Toe space under the front", "0 in", "2 ft").Hint("How far the base stands back from the front"),
        Key.Length("height", "Height", most: "10 ft"),
        Key.Quantity("weight", "Weight, empty", QuantityKind.Mass, null, "1 lb", "2000 lb").Hint("With its doors and drawers"),
        Key.Count("doors", "Doors or drawers that open at once", "1", "0", "12"),
        Key.Length("reach", "How far each reaches out", most: "5 ft").Optional().Hint("Blank = as deep as the case"),
        Key.Quantity("open-weight", "Weight of each that is open", QuantityKind.Mass, "10 lb", "0 lb", "1000 lb"),
        Key.Quantity("leaning", "Load on the end of what is open", QuantityKind.Mass, "60 lb", "0 lb", "500 lb")
            .Hint("60 lb stands in for a child climbing"),
        Key.Choice("floor", "Floor", "hard", new("hard", "hard floor"), new("carpet", "carpet")),
    ];

    private static readonly ImmutableArray<Refusal<StabilityAsked>> Refusals =
    [
        new(
            asked => asked.Toe.Value.IsPositive ? "toe" : "depth",
            asked => !asked.HasWeightBehind,
            asked =>
                "leaves no weight behind the edge it tips over: toe space and sinking edge must stay under half of the depth of "
                + asked.Say(asked.Depth.Value)
        ),
        new(
            "open-weight",
            asked => asked.Closed.Value <= 0,
            asked =>
                $"makes {asked.Open.Figure.Text(asked.Unit)} open at once: it must be less than the whole piece, "
                + asked.Weight.Figure.Text(asked.Unit)
        ),
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
        Refusals = Refusals,
        Make = asked => new(asked, asked.Factor),
        Results = made => [made.Shown],
        Verdicts =
        [
            new(
                Fails,
                made => made.Factor.Value < 1,
                "It tips. Anchor it to the wall, make the base deeper, or let only one drawer open at a time."
            ),
            new(Safety, made => made.Factor.Value is >= 1 and < 1.5, "It stays up, but only just. Anchor it to the wall."),
            new(
                Fine,
                made => made.Factor.Value is not < 1.5,
                made =>
                    made.Asked.Leaning.Value > 0
                        ? "By this figure it stays up under the load you entered. Sloping floors, bumps and a "
                            + "second child aren't counted."
                        : "By this figure it stays up as long as nobody leans on it or climbs it. Sloping floors and "
                            + "bumps aren't counted either."
            ),
            new(
                Safety,
                made => made.Asked.Height >= Tipping.TallFrom,
                "At 27 in or taller, anchor it to the wall whatever the figure says: a homemade piece has not been tested."
            ),
        ],
        Cautions = [Cautions.Tipping, Cautions.WallFixing],
    }.Form;

    private sealed record StabilityMade(StabilityAsked Asked, Working<double> Factor)
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
