using System.Globalization;
using System.Text;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Cli.Work;

/// <summary>Workings for a person at a terminal.</summary>
internal static class WorkText
{
    private const string Step = "  ";

    /// <summary>All forms, by subject.</summary>
    public static string List()
    {
        var text = new StringBuilder();
        var width = WorkingForms.All.Max(form => form.Name.Length) + 2;
        foreach (var subject in WorkingSubjects.All)
        {
            text.Append(subject.Title).Append('\n');
            foreach (var form in subject.Forms)
                text.Append(Step).Append(form.Name.PadRight(width)).Append(form.Says).Append('\n');
        }

        return text.Append("\nFor the inputs of one: shop-planner work NAME --keys\n").ToString();
    }

    /// <summary>What a form takes.</summary>
    public static string Keys(WorkingForm form)
    {
        var text = new StringBuilder(form.Title).Append(": ").Append(form.Says).Append('\n');
        var width = form.Keys.Max(key => key.Name.Length) + 2;
        foreach (var key in form.Keys)
            text.Append(Step).Append(key.Name.PadRight(width)).Append(Of(key)).Append('\n');
        return text.ToString();
    }

    /// <summary>The figures asked for, then what follows from them; where it is asked for, how they came about.</summary>
    public static string Answer(Answer answer, LengthUnit unit, bool hasWorkings)
    {
        var text = new StringBuilder();
        Figures(text, answer, unit);
        foreach (var caution in answer.Cautions)
            Caution(text, caution);
        return hasWorkings
            ? Workings(text, answer, unit).ToString()
            : text.Append("\nAdd --workings to see how each figure was worked out.\n").ToString();
    }

    /// <summary>The figures asked for, what follows from them, and the parts they make.</summary>
    public static void Figures(StringBuilder text, Answer answer, LengthUnit unit)
    {
        foreach (var result in answer.Results)
            Result(text, result, unit);
        foreach (var reason in WorkingSteps.Outside(answer.Results))
            text.Append("Outside the range: ").Append(reason).Append('\n');
        foreach (var verdict in answer.Verdicts)
            text.Append(SeverityWords.Of(verdict.Severity)).Append(": ").Append(verdict.Text).Append('\n');
        foreach (var part in answer.Parts)
            text.Append("Part: ").Append(Of(part, unit)).Append('\n');
    }

    /// <summary>Where the work can hurt.</summary>
    public static void Caution(StringBuilder text, Caution caution) =>
        text.Append("Safety: ").Append(caution.Text).Append(" [").Append(SourceWords.Of(caution.Source)).Append("]\n");

    /// <summary>How each figure came about.</summary>
    public static StringBuilder Workings(StringBuilder text, Answer answer, LengthUnit unit)
    {
        text.Append("\nHow it was worked out\n");
        foreach (var step in WorkingSteps.Of(answer.Results))
            Worked(text, step, unit);
        return text;
    }

    /// <summary>A proposed part: <c>1 Spacer block, 6″ × 3 ½″ × ¾″</c>.</summary>
    public static string Of(ProposedPart part, LengthUnit unit)
    {
        var sizes = new[] { part.Length, part.Width, part.Thickness }.Select(size => LengthFormat.WithUnit(size, unit));
        var longer = part.CutLongBy.IsPositive ? ", cut long by " + LengthFormat.WithUnit(part.CutLongBy, unit) : "";
        var wider = part.CutWideBy.IsPositive ? ", cut wide by " + LengthFormat.WithUnit(part.CutWideBy, unit) : "";
        var number = part.Quantity.ToString(CultureInfo.InvariantCulture);
        return $"{number} {part.Name}, {string.Join(" × ", sizes)}{longer}{wider}";
    }

    private static string Of(FormKey key)
    {
        var words = string.Join(", ", key.Choices.Select(one => $"{one.Word} ({one.Meaning})"));
        var choices = words.Length > 0 ? ": " + words : "";
        var limits = (key.Least, key.Most) switch
        {
            ({ } least, { } most) => $", {least} to {most}",
            (null, { } most) => $", at most {most}",
            ({ } least, null) => $", at least {least}",
            _ => "",
        };
        var hint = key.Hint.Length > 0 ? $". {key.Hint}" : "";
        return key.Label + choices + limits + Otherwise(key) + hint;
    }

    private static string Otherwise(FormKey key) =>
        key.Default is { } usual ? $"; default {usual}"
        : key.Optional ? "; optional"
        : "; required";

    // What must not be relied on unseen is marked beside the figure itself.
    private static void Result(StringBuilder text, Working result, LengthUnit unit)
    {
        text.Append(result.Name).Append(": ").Append(result.Figure.Text(unit));
        if (result.Source.Certainty == Certainty.FromMemory)
            text.Append(" [").Append(SourceWords.Short(result.Source)).Append(']');
        text.Append('\n');
    }

    private static void Worked(StringBuilder text, Working step, LengthUnit unit)
    {
        text.Append(Step).Append(step.Name).Append(": ").Append(step.Figure.Text(unit));
        if (step.Template.Length == 0)
        {
            text.Append(" [").Append(SourceWords.Of(step.Source)).Append("]\n");
            return;
        }

        text.Append('\n').Append(Step + Step).Append("= ").Append(step.Formula).Append('\n');
        text.Append(Step + Step).Append("= ").Append(step.Filled(unit)).Append('\n');
        text.Append(Step + Step).Append("source: ").Append(SourceWords.Of(step.Source)).Append('\n');
    }
}
