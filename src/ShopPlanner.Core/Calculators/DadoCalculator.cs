using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Dadoes, rabbets and laps.</summary>
internal static class DadoCalculator
{
    // A joint that is a business card looser than this doesn't hold glue well (common practice).
    private static readonly Length Loose = Length.FromInches(1m / 64);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice(
            "joint",
            "Joint",
            "dado",
            new("dado", "dado, across the piece"),
            new("rabbet", "rabbet, at its edge"),
            new("lap", "half lap, in the middle"),
            new("end-lap", "half lap, at the end")
        ),
        Key.Length("thickness", "Piece let in, measured", least: "1/16 in", most: "12 in")
            .Hint("Measure it: a 3/4 in sheet is often 23/32. For a lap, the width of the other piece"),
        Key.Length("into", "Thickness of the piece you cut", least: "1/8 in", most: "6 in"),
        Key.Length("depth", "Depth of the cut", most: "3 in")
            .Optional()
            .Hint("Blank = 1/4 of the piece for a dado, 1/2 for a rabbet or lap"),
        Key.Length("cutter", "Cutter or bit", least: "1/32 in", most: "3 in")
            .Optional()
            .Hint("Blank = one that cuts the full width"),
        Key.LengthOrZero("fit", "Clearance in the joint, total", "0 in", "1/8 in"),
        Key.Length("inside", "Inside width between the sides", most: "20 ft").Optional().Hint("Gives the shelf's length"),
    ];

    private static readonly ImmutableArray<Refusal<DadoAsked>> Refusals =
    [
        new(
            "depth",
            asked => asked.Depth.Value >= asked.Into.Value,
            asked => $"goes through the piece: it must be less than {asked.Say(asked.Into.Value)}"
        ),
    ];

    private static readonly ImmutableArray<Remark<DadoMade>> Verdicts =
    [
        new(
            Watch,
            made => made.Asked.Joint == LetInJoint.Dado && made.Asked.Depth.Value * 3 > made.Asked.Into.Value,
            made =>
                "A dado deeper than a third weakens the piece: at most "
                + $"{made.Say(Length.FromTicks(made.Asked.Into.Value.Ticks / 3))}."
        ),
        new(
            Watch,
            made => made.Asked.Joint != LetInJoint.Dado && made.Asked.Depth.Value * 2 > made.Asked.Into.Value,
            made =>
                "This cut takes more than half of the piece: at most "
                + $"{made.Say(Length.FromTicks(made.Asked.Into.Value.Ticks / 2))}."
        ),
        new(
            Watch,
            made => made.Looseness > Loose,
            made =>
                $"The cutter leaves the joint {made.Say(made.Looseness)} loose. Use a narrower one in two passes, or a bit made "
                + "for undersized plywood."
        ),
        new(
            Tip,
            made => made.Passes is { Value: > 1 },
            made =>
                "Cut the far side first, then move the fence by "
                + $"{made.Say(made.Shift!.Value)} for the last pass. Check the width "
                + "with an offcut of the same sheet."
        ),
        new(
            Tip,
            made => made.Asked.Joint == LetInJoint.Dado,
            made =>
                $"Stop the dado {made.Say(Length.FromInches(0.5m))} from "
                + "the front edge, and notch the shelf, if the joint should "
                + "not show (Mission Furniture, part 3)."
        ),
        new(
            Tip,
            made => made.Asked.IsLap,
            "Mark both depths from the face sides: the joint then stays flush even if the depth is a little off."
        ),
        new(
            Tip,
            made => !made.Asked.IsLap,
            "Measure every sheet: sheets of one size differ. Plan the width from the thickest you have."
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<DadoAsked, DadoMade>(
        "dado",
        "Dado, rabbet and lap",
        "Width, depth and passes for a joint that fits the sheet you measured."
    )
    {
        Keys = Keys,
        Read = DadoAsked.Read,
        Refusals = Refusals,
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [Cautions.GrooveWithoutGuard, Cautions.TrappedCutoff, Cautions.SmallParts, ShopCautions.Router, Cautions.Dust],
    }.Form;

    private sealed record DadoAsked(
        LengthUnit Unit,
        LetInJoint Joint,
        Working<Length> Piece,
        Working<Length> Into,
        Working<Length> Depth,
        Working<Length>? Cutter,
        Working<Length> Fit,
        Working<Length>? Inside
    ) : Question(Unit)
    {
        public bool IsLap => Joint is LetInJoint.CrossLap or LetInJoint.EndLap;

        public static DadoAsked Read(FormReader reader)
        {
            var joint = reader.Choice("joint") switch
            {
                "dado" => LetInJoint.Dado,
                "rabbet" => LetInJoint.Rabbet,
                "lap" => LetInJoint.CrossLap,
                _ => LetInJoint.EndLap,
            };
            var into = reader.Given("Thickness of the piece", "into");
            return new(
                reader.Unit,
                joint,
                reader.Given("Piece let in", "thickness"),
                into,
                reader.MaybeGiven("Depth of the cut", "depth") ?? LetIn.Depth(joint, into),
                reader.MaybeGiven("Cutter", "cutter"),
                reader.Given("Clearance", "fit"),
                reader.MaybeGiven("Inside width", "inside")
            );
        }
    }

    private sealed record DadoMade(DadoAsked Asked)
    {
        public Working<Length> Width { get; } = LetIn.Width(Asked.Joint, Asked.Piece, Asked.Fit);

        // What the cutter takes beyond the width that was asked for.
        public Length Looseness => Asked.Cutter is { } cutter ? cutter.Value - Width.Value : Length.Zero;

        public Working<double>? Passes => Narrower is { } cutter ? LetIn.Passes(Width, cutter) : null;

        public Working<Length>? Shift => Narrower is { } cutter ? LetIn.Shift(Width, cutter) : null;

        public IEnumerable<Working?> Sizes =>
            [
                Width,
                Asked.Depth,
                Working.Of(
                    "Wood left under the cut",
                    Asked.Into.Value - Asked.Depth.Value,
                    "{into} − {depth}",
                    Working.Geometry,
                    ("into", Asked.Into),
                    ("depth", Asked.Depth)
                ),
                Passes,
                Shift,
                Looseness.IsPositive ? LetIn.Play(Asked.Cutter!, Asked.Piece) : null,
                Asked is { Inside: { } inside, IsLap: false } ? LetIn.Shelf(inside, Asked.Depth) : null,
            ];

        private Working<Length>? Narrower => Asked.Cutter is { } cutter && cutter.Value < Width.Value ? cutter : null;

        public string Say(Length length) => Asked.Say(length);
    }
}
