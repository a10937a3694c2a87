using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>How much finish to buy.</summary>
internal static class CoatCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Quantity("area", "Area to coat", QuantityKind.Area, null, "0.1 ft²", "10000 ft²")
            .Hint("Both faces and the edges of every part you coat"),
        Key.Choice("product", "Finish", "paint", [.. Coats.Products.Select(one => new FormChoice(one.Id, one.Name))]),
        Key.Count("coats", "Coats", least: "1", most: "20").Optional(),
        Key.Quantity(
                "coverage",
                "Coverage on the label, per gallon or liter",
                QuantityKind.Coverage,
                null,
                "10 ft²/gal",
                "2000 ft²/gal"
            )
            .Optional(),
        Key.Number("loss", "Waste, percent", "10", "0", "100"),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<CoatsAsked, CoatsMade>(
        "coats",
        "Coats of finish",
        "How much finish to buy, how long it dries, and how much sandpaper you need."
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
                "The label's coverage, recoat time and lowest temperature come before these figures. Try it on scrap of "
                    + "the same wood first."
            ),
        ],
        Cautions =
        [
            Cautions.Solvents,
            new(Cautions.OilyRags, made => made.MayHoldOil),
            new(Cautions.LeadPaint, made => made.MayCoverPaint),
            Cautions.Dust,
        ],
    }.Form;
}
