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

        return text.Append("\nshop-planner work NAME --keys says what one takes.\n").ToString();
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

    /// <summary>Each result with how it came about, then what follows from them.</summary>
    public static string Answer(Answer answer, LengthUnit unit)
    {
        var text = new StringBuilder();
        foreach (var result in answer.Results)
            Result(text, result, unit);
        foreach (var verdict in answer.Verdicts)
            text.Append(SeverityWords.Of(verdict.Severity)).Append(": ").Append(verdict.Text).Append('\n');
        foreach (var part in answer.Parts)
            text.Append("Part: ").Append(Of(part, unit)).Append('\n');
        foreach (var caution in answer.Cautions)
            text.Append("Safety: ").Append(caution.Text).Append(" [").Append(SourceWords.Of(caution.Source)).Append("]\n");
        return text.ToString();
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

    private static void Result(StringBuilder text, Working result, LengthUnit unit)
    {
        text.Append(result.Name).Append(": ").Append(result.Figure.Text(unit)).Append('\n');
        Formula(text, result, unit, Step);
        if (!result.Inputs.IsEmpty)
            text.Append(Step).Append("from\n");
        foreach (var input in result.Inputs)
            Input(text, input.Working, unit, Step + Step);
        text.Append(Step).Append("source: ").Append(SourceWords.Of(result.Source)).Append("\n\n");
    }

    private static void Input(StringBuilder text, Working input, LengthUnit unit, string indent)
    {
        text.Append(indent).Append(input.Name).Append(": ").Append(input.Figure.Text(unit));
        text.Append(" [").Append(SourceWords.Of(input.Source)).Append("]\n");
        Formula(text, input, unit, indent + Step);
        foreach (var deeper in input.Inputs)
            Input(text, deeper.Working, unit, indent + Step);
    }

    private static void Formula(StringBuilder text, Working working, LengthUnit unit, string indent)
    {
        if (working.Template.Length > 0)
        {
            text.Append(indent).Append("= ").Append(working.Formula).Append('\n');
            text.Append(indent).Append("= ").Append(working.Filled(unit)).Append('\n');
        }

        if (working.OutsideRange is { } outside)
            text.Append(indent).Append("outside the range: ").Append(outside).Append('\n');
    }
}
