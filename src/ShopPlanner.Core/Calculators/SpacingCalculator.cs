using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Slats, spindles or rails at equal gaps.</summary>
internal static class SpacingCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("span", "Clear span", most: "40 ft"),
        Key.Length("member", "Width of one", most: "10 ft"),
        Key.Count("count", "How many", least: "1", most: "500").Optional().Hint("Or enter the widest gap"),
        Key.Length("max-gap", "Widest gap", most: "10 ft").Optional(),
        Key.Choice("ends", "At the ends", "gaps", new("members", "a piece at each end"), new("gaps", "a gap at each end")),
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
        Make = asked => new(asked, asked.Spacing!),
        Failures =
        [
            new(
                "count",
                made => made.Spacing is null,
                "doesn't fit the span: use fewer or narrower pieces, at least 2 with a piece at each end"
            )
            {
                Quote = made => made.Asked.Count?.ToString(CultureInfo.InvariantCulture),
            },
        ],
        Results = made => [made.Spacing.Gap, made.Number, made.Spacing.Positions],
        Verdicts =
        [
            new(
                Severity.Watch,
                made => made.Asked.Widest is { } most && made.Spacing.Gap.Value > most,
                "With this many, the gap is wider than you asked for."
            ),
        ],
        Cautions = [Cautions.SmallParts],
        Parts = made => made.Block is { } block ? [block] : [],
    }.Form;

    private sealed record SpacingAsked(
        Working<Length> Span,
        Working<Length> Member,
        int? Count,
        Length? Widest,
        bool HasMembersAtEnds
    )
    {
        public Spacing? Spacing =>
            Count is { } count
                ? Joinery.Spacing.Of(Span, Member, count, HasMembersAtEnds)
                : Joinery.Spacing.Within(Span, Member, Widest!.Value, HasMembersAtEnds);

        public static SpacingAsked Read(FormReader reader)
        {
            SpacingAsked asked = new(
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
