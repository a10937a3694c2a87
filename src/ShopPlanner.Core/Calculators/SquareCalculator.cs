using System.Collections.Immutable;
using ShopPlanner.Core.Angles;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Square by diagonals.</summary>
internal static class SquareCalculator
{
    // A tape reads to about this on each diagonal; more than that is a slip, not a reading.
    private const int SlipPart = 200;
    private static readonly Length Slip = Length.FromInches(0.125m);

    private static readonly ImmutableArray<Refusal<SquareAsked>> Refusals =
    [
        new("second", asked => asked.First is not null && asked.Second is null, "is missing: measure the other diagonal too"),
        new("first", asked => asked.First is null && asked.Second is not null, "is missing: measure the other diagonal too"),
        new(
            "first",
            asked => asked.Sine is <= -0.5 or >= 0.5,
            asked => $"doesn't go with these sides: near {asked.Say(asked.Diagonal.Value)} if they are right"
        ),
    ];

    private static readonly ImmutableArray<Remark<SquareMade>> Verdicts =
    [
        new(
            Watch,
            made => made.IsMisread,
            made =>
                "The diagonals don't go with these sides: both should be "
                + $"near {made.Say(made.Asked.Diagonal.Value)}. Measure all "
                + "four again."
        ),
        new(
            Fine,
            made => made.Longer is { } longer && Squareness.IsSquare(longer.Value, made.Long),
            "Square within 1/64 in for each foot, as good as plywood from the mill."
        ),
        new(
            Watch,
            made => made.Longer is { } longer && !Squareness.IsSquare(longer.Value, made.Long),
            made =>
                $"Out of square: the longer diagonal, {made.Say(made.LongDiagonal)}, "
                + "joins the two acute corners. A frame: squeeze "
                + $"along it until both measure {made.Say(made.Target)}. A panel with parallel sides: trim a wedge off each end, "
                + $"from nothing at one corner to {made.Shorter!.Figure.Text(made.Asked.Unit)} at the acute one."
        ),
        new(
            Tip,
            made => made.Longer is null,
            "Measure both diagonals the same way, corner to corner. Equal diagonals mean square only if opposite sides are equal."
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<SquareAsked, SquareMade>(
        "square",
        "Square by diagonals",
        "The diagonal of a square corner, how far two diagonals are off, and what to trim."
    )
    {
        Keys =
        [
            Key.Length("width", "Width", most: "100 ft"),
            Key.Length("length", "Length", most: "100 ft"),
            Key.Length("first", "One diagonal, measured", most: "200 ft").Optional().Hint("Blank = the diagonal when square"),
            Key.Length("second", "The other diagonal, measured", most: "200 ft").Optional(),
        ],
        Read = reader =>
            new(
                reader.Unit,
                reader.Given("Width", "width"),
                reader.Given("Length", "length"),
                reader.MaybeGiven("One diagonal", "first"),
                reader.MaybeGiven("Other diagonal", "second")
            ),
        Refusals = Refusals,
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts = Verdicts,
        Cautions = [new(Cautions.Guards, made => made.IsOff), new(Cautions.TrappedCutoff, made => made.IsOff)],
    }.Form;

    private sealed record SquareAsked(
        LengthUnit Unit,
        Working<Length> Width,
        Working<Length> Long,
        Working<Length>? First,
        Working<Length>? Second
    ) : Question(Unit)
    {
        public Working<Length> Diagonal { get; } = Squareness.Diagonal(Width, Long);

        public double? Sine =>
            First is { } first && Second is { } second
                ? Squareness.Sine(Width.Value, Long.Value, first.Value, second.Value)
                : null;
    }

    private sealed record SquareMade(SquareAsked Asked)
    {
        public Length Long => Length.Max(Asked.Width.Value, Asked.Long.Value);

        public Length LongDiagonal => Length.Max(Asked.First!.Value, Asked.Second!.Value);

        // Halfway between the two: what both come to when the longer one is squeezed.
        public Length Target => Length.FromTicks((Asked.First!.Value.Ticks + Asked.Second!.Value.Ticks) / 2);

        public bool IsOff => Longer is { } longer && !Squareness.IsSquare(longer.Value, Long);

        public bool IsMisread
        {
            get
            {
                if (Off is null)
                    return false;
                var off = Math.Abs((Target - Asked.Diagonal.Value).Ticks);
                return off > Slip.Ticks && off * SlipPart > Asked.Diagonal.Value.Ticks;
            }
        }

        public Working<Length>? Longer => Over(Asked.Width.Value >= Asked.Long.Value);

        public Working<Length>? Shorter => Over(Asked.Width.Value < Asked.Long.Value);

        public IEnumerable<Working?> Sizes =>
            Off is null ? [Asked.Diagonal] : [Off, Over(isWidth: false), Over(isWidth: true), Asked.Diagonal];

        private Working<double>? Off =>
            Asked.Sine is null ? null : Squareness.Off(Asked.Width, Asked.Long, Asked.First!, Asked.Second!);

        public string Say(Length length) => Asked.Say(length);

        private Working<Length>? Over(bool isWidth) =>
            Off is not { } off ? null
            : isWidth ? Squareness.Over("Off over the width", Asked.Width, off)
            : Squareness.Over("Off over the length", Asked.Long, off);
    }
}
