using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Totals;

/// <summary>What parts weigh: the form is asked once for each wood or panel, and the answers are added up.</summary>
internal static class WeightTotal
{
    // A thousandth of a board foot is a tenth of a cubic inch.
    private const int Digits = 3;

    public static PartTotal Of(TotalAsked asked)
    {
        if (asked.Parts.Parts.IsEmpty)
            return asked.None("There are no parts to weigh.");
        var known = asked.Parts.Parts.Where(part => Row(part) is not null).ToList();
        var notes = Unknown(asked.Parts.Parts);
        if (known.Count == 0)
            return new(asked.Form, [], notes);
        var questions = known.GroupBy(part => Row(part)!).Select(wood => Ask(asked, wood)).ToImmutableArray();
        return Added(new(asked.Form, questions, [.. notes, "Hardware, glue and finish aren't counted."]));
    }

    /// <summary>Parts whose material has no figure in the table, as a sentence; none where all have one.</summary>
    public static ImmutableArray<string> Unknown(IEnumerable<CountedPart> parts)
    {
        var unknown = parts.Where(part => Row(part) is null).ToList();
        return unknown.Count == 0
            ? []
            :
            [
                $"Not counted: {WordList.Of(unknown.Select(part => part.Called))}. No weight is on record for "
                    + $"{WordList.Of(unknown.Select(part => part.Material.Name))}.",
            ];
    }

    /// <summary>The row of a part's wood or panel; null where none is known.</summary>
    public static Strength? Row(CountedPart part) =>
        part.Material.Properties is { } properties ? StrengthTable.Find(properties) : null;

    private static PartQuestion Ask(TotalAsked asked, IGrouping<Strength, CountedPart> wood)
    {
        var volumes = wood.Select(part => Size(part, asked.Unit)).ToList();
        var sum = Rounded.Sum(volumes, QuantityKind.BoardFeet, Digits, asked.Unit);
        var shares = wood.Zip(
            volumes,
            (part, volume) => new PartShare(part.Called, asked.Sizes(part.Length, part.Width, part.Thickness), volume.Figure)
        );
        var question = asked.Ask(
            wood.Key.Name,
            [new("material", wood.Key.Id), new("volume", sum.Number)],
            new PartAdded("volume", "Volume", sum.Figure, [.. shares])
        );
        // Who lifts it is told of the sum.
        return question.Outcome.Answer is { } answer
            ? question with
            {
                Outcome = FormOutcome.From(answer with { Verdicts = [] }),
            }
            : question;
    }

    private static Rounded Size(CountedPart part, LengthUnit unit) =>
        Rounded.Of((double)part.Volume.ToBoardFeet(), QuantityKind.BoardFeet, Digits, unit, MidpointRounding.AwayFromZero);

    private static PartTotal Added(PartTotal total)
    {
        if (total.Questions.Any(one => one.Outcome.Answer is null))
            return total;
        var weights = total.Questions.Select(one => (Working<double>)one.Outcome.Answer!.Results[0]).ToList();
        var keys = weights.Select((_, i) => FormattableString.Invariant($"weight{i}")).ToList();
        var sum = Working.Of(
            "Weight of all parts",
            weights.Sum(one => one.Value),
            QuantityKind.Mass,
            1,
            string.Join(" + ", keys.Select(key => "{" + key + "}")),
            Weight.Rule,
            [.. keys.Zip(total.Questions.Zip(weights, Named), (key, one) => (key, (Working)one))]
        );
        return total with
        {
            Sum = sum,
            Range = (
                Between(total.Questions, weights, row => row.Range.Least),
                Between(total.Questions, weights, row => row.Range.Most)
            ),
            RangeSource = StrengthTable.Varies,
            Verdicts = [WeightCalculator.Lifting(sum.Value)],
        };
    }

    private static Working<double> Named(PartQuestion question, Working<double> weight) => weight.Named(question.About);

    private static QuantityFigure Between(
        IEnumerable<PartQuestion> questions,
        IEnumerable<Working<double>> weights,
        Func<Strength, double> gravity
    )
    {
        var rows = questions.Select(one => StrengthTable.Find(one.Given["material"])!);
        return new(rows.Zip(weights, (row, weight) => weight.Value * gravity(row) / row.Gravity).Sum(), QuantityKind.Mass, 0);
    }
}
