using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Overlay of cup hinges.</summary>
internal static class CupOverlayCalculator
{
    private const double LeastEdge = 3;
    private const double MostEdge = 8;
    private const double LeastPlate = -2;
    private const double MostPlate = 18;
    private const double LeastGap = 1;

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice(
            "arm",
            "Hinge",
            "full",
            new("full", "full overlay, straight arm"),
            new("medium", "overlay, constant 3 mm less"),
            new("half", "half overlay, two doors on one side"),
            new("inset", "inset, door in the opening")
        ),
        Key.Number("constant", "Constant from the hinge's sheet, mm", least: "-10", most: "30")
            .Optional()
            .Hint("Blank = the usual one of this kind of hinge"),
        Key.Number("edge", "Wood between cup and door edge, mm", "5", "3", "8"),
        Key.Number("plate", "Plate height, mm", "3", "-2", "18").Hint("Printed on the plate or its sheet"),
        Key.Number("overlay", "Overlay you want, mm", least: "0", most: "40")
            .Optional()
            .Hint("Gives the plate and the edge for it"),
        Key.Length("side", "Thickness of the case side", "3/4 in", "3/8 in", "2 in"),
        Key.Length("door", "Thickness of the door", "3/4 in", "5/8 in", "2 in"),
    ];

    private static readonly ImmutableArray<Remark<OverlayMade>> Verdicts =
    [
        new(
            Fails,
            made => made.Asked.IsInset && made.Main.Value < LeastGap,
            "The door rubs on the case. Use a higher plate, or leave less wood between cup and edge."
        ),
        new(
            Fails,
            made => !made.Asked.IsInset && made.Main.Value < 0,
            "The door doesn't cover the case at all. Use a lower plate, or a hinge with more overlay."
        ),
        new(
            Fails,
            made => !made.Asked.IsInset && made.Asked.Arm != "half" && made.Covered > made.Asked.Side,
            made =>
                $"The door reaches {made.Asked.Say(made.Covered - made.Asked.Side)} past the case side and hits whatever is "
                + "next to it. Use a higher plate, or leave less wood between cup and edge."
        ),
        new(
            Fails,
            made => made.Asked.Arm == "half" && made.Covered * 2 > made.Asked.Side,
            "Two doors with this overlay meet before they both fit on the side. Use a higher plate, or a thicker side."
        ),
        new(
            Watch,
            made => made.Plate is { Value: < LeastPlate or > MostPlate },
            "No plate is made that low or high: choose another hinge for this overlay."
        ),
        new(
            Watch,
            made => made.Edge is { Value: < LeastEdge or > MostEdge },
            "With this plate the cup would sit less than 3 mm or more than 8 mm from the edge. Change the plate instead."
        ),
        new(
            Tip,
            "Hinges, cups and plates are made in millimeters: set them "
                + "in millimeters. The hinge maker's sheet has the last word. "
                + "The screws of the hinge move the door a few millimeters either way."
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<OverlayAsked, OverlayMade>(
        "hinge-overlay",
        "Cup hinge overlay",
        "How far a door on cup hinges covers the case, and which plate gives the overlay you want."
    )
    {
        Keys = Keys,
        Read = OverlayAsked.Read,
        Refusals =
        [
            new("overlay", asked => asked is { IsInset: true, Wanted: not null }, "is for a door on the case: not an inset one"),
        ],
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [Cautions.LargeBit, Cautions.SmallParts],
    }.Form;

    private sealed record OverlayAsked(
        LengthUnit Unit,
        string Arm,
        Working<double> Constant,
        Working<double> Edge,
        Working<double> Plate,
        Working<double>? Wanted,
        Length Side,
        Working<Length> Door
    ) : Question(Unit)
    {
        public bool IsInset => Arm == "inset";

        public static OverlayAsked Read(FormReader reader)
        {
            var arm = reader.Choice("arm");
            return new(
                reader.Unit,
                arm,
                reader.MaybeNumber("constant") is { } own ? Given("Hinge constant", own) : CupOverlay.Constant(arm),
                Given("Wood between cup and edge", reader.Number("edge")),
                Given("Plate height", reader.Number("plate")),
                reader.MaybeNumber("overlay") is { } wanted ? Given("Overlay wanted", wanted) : null,
                reader.Length("side"),
                reader.Given("Door thickness", "door")
            );
        }

        private static Working<double> Given(string name, double value) => Working.Given(name, value, CupOverlay.Millimetres, 1);
    }

    private sealed record OverlayMade(OverlayAsked Asked)
    {
        public Working<double> Main { get; } =
            Asked.IsInset
                ? CupOverlay.Gap(Asked.Constant, Asked.Edge, Asked.Plate)
                : CupOverlay.Overlay(Asked.Constant, Asked.Edge, Asked.Plate);

        public Working<double>? Plate { get; } =
            Asked.Wanted is { } wanted ? CupOverlay.Plate(Asked.Constant, Asked.Edge, wanted) : null;

        public Working<double>? Edge { get; } =
            Asked.Wanted is { } wanted ? CupOverlay.Edge(Asked.Constant, Asked.Plate, wanted) : null;

        public Length Covered => Length.FromMillimetres((decimal)Main.Value);

        public IEnumerable<Working?> Sizes =>
            [
                Main,
                Plate,
                Edge,
                Asked.IsInset || Covered > Asked.Side ? null : Reveal,
                CupOverlay.CupCenter(Asked.Edge),
                CupOverlay.ScrewLine(Asked.Edge),
                Asked.IsInset ? CupOverlay.Setback(Asked.Door) : null,
            ];

        private Working<Length> Reveal =>
            Working.Of(
                "Case side left showing",
                Asked.Side - Covered,
                "{side} − {overlay}",
                Working.Geometry,
                ("side", Working.Given("Case side", Asked.Side)),
                ("overlay", Main)
            );
    }
}
