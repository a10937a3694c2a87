using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is repeated at one distance: slats and rails, rows of holes for shelf pins.</summary>
internal static class SpacingForms
{
    public static readonly ImmutableArray<WorkingForm> All = [SpacingForm(), PinsForm()];

    private static WorkingForm SpacingForm() =>
        new(
            "spacing",
            "Equal spacing",
            "Slats, spindles or rails at equal gaps, and the spacer block that sets them.",
            [
                new("span", "Clear span", KeyKind.Length) { Most = "40 ft" },
                new("member", "Width of one", KeyKind.Length) { Most = "10 ft" },
                new("count", "How many", KeyKind.Count)
                {
                    Optional = true,
                    Least = "1",
                    Most = "500",
                    Hint = "Or give the widest gap",
                },
                new("max-gap", "Widest gap", KeyKind.Length) { Optional = true, Most = "10 ft" },
                new("ends", "What stands at the ends", KeyKind.Choice)
                {
                    Default = "gaps",
                    Choices = [new("members", "a member at each end"), new("gaps", "a gap at each end")],
                },
            ],
            reader =>
            {
                var (span, member) = (
                    Working.Given("Span", reader.Length("span")),
                    Working.Given("Width of one", reader.Length("member"))
                );
                var (count, widest, atEnds) = (
                    reader.MaybeCount("count"),
                    reader.MaybeLength("max-gap"),
                    reader.Choice("ends") == "members"
                );
                if (count is null && widest is null && reader.Faults.Count == 0)
                    reader.Refuse("count", "is not given, and no max-gap either: one of them is wanted");
                return () =>
                    Spaced(
                        count is { } n
                            ? Spacing.Of(span, member, n, atEnds)
                            : Spacing.Within(span, member, widest!.Value, atEnds),
                        span.Value,
                        member.Value,
                        count,
                        widest
                    );
            }
        );

    private static FormOutcome Spaced(Spacing? spacing, Length span, Length member, int? count, Length? widest)
    {
        if (spacing is null)
            return Fault.Of(
                "count",
                count?.ToString(System.Globalization.CultureInfo.InvariantCulture),
                "does not go into the span: fewer, or narrower ones; with a member at each end at least 2"
            );
        var number = Working.Looked(
            "How many",
            spacing.Count,
            QuantityKind.Bare,
            0,
            count is null ? Working.Geometry : Working.AsGiven
        );
        var verdicts =
            widest is { } most && spacing.Gap.Value > most
                ? new Verdict(Severity.Watch, "With this number the gap is wider than the one asked for.")
                : null;
        return new Answer([spacing.Gap, number, spacing.Positions])
        {
            Verdicts = verdicts is null ? [] : [verdicts],
            Cautions = [Cautions.SmallParts],
            Parts = spacing.Gap.Value.IsPositive
                ? [new("Spacer block", Length.Max(member, Length.FromInches(6)), spacing.Gap.Value, Length.FromInches(0.75m), 1)]
                : [],
        };
    }

    private static WorkingForm PinsForm() =>
        new(
            "pins",
            "Shelf pins",
            "Rows of holes for shelf pins, drilled with one template.",
            [
                new("height", "Clear height of the side", KeyKind.Length) { Most = "12 ft" },
                new("first", "Height of the lowest hole", KeyKind.Length) { Default = "6 in", Most = "10 ft" },
                new("pitch", "From hole to hole", KeyKind.Length)
                {
                    Default = "32 mm",
                    Least = "1/2 in",
                    Most = "2 ft",
                },
                new("setback", "From the front and back edges", KeyKind.Length)
                {
                    Default = "37 mm",
                    Least = "1/4 in",
                    Most = "1 ft",
                },
                new("depth", "Thickness of the side", KeyKind.Length)
                {
                    Default = "23/32 in",
                    Least = "1/4 in",
                    Most = "3 in",
                    Hint = "The hole stops 1/8 in short of its far face",
                },
            ],
            reader =>
            {
                var (height, first, pitch) = (
                    Working.Given("Height", reader.Length("height")),
                    Working.Given("First hole", reader.Length("first")),
                    Working.Given("Pitch", reader.Length("pitch"))
                );
                var (setback, thickness) = (
                    Working.Given("Setback", reader.Length("setback")),
                    Working.Given("Thickness", reader.Length("depth"))
                );
                return () => Pins(height, first, pitch, setback, thickness);
            }
        );

    private static FormOutcome Pins(
        Working<Length> height,
        Working<Length> first,
        Working<Length> pitch,
        Working<Length> setback,
        Working<Length> thickness
    )
    {
        var holes = ShelfPins.Heights(height, first, pitch, first);
        if (holes.Value.IsEmpty)
            return Fault.Of(
                "first",
                first.Figure.Text(LengthUnit.Inch),
                "leaves no room for a hole: less than half the height is wanted"
            );
        var count = Working.Of(
            "Holes in each row",
            holes.Value.Length,
            QuantityKind.Bare,
            0,
            "as many as {heights}",
            Working.Geometry,
            ("heights", holes)
        );
        var deep = Length.Min(Length.FromMillimetres(10), thickness.Value - Length.FromInches(0.125m));
        var depth = Working.Of(
            "Depth of the holes",
            deep,
            "10 mm, or {thickness} less 1/8 in",
            new("Common practice: half a usual pin, never through", Certainty.CommonPractice),
            ("thickness", thickness)
        );
        return new Answer([holes, count, setback, depth])
        {
            Verdicts =
            [
                new(
                    Severity.Fine,
                    "Two rows on each side, both sides with the same end of the template at the bottom: mark that end."
                ),
            ],
        };
    }
}
