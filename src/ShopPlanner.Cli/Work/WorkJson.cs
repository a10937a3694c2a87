using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Cli.Work;

/// <summary>Workings as a document: numbers where there are numbers, null beside a text where there are none.</summary>
internal static class WorkJson
{
    private static readonly JsonWriterOptions Readable = new()
    {
        Indented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>All forms.</summary>
    public static string List() => Write(json => Array(json, "workings", WorkingForms.All, form => About(json, form)));

    /// <summary>What a form takes.</summary>
    public static string Keys(WorkingForm form) =>
        Write(json =>
        {
            About(json, form);
            Array(json, "keys", form.Keys, key => Key(json, key));
        });

    /// <summary>The first result's members at the top, then all of them and what follows from them.</summary>
    public static string Answer(WorkingForm form, Answer answer, LengthUnit unit) =>
        Write(json =>
        {
            json.WriteString("working", form.Name);
            Figure(json, answer.Results[0], unit);
            Array(json, "results", answer.Results, result => Figure(json, result, unit));
            Array(json, "verdicts", answer.Verdicts, verdict => Verdict(json, verdict));
            Array(json, "cautions", answer.Cautions, caution => Caution(json, caution));
            Array(json, "parts", answer.Parts, part => Part(json, part, unit));
        });

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
        Array(
            json,
            "choices",
            key.Choices,
            choice =>
            {
                json.WriteString("word", choice.Word);
                json.WriteString("meaning", choice.Meaning);
            }
        );
    }

    private static void Figure(Utf8JsonWriter json, Working working, LengthUnit unit)
    {
        json.WriteString("name", working.Name);
        Number(json, "value", working.Figure.Number(unit));
        if (working.Figure is LengthsFigure list)
            Numbers(json, list, unit);
        json.WriteString("unit", working.Figure.UnitName(unit));
        json.WriteString("text", working.Figure.Text(unit));
        json.WriteString("formula", working.Formula);
        json.WriteString("filled", working.Filled(unit));
        Array(
            json,
            "inputs",
            working.Inputs,
            input =>
            {
                json.WriteString("key", input.Key);
                Figure(json, input.Working, unit);
            }
        );
        Source(json, working.Source);
        json.WriteString("outsideRange", working.OutsideRange);
    }

    private static void Numbers(Utf8JsonWriter json, LengthsFigure list, LengthUnit unit)
    {
        json.WriteStartArray("values");
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

    private static void Source(Utf8JsonWriter json, SourceNote source)
    {
        json.WriteStartObject("source");
        json.WriteString("text", source.Text);
        json.WriteString("certainty", SourceWords.Of(source.Certainty));
        json.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
            json.WriteNumber(name, number);
        else
            json.WriteNull(name);
    }

    private static void Array<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<T> members)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            members(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string Write(Action<Utf8JsonWriter> members)
    {
        using var memory = new MemoryStream();
        using (var json = new Utf8JsonWriter(memory, Readable))
        {
            json.WriteStartObject();
            members(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(memory.ToArray()) + "\n";
    }
}
