using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>How much finish to buy.</summary>
internal static class CoatCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Quantity("area", "Area to be coated", QuantityKind.Area, null, "0.01 m²", "10000 ft²")
            .Hint("Both faces and the edges of every part that is coated"),
        Key.Choice("product", "Finish", "paint", [.. Coats.Products.Select(one => new FormChoice(one.Id, one.Name))]),
        Key.Count("coats", "Coats", least: "1", most: "20").Optional(),
        Key.Quantity(
                "coverage",
                "What the label says a gallon or litre covers",
                QuantityKind.Coverage,
                null,
                "10 ft²/gal",
                "2000 ft²/gal"
            )
            .Optional(),
        Key.Number("loss", "Loss, percent", "10", "0", "100"),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<CoatsAsked, CoatsMade>(
        "coats",
        "Coats of finish",
        "How much finish to buy, how long the coats wait, and what paper the sanding takes."
    )
    {
        Keys = Keys,
        Read = CoatsAsked.Read,
        Make = CoatsMade.Of,
        Results = made => [made.Volume, made.ToBuy, made.Waiting, made.Paper],
        Verdicts =
        [
            new(
                Severity.Watch,
                "The label's coverage, recoat time and least temperature come before these figures. Try it on a "
                    + "scrap of the same "
                    + "wood first."
            ),
        ],
        Cautions =
        [
            Cautions.Solvents,
            new(Cautions.OilyRags, made => made.IsStain),
            new(Cautions.LeadPaint, made => !made.IsStain),
            Cautions.Dust,
        ],
    }.Form;
}
