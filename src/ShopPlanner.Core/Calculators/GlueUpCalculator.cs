using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Panels glued up from strips.</summary>
internal static class GlueUpCalculator
{
    private const int MostStrips = 40;
    private const int StripsAtOnce = 5;

    private static readonly Length WideStrip = Length.FromInches(6);
    private static readonly Length NarrowStrip = Length.FromInches(3);

    // Newtons.
    private static readonly double StrongClamp = QuantityKind.Force.ToMetric(1000, LengthUnit.Inch);

    private static readonly ImmutableArray<FormChoice> Woods =
    [
        new("softwood", "any softwood"),
        new("hardwood", "any hardwood"),
        .. MaterialCatalogue.Species.Select(one => new FormChoice(one.Id, one.Name)),
    ];

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("width", "Width of the panel", most: "8 ft"),
        Key.Length("length", "Length of the panel", most: "16 ft"),
        Key.Length("thickness", "Thickness", "3/4 in", most: "6 in"),
        Key.Length("board", "Usable width of a board", "5 1/2 in", most: "24 in"),
        Key.Choice(
            "joints",
            "Joints",
            "butt",
            new("butt", "edge to edge"),
            new("tongue", "tongue and groove"),
            new("spline", "with a spline")
        ),
        Key.Choice("species", "Wood", "softwood", Woods),
        Key.LengthOrZero("jointing", "Jointed off each edge", "1/16 in", "1 in"),
        Key.Length("tongue", "Tongue length, or spline depth in each strip", "1/4 in", most: "1 in"),
        Key.LengthOrZero("caul", "Caul width", "1 in", "12 in"),
        Key.LengthOrZero("oversize", "Extra length and width to trim", "1/2 in", "3 in"),
        Key.Count("clamps", "Clamps on hand", least: "1", most: "200").Optional(),
        Key.Quantity("clamp-force", "Force of one clamp", QuantityKind.Force, null, "10 lbf", "10000 lbf")
            .Optional()
            .Hint("From its maker's sheet"),
        Key.Quantity("spread", "Coverage on the glue's label", QuantityKind.Coverage, "250 ft²/gal", "20 ft²/gal", "2000 ft²/gal")
            .Hint("The default is common practice; the label comes first"),
    ];

    private static readonly ImmutableArray<Refusal<GlueUpAsked>> Refusals =
    [
        new(
            "board",
            asked => asked.Board.Value <= asked.Lost.Value,
            asked => $"is all joint: it must be more than {asked.Say(asked.Lost.Value + (asked.Jointing.Value * 2))}"
        ),
        new(
            "tongue",
            asked => asked.Joint != EdgeJoint.Butt && asked.Tongue.Value * 2 >= asked.Board.Value,
            asked => $"is half the board or more: it must be less than {asked.Say(Length.FromTicks(asked.Board.Value.Ticks / 2))}"
        ),
        new(
            "board",
            asked => asked.Strips.Value > MostStrips,
            asked => $"makes {asked.Strips.Value} strips: at most {MostStrips}, so use a wider board"
        ),
    ];

    private static readonly ImmutableArray<Remark<GlueUpMade>> Verdicts =
    [
        new(Fine, made => !made.IsGlued, "One board is wide enough: there is nothing to glue."),
        new(Fails, made => made.IsGlued && made.Clamping.IsShort, made => made.Clamping.Shortage),
        new(
            Watch,
            made => made.IsGlued && made.Asked.ClampForce is null && made.Clamping.Least.Value > StrongClamp,
            made =>
                $"{made.Clamping.Least.Figure.Text(made.Asked.Unit)} is more than many clamps give (common "
                + "practice: about 1,000 lbf, 4,400 N): enter your clamp's force, or use more clamps."
        ),
        new(
            Watch,
            made => made.Asked.Strips.Value > StripsAtOnce,
            "More than five strips at once is a lot for the glue's open time (common practice). "
                + "Glue up two halves, then join them."
        ),
        new(
            Watch,
            made => made.IsGlued && made.Strip.Value > WideStrip,
            made =>
                $"Strips of {LengthFormat.WithUnit(made.Strip.Value, made.Asked.Unit, 16)} cup more than narrow ones "
                + "(common practice). Rip them in two, or choose quartersawn boards."
        ),
        new(
            Tip,
            made => made.IsGlued,
            "Alternate the clamps above and below so they don't bow the panel. Dry-fit "
                + "first, and check that it lies flat before the glue grabs."
        ),
        new(
            Tip,
            made => made.IsGlued,
            "White or yellow glue, unless its label says otherwise: 30 to 60 min in clamps at 50 °F (10 °C) or warmer, no load "
                + "for 24 h."
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<GlueUpAsked, GlueUpMade>(
        "glue-up",
        "Glue-up",
        "Strips, clamps, pressure and glue for a wide panel."
    )
    {
        Keys = Keys,
        Read = GlueUpAsked.Read,
        Refusals = Refusals,
        Make = GlueUpMade.Of,
        Failures =
        [
            new(
                made => made.Clamping.AreWeak ? "clamp-force" : "caul",
                made => made.IsGlued && made.Clamping.Clamps.Value > Clamping.Most,
                made =>
                    FormattableString.Invariant($"takes {made.Clamping.Clamps.Value:0} clamps: at most {Clamping.Most}, ")
                    + (made.Clamping.AreWeak ? "so use stronger ones" : "so use wider cauls or wider strips")
            ),
        ],
        Results = made => made.IsGlued ? [.. made.Sizes, .. made.Clamping.Results, .. made.Glue] : made.Sizes,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions =
        [
            Cautions.Guards,
            Cautions.Jointer,
            Cautions.TrappedCutoff,
            new(Cautions.GrooveWithoutGuard, made => made.Asked.Joint != EdgeJoint.Butt),
            new(Cautions.SmallParts, made => made.Strip.Value < NarrowStrip),
            Cautions.Dust,
        ],
        Parts = made => [made.Proposed],
    }.Form;
}
