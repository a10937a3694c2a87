using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Slats, spindles or rails at equal gaps.</summary>
internal static class SpacingCalculator
{
    private const int MostPieces = 500;

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("span", "Clear span", most: "40 ft"),
        Key.Length("member", "Width of one", most: "10 ft"),
        Key.Count("count", "How many", least: "1", most: "500").Optional().Hint("Or enter the widest gap"),
        Key.Length("max-gap", "Widest gap", most: "10 ft").Optional(),
        Key.Choice("ends", "At the ends", "gaps", new("members", "a piece at each end"), new("gaps", "a gap at each end")),
    ];

    private static readonly ImmutableArray<Refusal<SpacingAsked>> Refusals =
    [
        new(
            "member",
            asked => asked.Member.Value * asked.Least > asked.Span.Value,
            asked =>
                asked.Least == 1
                    ? $"is wider than the span of {asked.Say(asked.Span.Value)}"
                    : $"is too wide for one at each end of {asked.Say(asked.Span.Value)}"
        ),
        new(
            "count",
            asked => asked.Count is not null && asked.Spacing is null,
            asked =>
                asked.Count < asked.Least
                    ? "is too few: at least 2 with a piece at each end"
                    : FormattableString.Invariant($"doesn't fit the span: at most {asked.MostFitting}, or narrower pieces")
        ),
        new(
            "max-gap",
            asked => asked.Wanted > MostPieces,
            asked => FormattableString.Invariant($"would take {asked.Wanted} pieces: at most {MostPieces}, so allow a wider gap")
        ),
        new(
            "max-gap",
            asked => asked.Spacing is null,
            asked =>
                FormattableString.Invariant(
                    $"can't be kept: {asked.MostFitting} pieces leave wider gaps, and one more doesn't fit"
                )
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<SpacingAsked, SpacingMade>(
        "spacing",
        "Equal spacing",
        "Slats, spindles or rails at equal gaps, and the spacer block that sets them."
    )
    {
        Keys = Keys,
        Read = SpacingAsked.Read,
        Refusals = Refusals,
        Make = asked => new(asked, asked.Spacing!),
        Results = made => [made.Spacing.Gap, made.Number, made.Spacing.Positions],
        Verdicts =
        [
            new(
                Severity.Watch,
                made => made.Asked.Widest is { } most && made.Spacing.Gap.Value > most,
                "With this many, the gap is wider than you asked for."
            ),
            new(Severity.Tip, made => SettingFigure.TakesPaper(made.Spacing.Gap.Value, made.Asked.Unit), SettingFigure.Paper),
        ],
        Cautions = [Cautions.SmallParts, Cautions.Guards],
        Parts = made => made.Block is { } block ? [block] : [],
    }.Form;

    private sealed record SpacingAsked(
        LengthUnit Unit,
        Working<Length> Span,
        Working<Length> Member,
        int? Count,
        Length? Widest,
        bool HasMembersAtEnds
    ) : Question(Unit)
    {
        /// <summary>The fewest pieces that make sense.</summary>
        public int Least => HasMembersAtEnds ? 2 : 1;

        /// <summary>The most that lie side by side.</summary>
        public long MostFitting => Span.Value / Member.Value;

        /// <summary>How many the widest gap takes; none where a number is given.</summary>
        public long Wanted =>
            Count is null ? Joinery.Spacing.Fewest(Span.Value, Member.Value, Widest!.Value, HasMembersAtEnds) : 0;

        public Spacing? Spacing =>
            Count is { } count
                ? Joinery.Spacing.Of(Span, Member, count, HasMembersAtEnds)
                : Joinery.Spacing.Within(Span, Member, Widest!.Value, HasMembersAtEnds);

        public static SpacingAsked Read(FormReader reader)
        {
            SpacingAsked asked = new(
                reader.Unit,
                reader.Given("Span", "span"),
                reader.Given("Width of one", "member"),
                reader.MaybeCount("count"),
                reader.MaybeLength("max-gap"),
                reader.Choice("ends") == "members"
            );
            if (asked is { Count: null, Widest: null } && reader.Faults.Count == 0)
                reader.Refuse("count", "is missing, and so is the widest gap: enter one of them");
            return asked;
        }
    }

    private sealed record SpacingMade(SpacingAsked Asked, Spacing Spacing)
    {
        private static readonly Length BlockLength = Length.FromInches(6);
        private static readonly Length BlockThickness = Length.FromInches(0.75m);

        public Working<double> Number =>
            Working.Looked(
                "How many",
                Spacing.Count,
                QuantityKind.Bare,
                0,
                Asked.Count is null ? Working.Geometry : Working.AsGiven
            );

        /// <summary>The block that sets the gap; null where there is none.</summary>
        public ProposedPart? Block =>
            Spacing.Gap.Value.IsPositive
                ? new("Spacer block", Length.Max(Asked.Member.Value, BlockLength), Spacing.Gap.Value, BlockThickness, 1)
                : null;
    }
}
