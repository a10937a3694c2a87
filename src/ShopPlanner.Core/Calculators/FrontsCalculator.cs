using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Drawer fronts.</summary>
internal static class FrontsCalculator
{
    // Less than this, and a drawer behind it holds next to nothing.
    private static readonly Length LeastFront = Length.FromInches(2.5m);
    private static readonly Length TightGap = Length.FromInches(0.0625m);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice("fit", "Fronts", "overlay", new("overlay", "overlay, on the case"), new("inset", "inset, in the opening")),
        Key.Length("height", "Height", most: "10 ft").Hint("Overlay: the height they cover. Inset: the opening"),
        Key.Length("width", "Width", most: "10 ft").Hint("Overlay: the width they cover. Inset: the opening"),
        Key.Count("count", "How many, one above the other", "3", "1", "20"),
        Key.LengthOrZero("outer", "Gap at each outer edge", "1/8 in", "2 in"),
        Key.LengthOrZero("between", "Gap between fronts", "1/8 in", "2 in"),
        Key.Choice(
            "graded",
            "Heights",
            "equal",
            new("equal", "all alike"),
            new("step", "taller going down, by an amount"),
            new("ratio", "taller going down, by a ratio")
        ),
        Key.LengthOrZero("step", "Each taller by", "1 in", "12 in").Hint("For heights that grow by an amount"),
        Key.Number("ratio", "Each taller, times", "1.25", "1", "3").Hint("For heights that grow by a ratio"),
        Key.Length("thickness", "Thickness of the fronts", "3/4 in", most: "3 in").Hint("For the parts list"),
    ];

    private static readonly ImmutableArray<Refusal<FrontsAsked>> Refusals =
    [
        new(
            "outer",
            asked => asked.Outer.Value * 2 >= asked.Width.Value,
            asked => $"leaves no width: it must be less than {asked.Say(Length.FromTicks(asked.Width.Value.Ticks / 2))}"
        ),
        new(
            "count",
            asked => !asked.Shared.Value.IsPositive,
            asked => $"leaves no height between the gaps: fewer fronts than fill {asked.Say(asked.Height.Value)}"
        ),
        new(
            "step",
            asked => asked.Graded == Graded.Step && asked.First < 1,
            asked =>
                "leaves nothing for the top front: less than "
                + asked.Say(Length.FromTicks(asked.Shared.Value.Ticks * 2 / (asked.Count * Math.Max(1, asked.Count - 1))))
        ),
        new("ratio", asked => asked.Graded == Graded.Ratio && asked.First < 1, "leaves nothing for the top front: a smaller one"),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<FrontsAsked, FrontsMade>(
        "fronts",
        "Drawer fronts",
        "Heights of drawer fronts, equal or taller going down, that fill a case or an opening."
    )
    {
        Keys = Keys,
        Read = FrontsAsked.Read,
        Refusals = Refusals,
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Watch,
                made => made.Heights[0] < LeastFront,
                made => $"The top front is only {made.Asked.Say(made.Heights[0])} high. A drawer behind it holds little."
            ),
            new(
                Watch,
                made =>
                    Length.Min(made.Asked.Outer.Value, made.Asked.IsSingle ? made.Asked.Outer.Value : made.Asked.Between.Value)
                    < TightGap,
                made =>
                    $"A gap under {made.Asked.Say(TightGap)} closes up when solid fronts swell. Work out their movement, or use "
                    + "plywood or MDF."
            ),
            new(
                Watch,
                made => made.Asked.IsOverlay,
                "Check each front against its drawer box: it must cover the box and leave room for the slides."
            ),
            new(Tip, "Set the gaps with shims while you fasten the fronts, from the bottom one up."),
        ],
        MostSevereFirst = true,
        Cautions = [Cautions.Tipping, Cautions.Guards, Cautions.TrappedCutoff, Cautions.SmallParts],
        Parts = made => made.Proposed,
    }.Form;
}
