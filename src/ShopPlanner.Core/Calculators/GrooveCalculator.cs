using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Centred grooves and the tongues that fit them.</summary>
internal static class GrooveCalculator
{
    private const int ManySettings = 3;

    private static readonly Length Whisker = Length.FromInches(1m / 64);
    private static readonly Length ThinWall = Length.FromInches(0.125m);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("stock", "Thickness of the piece", most: "6 in"),
        Key.Length("groove", "Width of the groove, or of the cutter", least: "1/64 in", most: "3 in")
            .Optional()
            .Hint("Blank = to fit the panel, or a third of the piece. With a thicker panel, this is the cutter"),
        Key.Length("panel", "Thickness of the panel", least: "1/64 in", most: "3 in").Optional().Hint("Measure it"),
        Key.Length("cutter", "Kerf of the blade", least: "1/64 in", most: "3 in")
            .Optional()
            .Hint("If narrower than the groove. Blank = one pass cuts the full width"),
        Key.Length("depth", "Depth of the groove", most: "3 in").Optional().Hint("Blank = as deep as wide"),
        Key.LengthOrZero("fit", "Clearance in the groove, total", "0.2 mm", "1/8 in")
            .Hint("Common practice: slides together by hand, about 0.008 in"),
        Key.Count("practice", "Test pieces", "2", "0", "20"),
    ];

    private static readonly ImmutableArray<Refusal<GrooveAsked>> Refusals =
    [
        new(
            asked => asked.WidthKey,
            asked => asked.Width.Value >= asked.Stock.Value,
            asked =>
                $"makes a groove of {asked.Say(asked.Width.Value)}: less than the piece's {asked.Say(asked.Stock.Value)}, "
                + "best a third of it"
        ),
        new(
            "cutter",
            asked => asked.Blade.Value > asked.Width.Value,
            asked => $"cuts wider than the groove: at most {asked.Say(asked.Width.Value)}"
        ),
        new(
            "fit",
            asked => asked.Fit.Value >= asked.Width.Value,
            asked => $"leaves no tongue: it must be less than the groove's {asked.Say(asked.Width.Value)}"
        ),
    ];

    private static readonly ImmutableArray<Remark<GrooveMade>> Verdicts =
    [
        new(
            Watch,
            made => made.Asked.Panel is { } panel && panel.Value > made.Asked.Width.Value,
            made =>
                $"The panel doesn't go in. Thin its edges to {made.Say(made.Asked.Width.Value - made.Asked.Fit.Value)}, "
                + "or make the groove wider."
        ),
        new(
            Watch,
            made =>
                made.Asked.Panel is { } panel
                && panel.Value <= made.Asked.Width.Value
                && panel.Value + made.Asked.Fit.Value > made.Asked.Width.Value,
            "The panel is tight in the groove. Try it in the test piece first."
        ),
        new(
            Watch,
            made => made.Groove.Fence.Value < ThinWall || made.Asked.Width.Value * 2 > made.Asked.Stock.Value,
            made =>
                $"Walls of {made.Say(made.Groove.Fence.Value)} split easily: a third of the piece for groove "
                + "and each wall is best (Handwork in Wood)."
        ),
        new(
            Watch,
            made => made.Asked.Depth.Value * 2 > made.Asked.Stock.Value * 3,
            "The groove is deep for the piece. Cut it in several passes, raising the blade each time."
        ),
        new(
            Watch,
            made => made.Passes > 1 && (made.Asked.Blade.Value * (2 * made.Settings)) - made.Groove.Reached.Value < Whisker,
            "The cuts only just meet and may leave a sliver in the middle. Clear it with one more pass."
        ),
        new(
            Watch,
            made => made.Settings > ManySettings,
            made => $"{made.Settings} settings is a lot. A wider cutter takes fewer."
        ),
        new(Tip, made => made.TakesPaper, SettingFigure.Paper),
        new(
            Tip,
            made => made.Passes == 1,
            "One pass cuts the width. A second pass, turned end for end, centers the groove "
                + "even if the fence is off, and widens it by twice the error."
        ),
        new(
            Tip,
            made => made.Passes != 1,
            made =>
                "At each setting, run the piece once with each face to the fence, turned end for end. The "
                + "groove stays centered even if the fence is a little off; only its width changes, by twice the error: "
                + $"{made.Say(Whisker)} off makes it {made.Say(Whisker * 2)} wider or narrower."
        ),
        new(
            Tip,
            made =>
                "Set the fence on test pieces of the same stock, groove in one and tongue on the other, "
                + "until they slide together by hand. "
                + $"Cut the groove about {made.Say(Whisker * 2)} deeper than the tongue is long, so the shoulders close."
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<GrooveAsked, GrooveMade>(
        "groove",
        "Centered groove and tongue",
        "Fence settings for a groove centered in an edge, and the tongue that fits it."
    )
    {
        Keys = Keys,
        Read = GrooveAsked.Read,
        Refusals = Refusals,
        Make = asked => new(asked, CentredGroove.Of(asked.Stock, asked.Blade, asked.Width, asked.Fit)),
        Results = made => made.Sizes,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [Cautions.GrooveWithoutGuard, Cautions.SmallParts, Cautions.Guards],
        Parts = made => made.Proposed,
    }.Form;
}
