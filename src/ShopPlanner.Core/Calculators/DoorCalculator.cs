using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Frame-and-panel doors.</summary>
internal static class DoorCalculator
{
    private static readonly Length Wide = Length.FromInches(24);
    private static readonly Length Hold = Length.FromInches(0.125m);
    private static readonly Length Step = Length.FromTicks(Length.TicksPerInch / 32);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("opening-width", "Opening width", most: "10 ft"),
        Key.Length("opening-height", "Opening height", most: "10 ft"),
        Key.Count("leaves", "Doors", "1", "1", "2"),
        Key.Choice("fit", "Fit", "inset", new("inset", "inset, in the opening"), new("overlay", "overlay, on the face")),
        Key.LengthOrZero("gap", "Gap", "1/16 in", "1 in").Hint("All around an inset door; only between two overlay doors"),
        Key.LengthOrZero("middle", "Gap between two doors", most: "1 in").Optional().Hint("Blank = same as the gap"),
        Key.LengthOrZero("overlay", "Overlay at each side", "1/2 in", "6 in"),
        Key.Length("stile", "Stile width", "2 1/4 in", most: "12 in"),
        Key.Length("rail", "Rail width", most: "12 in").Optional().Hint("Blank = same as the stiles"),
        Key.Length("groove", "Depth of the groove", "3/8 in", most: "2 in").Hint("Also the length of the tongues"),
        Key.Length("panel", "Thickness of the panel", "1/4 in", most: "2 in").Hint("At its edges"),
        Key.LengthOrZero("clearance", "Clearance for the panel at each side", "1/16 in", "1 in"),
        Key.LengthOrZero("clearance-along", "Clearance above and below it", most: "1 in")
            .Optional()
            .Hint("Blank = half of the side clearance: wood hardly moves along the grain"),
        Key.LengthOrZero("oversize", "Cut long, to trim to size", "1/2 in", "3 in"),
        Key.Length("thickness", "Thickness of the frame", "3/4 in", most: "3 in"),
        Key.Choice("species", "Wood of a solid panel", null, WoodChoices.Shrinking).Optional(),
        Key.Number("built-at", "Moisture when built, %", "8", "4", "25"),
        Key.Number("dampest", "Moisture in the most humid season, %", "11", "4", "25"),
        Key.Number("driest", "Moisture in the driest season, %", "6", "2", "25"),
        Key.Length("shim", "Thickness of a playing card", "0.0115 in", "0.005 in", "1/4 in"),
    ];

    private static readonly ImmutableArray<Refusal<DoorAsked>> Refusals =
    [
        new(
            asked => asked is { Middle: not null, Leaves: 2 } ? "middle" : "gap",
            asked => !asked.Door.Width.Value.IsPositive,
            asked => $"is more than the opening of {asked.Say(asked.Width.Value)} takes: nothing is left of the door"
        ),
        new(
            "gap",
            asked => !asked.Door.Height.Value.IsPositive,
            asked => $"is more than the opening of {asked.Say(asked.Height.Value)} takes: nothing is left of the door"
        ),
        new(
            "stile",
            asked => asked.Stile.Value * 2 >= asked.Door.Width.Value,
            asked => $"is half the door or more: it must be less than half of {asked.Say(asked.Door.Width.Value)}"
        ),
        new(
            asked => asked.OwnRail is null ? "stile" : "rail",
            asked => asked.Rail.Value * 2 >= asked.Door.Height.Value,
            asked => $"is half the door's height or more: it must be less than half of {asked.Say(asked.Door.Height.Value)}"
        ),
        new(
            "groove",
            asked => asked.Groove.Value >= asked.Narrowest,
            asked => $"goes through a stile or rail: it must be less than {asked.Say(asked.Narrowest)}"
        ),
        new(
            "panel",
            asked => asked.Panel >= asked.Thickness,
            asked => $"is as thick as the frame: it must be less than {asked.Say(asked.Thickness)}"
        ),
        new(
            "driest",
            asked => asked.Driest > asked.Dampest,
            asked => FormattableString.Invariant($"is damper than the most humid season: at most {asked.Dampest:0.##}")
        ),
        new("clearance", asked => asked.Across.Value >= asked.Groove.Value, FallsOut),
        new("clearance-along", asked => asked.Along.Value >= asked.Groove.Value, FallsOut),
    ];

    private static readonly ImmutableArray<Remark<DoorMade>> Verdicts =
    [
        new(
            Fails,
            made => made.Growth is { } growth && growth.Value > made.Asked.Across.Value * 2,
            made =>
                $"The panel grows by {made.Growth!.Figure.Text(made.Asked.Unit)} across and would push the frame apart: leave at "
                + $"least {made.Say(made.Wanted)} at each side."
        ),
        new(
            Fails,
            made => made.Slips,
            "Pushed to one side, the panel slips out at the other. Cut the groove deeper or leave less clearance."
        ),
        new(
            Fails,
            made => made.FallsOut,
            made =>
                $"In the driest season the panel shrinks by {made.Shrinkage!.Figure.Text(made.Asked.Unit)}, "
                + "and pushed to one side it slips out at the other. Cut the groove at "
                + $"least {made.Say(made.DeepEnough)} deep, or pin the panel in the "
                + "middle of each rail."
        ),
        new(
            Watch,
            made => !made.Slips && made.Asked.Groove.Value - made.Asked.Across.Value < Hold,
            made => $"The panel's edges sit less than {made.Say(Hold)} in the groove. A deeper groove holds it better."
        ),
        new(
            Watch,
            made => made.Asked.Panel * 3 > made.Asked.Thickness + (Step * 3),
            made =>
                $"The groove is best a third of the frame's {made.Say(made.Asked.Thickness)} (Handwork in Wood): thin the "
                + $"panel's edges to {made.Say(Length.FromTicks(made.Asked.Thickness.Ticks / 3))}, or use a thicker frame."
        ),
        new(
            Watch,
            made => made.Asked.Door.Width.Value > Wide,
            made => $"A door wider than about {made.Say(Wide)} pulls hard on its hinges (common practice). Two doors are lighter."
        ),
        new(
            Watch,
            made => made.Asked.Gap.Value.IsPositive && made.Shims.Count.Value == 0,
            "The gap is thinner than half a card: set it with paper."
        ),
        new(
            Tip,
            made => made.Asked.Oversize.Value.IsPositive,
            "Cut the parts long, then trim the door to the real opening, with shims all around."
        ),
        new(Tip, "Leave the panel free in its groove; never glue it. Finish it before it goes in."),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<DoorAsked, DoorMade>(
        "door",
        "Frame-and-panel door",
        "Every part of a door from its opening: stiles, rails and panels, finished and rough."
    )
    {
        Keys = Keys,
        Read = DoorAsked.Read,
        Refusals = Refusals,
        Make = DoorMade.Of,
        Results = made => [.. made.Sizes, .. made.Numbers, made.Shims.Count, made.Shims.Thickness, made.Growth, made.Shrinkage],
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [Cautions.Guards, Cautions.GrooveWithoutGuard, Cautions.TrappedCutoff, Cautions.SmallParts],
        Parts = made => made.Proposed,
    }.Form;

    private static string FallsOut(DoorAsked asked) =>
        $"is as much as the groove is deep: the panel would fall out of {asked.Say(asked.Groove.Value)}";
}
