using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Mortises and tenons.</summary>
internal static class MortiseCalculator
{
    // A tenon wider than this moves with the seasons more than its glue line takes (common practice).
    private static readonly Length WideTenon = Length.FromInches(4);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("thickness", "Thickness of the rail", most: "6 in"),
        Key.Length("width", "Width of the rail", most: "24 in"),
        Key.Length("into", "Mortised piece, along the tenon", most: "12 in").Hint("Width of the stile, or size of the leg"),
        Key.Length("face", "Thickness of the mortised piece", most: "12 in").Optional().Hint("Blank = as thick as the rail"),
        Key.Choice(
            "kind",
            "Tenon",
            "blind",
            new("blind", "blind"),
            new("through", "through"),
            new("haunched", "haunched, at the end of the piece")
        ),
        Key.LengthOrZero("groove", "Depth of the panel's groove", "0 in", "1 in").Hint("0 = no groove"),
        Key.LengthOrZero("edge", "Shoulder at each edge", "1/4 in", "4 in").Hint("For a tenon without a haunch"),
        Key.Length("cutter", "Chisel or bit", least: "1/16 in", most: "2 in")
            .Optional()
            .Hint("Blank = nearest to a third of the rail"),
        Key.Length("length", "Tenon length", most: "12 in").Optional().Hint("Blank = by the mortise's width"),
        Key.Length("between", "Rail between the shoulders", most: "20 ft").Optional().Hint("Gives the rail's full length"),
    ];

    private static readonly ImmutableArray<Refusal<MortiseAsked>> Refusals =
    [
        new(
            "cutter",
            asked => asked.Tenon.Value >= asked.Stock.Value || asked.Tenon.Value >= asked.Face.Value,
            asked =>
                "leaves no wood beside it: it must be less than " + asked.Say(Length.Min(asked.Stock.Value, asked.Face.Value))
        ),
        new(
            "into",
            asked => asked.IsBlind && asked.Length is null && asked.Into.Value - MortiseTenon.Bottom <= MortiseTenon.GlueRoom,
            asked =>
                "is too thin for a blind mortise: more than "
                + $"{asked.Say(MortiseTenon.Bottom + MortiseTenon.GlueRoom)}, or make the tenon go through"
        ),
        new(
            "length",
            asked => asked.IsBlind && asked.Length is { } length && length.Value + MortiseTenon.GlueRoom >= asked.Into.Value,
            asked =>
                "needs a mortise that comes out at the far side: less than "
                + $"{asked.Say(asked.Into.Value - MortiseTenon.GlueRoom)}, or make the tenon go through"
        ),
        new(
            "edge",
            asked => asked.Kind != TenonKind.Haunched && asked.Edge.Value * 2 >= asked.Rail.Value,
            asked => $"leaves no tenon: it must be less than {asked.Say(Length.FromTicks(asked.Rail.Value.Ticks / 2))}"
        ),
        new(
            "groove",
            asked => asked.Kind == TenonKind.Haunched && asked.Groove.Value * 2 >= asked.Rail.Value,
            asked =>
                "leaves no tenon beside the haunch: it must be less than "
                + asked.Say(Length.FromTicks(asked.Rail.Value.Ticks / 2))
        ),
    ];

    private static readonly ImmutableArray<Remark<MortiseMade>> Verdicts =
    [
        new(
            Watch,
            made => made.Thickness.Value * 2 > made.Asked.Stock.Value,
            "The tenon is more than half of the rail. Its shoulders are too thin to keep the rail square: use a narrower chisel."
        ),
        new(
            Watch,
            made => made.Wall.Value < made.Thickness.Value && made.Asked.Face.Value < made.Thickness.Value * 3,
            made =>
                $"Only {made.Say(made.Wall.Value)} of wood is left beside the mortise. A third of the piece for the mortise and "
                + "a third on each side is the usual rule."
        ),
        new(
            Watch,
            made => made.Asked.IsBlind && made.Depth.Value < made.Thickness.Value * 3,
            "The mortise is less than three times as deep as it is wide, so the glue has little to hold. Use a through tenon, a "
                + "narrower chisel, or a pin."
        ),
        new(
            Watch,
            made => made.Depth.Value > made.Thickness.Value * 5,
            "The mortise is more than five times as deep as it is wide. It is hard to keep straight and clear of chips."
        ),
        new(
            Watch,
            made => made.Asked.IsBlind && made.Asked.Into.Value - made.Depth.Value < MortiseTenon.Bottom,
            made =>
                $"Only {made.Say(made.Asked.Into.Value - made.Depth.Value)} is left at the bottom of the mortise. A chisel "
                + "breaks through there: leave 1/4 in (6 mm)."
        ),
        new(
            Fails,
            made => !made.Asked.IsBlind && made.Length.Value < made.Asked.Into.Value,
            made => $"The tenon doesn't reach through: make it at least {made.Say(made.Asked.Into.Value)} long."
        ),
        new(
            Watch,
            made => made.Width.Value > WideTenon,
            "A tenon this wide swells and shrinks more than its glue line takes. Cut two tenons with a gap between them."
        ),
        new(
            Watch,
            made => made.Asked.Kind == TenonKind.Haunched && made.Asked.Groove.Value.IsPositive,
            made =>
                "The old rule reads both ways: half of the rail, less the groove, or half of what the groove leaves, "
                + $"{made.Say(made.WiderReading)}. Anything between works; "
                + "the narrower tenon leaves more wood at the stile's end."
        ),
        new(Tip, "Cut the mortise first and fit the tenon to it. It should push in by hand."),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<MortiseAsked, MortiseMade>(
        "mortise",
        "Mortise and tenon",
        "Tenon, shoulders, haunch and mortise from the sizes of the two pieces."
    )
    {
        Keys = Keys,
        Read = MortiseAsked.Read,
        Refusals = Refusals,
        Make = MortiseMade.Of,
        Results = made => made.Sizes,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions =
        [
            ShopCautions.Chisels,
            Cautions.GrooveWithoutGuard,
            Cautions.TrappedCutoff,
            Cautions.SmallParts,
            ShopCautions.Router,
        ],
        Parts = made => made.Proposed,
    }.Form;
}
