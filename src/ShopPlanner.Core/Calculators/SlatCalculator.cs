using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Bed slats and bench seats.</summary>
internal static class SlatCalculator
{
    // A slat that gives more than this feels weak (common practice).
    private const int SpringyPart = 100;

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("span", "Span between supports", least: "4 in", most: "10 ft"),
        Key.Length("width", "Width of the slat or plank", least: "1/2 in", most: "24 in"),
        Key.Length("thickness", "Thickness", least: "1/4 in", most: "4 in"),
        Key.Choice("species", "Wood", "spruce-pine-fir", [.. BendingTable.All.Select(row => new FormChoice(row.Id, row.Name))]),
        Key.Quantity("load", "Weight of one person", QuantityKind.Mass, "250 lb", "50 lb", "1000 lb")
            .Hint("On a bed, all of it on one slat: someone kneels or stands"),
        Key.Count("people", "People side by side", "1", "1", "8").Hint("For a bench. A bed slat: 1"),
    ];

    private static readonly ImmutableArray<Remark<SlatMade>> Verdicts =
    [
        new(
            Fails,
            made => !made.IsStrong,
            "It can break. Use thicker wood, a shorter span or a rail under the middle: twice the thickness carries four times "
                + "as much."
        ),
        new(
            Watch,
            made => made is { IsStrong: true, IsStrongWithKnots: false },
            "Only straight-grained wood without knots in the middle third is strong enough. Sort the boards, or use thicker ones."
        ),
        new(
            Fine,
            made => made.IsStrongWithKnots,
            "Strong enough for sound lumber with small knots, at a tenth of what clear wood breaks at."
        ),
        new(
            Watch,
            made => made.IsSpringy,
            made =>
                "It gives more than a hundredth of its span "
                + $"({made.Asked.Say(made.Springy)}) and feels springy. A rail under the "
                + "middle makes it eight times as stiff."
        ),
        new(Tip, "A load that others share on a mattress isn't counted: each slat must carry one person alone."),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<SlatAsked, SlatMade>(
        "slats",
        "Bed slats and bench seats",
        "Whether a slat or seat plank carries the people on it, and how much it gives."
    )
    {
        Keys = Keys,
        Read = SlatAsked.Read,
        Make = asked => new(asked),
        Results = made => made.Figures,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [ShopCautions.PeopleLoad],
    }.Form;

    private sealed record SlatAsked(
        LengthUnit Unit,
        Working<Length> Span,
        Working<Length> Width,
        Working<Length> Thickness,
        Bending Wood,
        Working<double> Load,
        Working<double> People
    ) : Question(Unit)
    {
        public static SlatAsked Read(FormReader reader)
        {
            var species = reader.Choice("species");
            return new(
                reader.Unit,
                reader.Given("Span", "span"),
                reader.Given("Width", "width"),
                reader.Given("Thickness", "thickness"),
                BendingTable.All.First(row => row.Id == species),
                reader.GivenQuantity("One person", "load", 0),
                Working.Given("People", reader.Count("people"), QuantityKind.Bare, 0)
            );
        }
    }

    private sealed record SlatMade(SlatAsked Asked)
    {
        private readonly Working<double> carries = PeopleBeam.Carries(
            Asked.Wood,
            Asked.People,
            Asked.Span,
            Asked.Width,
            Asked.Thickness,
            Asked.Unit
        );

        private readonly Working<double> stress = PeopleBeam.Bends(
            Asked.Load,
            Asked.People,
            Asked.Span,
            Asked.Width,
            Asked.Thickness
        );

        private readonly Working<Length> gives = PeopleBeam.Sags(
            Asked.Load,
            Asked.People,
            Working.Looked(
                "Modulus of elasticity of " + WoodNames.InText(Asked.Wood.Name),
                Asked.Wood.Elasticity,
                QuantityKind.Modulus,
                2,
                Asked.Wood.Source
            ),
            Asked.Span,
            Asked.Width,
            Asked.Thickness
        );

        public bool IsStrong => stress.Value <= Asked.Wood.Rupture / PeopleBeam.Clear;

        public bool IsStrongWithKnots => stress.Value <= Asked.Wood.Rupture / PeopleBeam.Knotty;

        public bool IsSpringy => gives.Value > Springy;

        public Length Springy => Length.FromTicks(Asked.Span.Value.Ticks / SpringyPart);

        public IEnumerable<Working> Figures => [carries, gives, stress, PeopleBeam.LimitOf(Asked.Wood)];
    }
}
