using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Dowels for a joint.</summary>
internal static class DowelCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("thickness", "Thickness of the thinner piece", least: "3/8 in", most: "3 in"),
        Key.Length("width", "Length of the joint", most: "10 ft"),
        Key.Choice(
            "joint",
            "Where the holes go",
            "edge",
            new("edge", "edges or ends, both of them"),
            new("face", "one in a face, one in an edge or end")
        ),
        Key.Length("face", "Thickness of the piece drilled in its face", most: "6 in")
            .Optional()
            .Hint("For a hole in a face. Blank = as the thinner piece"),
    ];

    private static readonly ImmutableArray<Refusal<DowelsAsked>> Refusals =
    [
        new("thickness", asked => asked.Rod is null, "has no dowel rod between a third and half of it"),
        new(
            "width",
            asked => asked.Width.Value < Dowels.Narrowest(asked.Rod!.Value),
            asked =>
                $"is too narrow for a dowel of {asked.Say(asked.Rod!.Value)}: at least "
                + asked.Say(LengthSteps.ShownUp(Dowels.Narrowest(asked.Rod.Value), asked.Unit))
        ),
        new(
            "face",
            asked => asked is { Face: not null, IsInFace: false },
            "is for a hole in a face: choose that, or leave it blank"
        ),
        new(
            asked => asked.Face is null ? "thickness" : "face",
            asked => asked.IsInFace && asked.Flat.Value < Dowels.ThinnestFace(asked.Rod!.Value),
            asked =>
                $"is too thin to take a dowel of {asked.Say(asked.Rod!.Value)} in its face: at least "
                + asked.Say(LengthSteps.ShownUp(Dowels.ThinnestFace(asked.Rod.Value), asked.Unit))
        ),
    ];

    private static readonly ImmutableArray<Remark<DowelsMade>> Verdicts =
    [
        new(
            Severity.Watch,
            made => !made.Asked.IsInFace,
            made =>
                $"Holes {made.Asked.Say(made.Dowels.HoleDepth.Value)} deep are for edges and ends. Drilled in a face "
                + "they could come through: choose a hole in a face for that."
        ),
        new(
            Severity.Watch,
            made => made.Asked.IsInFace,
            "Set the stop for each hole by itself: the one in the face is the shallow one. Try it in scrap of the same thickness."
        ),
        new(Severity.Tip, "Use fluted dowels or cut a groove in them: trapped glue splits the wood."),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<DowelsAsked, DowelsMade>(
        "dowels",
        "Dowels",
        "Dowels for a joint: size, hole depth and positions."
    )
    {
        Keys = Keys,
        Read = reader =>
            new(
                reader.Unit,
                reader.Given("Thickness", "thickness"),
                reader.Given("Length of the joint", "width"),
                reader.Choice("joint") == "face",
                reader.MaybeGiven("Piece drilled in its face", "face")
            ),
        Refusals = Refusals,
        Make = asked => new(asked, Dowels.Of(asked.Thickness, asked.Width, asked.IsInFace ? asked.Flat : null)),
        Results = Results,
        Verdicts = Verdicts,
        Cautions = [Cautions.Drilling],
    }.Form;

    private static IEnumerable<Working?> Results(DowelsMade made) =>
        [
            made.Dowels.Diameter,
            made.Dowels.DowelLength,
            made.Dowels.FaceDepth,
            made.Dowels.HoleDepth,
            Working.Of(
                "Dowels",
                made.Dowels.Places.Value.Length,
                QuantityKind.Bare,
                0,
                "number of {places}",
                Working.Geometry,
                ("places", made.Dowels.Places)
            ),
            made.Dowels.Places,
        ];

    private sealed record DowelsAsked(
        LengthUnit Unit,
        Working<Length> Thickness,
        Working<Length> Width,
        bool IsInFace,
        Working<Length>? Face
    ) : Question(Unit)
    {
        /// <summary>The rod; null where none fits.</summary>
        public Length? Rod => Dowels.Rod(Thickness.Value);

        /// <summary>The piece that is drilled in its face.</summary>
        public Working<Length> Flat => Face ?? Thickness;
    }

    private sealed record DowelsMade(DowelsAsked Asked, Dowels Dowels);
}
