using ShopPlanner.Core.Angles;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Tapers.</summary>
internal static class TaperCalculator
{
    private const double Steep = 15;

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<TaperAsked, TaperMade>(
        "taper",
        "Taper",
        "The angle of a tapered leg or rail, and how to set a jig for it."
    )
    {
        Keys =
        [
            Key.Length("offset", "Wood off one face at the narrow end", most: "24 in"),
            Key.Length("length", "Length of the taper", most: "20 ft"),
            Key.Choice("faces", "Tapered on", "one", new("one", "one face"), new("two", "two opposite faces")),
            Key.Length("start", "Width where the taper starts", most: "48 in").Optional().Hint("Gives the narrow end"),
            Key.Length("jig", "Length of your jig", most: "10 ft").Optional().Hint("Gives the offset between its stops"),
        ],
        Read = reader =>
            new(
                reader.Unit,
                reader.Given("Wood off one face", "offset"),
                reader.Given("Length of the taper", "length"),
                reader.Choice("faces") == "two" ? 2 : 1,
                reader.MaybeGiven("Width at the start", "start"),
                reader.MaybeGiven("Length of the jig", "jig")
            ),
        Refusals =
        [
            new(
                "start",
                asked => asked.Start is { } start && asked.Offset.Value * asked.Faces >= start.Value,
                asked => $"leaves nothing at the narrow end: more than {asked.Say(asked.Offset.Value * asked.Faces)}"
            ),
        ],
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Watch,
                made => made.Angle.Value > Steep,
                "A taper this steep is safer on a bandsaw or with a hand plane than on a table saw."
            ),
            new(Tip, "Mark the taper on the wood and check the first cut against the mark, not against the jig's scale."),
            new(
                Tip,
                made => made.Asked.Faces == 2,
                "Saw the first face, tape its offcut back on, and turn the piece over for the second."
            ),
        ],
        Cautions = [ShopCautions.TaperJig, Cautions.Guards, Cautions.TrappedCutoff, Cautions.SmallParts],
    }.Form;

    private sealed record TaperAsked(
        LengthUnit Unit,
        Working<Length> Offset,
        Working<Length> Long,
        int Faces,
        Working<Length>? Start,
        Working<Length>? Jig
    ) : Question(Unit);

    private sealed record TaperMade(TaperAsked Asked)
    {
        public Working<double> Angle { get; } = Tapers.Angle(Asked.Offset, Asked.Long);

        public IEnumerable<Working?> Sizes =>
            [
                Angle,
                Tapers.InAFoot(Asked.Offset, Asked.Long),
                Asked.Start is { } start ? Tapers.Narrow(start, Asked.Offset, Asked.Faces) : null,
                Asked.Jig is { } jig ? Tapers.Over("Offset between the jig's stops", Asked.Offset, Asked.Long, jig) : null,
                Tapers.Cut(Asked.Offset, Asked.Long),
            ];
    }
}
