using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Cli.Work;

/// <summary>A working of parts, for a person at a terminal.</summary>
internal static class FromText
{
    private const string Step = "  ";

    /// <summary>Each question with what was added up, how to enter it by hand, and its answer; then the sum and what isn't
    /// counted.</summary>
    public static string Of(PartTotal total, LengthUnit unit, bool hasWorkings)
    {
        var text = new StringBuilder();
        foreach (var question in total.Questions)
            Question(text, total, question, unit, hasWorkings);
        if (total.Sum is { } sum)
            Sum(text, total, sum, unit);
        foreach (var note in total.Notes)
            text.Append("Note: ").Append(note).Append('\n');
        foreach (var caution in total.Questions.SelectMany(question => question.Outcome.Answer!.Cautions).Distinct())
            WorkText.Caution(text, caution);
        return text.ToString();
    }

    private static void Question(StringBuilder text, PartTotal total, PartQuestion question, LengthUnit unit, bool hasWorkings)
    {
        text.Append(question.About).Append('\n');
        foreach (var added in question.Added)
        {
            text.Append(Step).Append(added.Name).Append(": ").Append(added.Figure.Text(unit)).Append('\n');
            foreach (var share in added.Shares)
                text.Append(Step + Step)
                    .Append(share.Part)
                    .Append(", ")
                    .Append(share.How)
                    .Append(": ")
                    .Append(share.Share.Text(unit))
                    .Append('\n');
        }

        var pairs = question.Given.Select(pair => $"\"{pair.Key}={pair.Value}\"");
        text.Append(Step + "By hand: work ").Append(total.Form.Name).Append(' ').AppendJoin(' ', pairs).Append("\n\n");
        WorkText.Figures(text, question.Outcome.Answer!, unit);
        if (hasWorkings)
            WorkText.Workings(text, question.Outcome.Answer!, unit);
        text.Append('\n');
    }

    private static void Sum(StringBuilder text, PartTotal total, Working sum, LengthUnit unit)
    {
        text.Append(sum.Name).Append(": ").Append(sum.Figure.Text(unit)).Append('\n');
        text.Append(Step + "= ").Append(sum.Filled(unit)).Append('\n');
        if (total.Range is (var least, var most))
            text.Append(Step + "May be ")
                .Append(least.Text(unit))
                .Append(" to ")
                .Append(most.Text(unit))
                .Append(" [")
                .Append(SourceWords.Of(total.RangeSource!))
                .Append("]\n");
        foreach (var verdict in total.Verdicts)
            text.Append(SeverityWords.Of(verdict.Severity)).Append(": ").Append(verdict.Text).Append('\n');
    }
}
