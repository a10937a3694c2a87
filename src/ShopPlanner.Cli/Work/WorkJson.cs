using System.Text.Json;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Cli.Work;

/// <summary>Workings as a document: numbers where there are numbers, a list of them for a row of positions, null beside a
/// text where
/// there are none.</summary>
internal static class WorkJson
{
    /// <summary>All forms.</summary>
    public static string List() => JsonOutput.Object(json => json.List("workings", WorkingForms.All, About));

    /// <summary>What a form takes.</summary>
    public static string Keys(WorkingForm form) =>
        JsonOutput.Object(json =>
        {
            About(json, form);
            json.List("keys", form.Keys, Key);
        });

    /// <summary>The first result's members at the top, then all of them and what follows from them.</summary>
    public static string Answer(WorkingForm form, Answer answer, LengthUnit unit) =>
        JsonOutput.Object(json =>
        {
            json.WriteString("working", form.Name);
            Members(json, answer, unit);
        });

    private static void Members(Utf8JsonWriter json, Answer answer, LengthUnit unit)
    {
        Figure(json, answer.Results[0], unit);
        json.List("results", answer.Results, (inner, result) => Figure(inner, result, unit));
        json.List("verdicts", answer.Verdicts, Verdict);
        json.List("cautions", answer.Cautions, Caution);
        json.List("parts", answer.Parts, (inner, part) => Part(inner, part, unit));
    }

    private static void About(Utf8JsonWriter json, WorkingForm form)
    {
        json.WriteString("working", form.Name);
        json.WriteString("title", form.Title);
        json.WriteString("says", form.Says);
    }

    private static void Key(Utf8JsonWriter json, FormKey key)
    {
        json.WriteString("key", key.Name);
        json.WriteString("label", key.Label);
        json.WriteString("takes", key.Kind == KeyKind.LengthOrZero ? "length or zero" : key.Kind.ToString().ToLowerInvariant());
        json.WriteBoolean("required", key.Default is null && !key.Optional);
        json.WriteString("default", key.Default);
        json.WriteString("least", key.Least);
        json.WriteString("most", key.Most);
        json.WriteString("hint", key.Hint);
        json.List("choices", key.Choices, Choice);
    }

    private static void Choice(Utf8JsonWriter json, FormChoice choice)
    {
        json.WriteString("word", choice.Word);
        json.WriteString("meaning", choice.Meaning);
    }

    /// <summary>A working of parts: what was added up, then the form's own answer, question by question.</summary>
    public static string Total(PartTotal total, string from, LengthUnit unit) =>
        JsonOutput.Object(json =>
        {
            json.WriteString("working", total.Form.Name);
            json.WriteString("from", from);
            json.List("questions", total.Questions, (inner, question) => Question(inner, question, unit));
            if (total.Sum is { } sum)
                json.Member("sum", inner => Figure(inner, sum, unit));
            if (total.Range is (var least, var most))
                json.Member("range", inner => Range(inner, least, most, total.RangeSource!, unit));
            json.List("verdicts", total.Verdicts, Verdict);
            json.Texts("notes", total.Notes);
        });

    private static void Question(Utf8JsonWriter json, PartQuestion question, LengthUnit unit)
    {
        json.WriteString("about", question.About);
        json.Member(
            "given",
            inner =>
            {
                foreach (var (key, text) in question.Given)
                    inner.WriteString(key, text);
            }
        );
        json.List("added", question.Added, (inner, added) => Added(inner, added, unit));
        json.Member("answer", inner => Members(inner, question.Outcome.Answer!, unit));
    }

    private static void Added(Utf8JsonWriter json, PartAdded added, LengthUnit unit)
    {
        json.WriteString("key", added.Key);
        json.WriteString("name", added.Name);
        Value(json, added.Figure, unit);
        json.List(
            "shares",
            added.Shares,
            (inner, share) =>
            {
                inner.WriteString("part", share.Part);
                inner.WriteString("how", share.How);
                Value(inner, share.Share, unit);
            }
        );
    }

    private static void Range(Utf8JsonWriter json, Figure least, Figure most, SourceNote source, LengthUnit unit)
    {
        Number(json, "least", least.Number(unit));
        Number(json, "most", most.Number(unit));
        json.WriteString("unit", least.UnitName(unit));
        Source(json, source);
    }

    private static void Value(Utf8JsonWriter json, Figure figure, LengthUnit unit)
    {
        Number(json, "value", figure.Number(unit));
        json.WriteString("unit", figure.UnitName(unit));
        json.WriteString("text", figure.Text(unit));
    }

    private static void Figure(Utf8JsonWriter json, Working working, LengthUnit unit)
    {
        json.WriteString("name", working.Name);
        if (working.Figure is LengthsFigure list)
        {
            Numbers(json, "value", list, unit);
            Numbers(json, "values", list, unit);
        }
        else
        {
            Number(json, "value", working.Figure.Number(unit));
        }

        json.WriteString("unit", working.Figure.UnitName(unit));
        json.WriteString("text", working.Figure.Text(unit));
        json.WriteString("formula", working.Formula);
        json.WriteString("filled", working.Filled(unit));
        json.List(
            "inputs",
            working.Inputs,
            (inner, input) =>
            {
                inner.WriteString("key", input.Key);
                Figure(inner, input.Working, unit);
            }
        );
        Source(json, working.Source);
        json.WriteString("outsideRange", working.OutsideRange);
    }

    // "values" is how a list was named before; both hold the same.
    private static void Numbers(Utf8JsonWriter json, string name, LengthsFigure list, LengthUnit unit)
    {
        json.WriteStartArray(name);
        foreach (var one in list.Lengths)
            json.WriteNumberValue((double)one.To(unit));
        json.WriteEndArray();
    }

    private static void Verdict(Utf8JsonWriter json, Verdict verdict)
    {
        json.WriteString("gravity", verdict.Severity.ToString().ToLowerInvariant());
        json.WriteString("text", verdict.Text);
    }

    private static void Caution(Utf8JsonWriter json, Caution caution)
    {
        json.WriteString("id", caution.Id);
        json.WriteString("text", caution.Text);
        Source(json, caution.Source);
    }

    private static void Part(Utf8JsonWriter json, ProposedPart part, LengthUnit unit)
    {
        json.WriteString("name", part.Name);
        json.WriteNumber("quantity", part.Quantity);
        json.WriteString("unit", new LengthFigure(part.Length).UnitName(unit));
        Number(json, "length", (double)part.Length.To(unit));
        Number(json, "width", (double)part.Width.To(unit));
        Number(json, "thickness", (double)part.Thickness.To(unit));
        Number(json, "cutLongBy", (double)part.CutLongBy.To(unit));
        Number(json, "cutWideBy", (double)part.CutWideBy.To(unit));
        json.WriteString("text", WorkText.Of(part, unit));
    }

    private static void Source(Utf8JsonWriter json, SourceNote source) =>
        json.Member(
            "source",
            inner =>
            {
                inner.WriteString("text", source.Text);
                inner.WriteString("certainty", SourceWords.Of(source.Certainty));
            }
        );

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
            json.WriteNumber(name, number);
        else
            json.WriteNull(name);
    }
}
