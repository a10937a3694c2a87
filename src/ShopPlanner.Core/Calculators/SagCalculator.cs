using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>How shelves bend.</summary>
internal static class SagCalculator
{
    // Of each foot of span: from here on the eye sees the bend.
    private static readonly Length Seen = Length.FromInches(0.02m);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice("species", "Wood or sheet", "pine-eastern-white", WoodChoices.Strong),
        Key.Quantity("modulus", "Or its stiffness (modulus of elasticity)", QuantityKind.Modulus, null, "0.01 GPa", "100 GPa")
            .Optional()
            .Hint("In million psi or GPa, if you know it"),
        Key.Length("span", "Span between supports", most: "20 ft"),
        Key.Length("depth", "Depth, front to back", "11 1/4 in", most: "5 ft"),
        Key.Length("thickness", "Thickness", "3/4 in", "1/16 in", "6 in"),
        Key.Text("load", "Load", "25 lb/ft")
            .Hint("Per length like 25 lb/ft or 37 kg/m, per area like 40 lb/ft², or a total like 75 lb or 34 kg"),
        Key.Choice("support", "Ends", "pinned", new("pinned", "resting on pins or cleats"), new("fixed", "clamped at both ends")),
        Key.LengthOrZero("edge-strip", "Edge strip height", "0", "1 ft"),
        Key.Length("strip-thickness", "Edge strip thickness", "3/4 in", most: "3 in"),
        Key.Choice(
            "own-weight",
            "The shelf's own weight",
            "counted",
            new("counted", "counted"),
            new("left-out", "left out, as in span tables")
        ),
    ];

    private static readonly ImmutableArray<Remark<SagMade>> Verdicts =
    [
        new(
            Fails,
            made => made.IsOver,
            "It sags more than the limit. Use a shorter span, a thicker shelf, an edge strip or a center support."
        ),
        new(
            Watch,
            made => !made.IsOver && made.Foot > Seen,
            "It stays within the limit, but you will see the sag (more than 0.02 in per foot; common practice)."
        ),
        new(Fine, made => !made.IsOver && made.Foot <= Seen, "It stays within the limit and looks straight."),
        new(
            Watch,
            made => made.Asked.IsFixed,
            "Clamped ends cut the sag to a fifth, and shelves hardly ever have them: dadoes, screws and cleats let the ends "
                + "turn. Choose resting ends unless the shelf is built in as one piece with its sides."
        ),
        new(
            Watch,
            made => !made.Asked.IsNamed,
            "No wood or sheet is named, so weight and creep are those of MDF, the worst of the usual ones. Choose yours."
        ),
        new(
            Watch,
            made => made.IsStubby,
            "The span is less than ten thicknesses. A shelf this short and thick sags somewhat more than the figure, and may "
                + "split before it sags."
        ),
        new(Watch, "This is an estimate from averages of clear wood. Knots, gaps and damp make it worse."),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<SagAsked, SagMade>(
        "sag",
        "Shelf sag",
        "How much a shelf sags under its load, now and after years, against the usual limit."
    )
    {
        Keys = Keys,
        Read = SagAsked.Read,
        Make = asked => new(asked),
        Results = made => made.Deflections,
        Verdicts = Verdicts,
        Cautions = [Cautions.ShelfLoad],
    }.Form;
}
