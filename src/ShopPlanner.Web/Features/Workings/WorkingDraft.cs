using System.Collections.Immutable;
using Microsoft.AspNetCore.WebUtilities;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Workings;

/// <summary>A form being filled in: what is typed, what comes out, and the address that gives the same again.</summary>
public sealed class WorkingDraft
{
    private const string UnitKey = "unit";

    // Names the project whose parts were added up; it is no input of a form.
    private const string ProjectKey = "project";
    private const int MostCharacters = 100;

    private readonly Dictionary<string, string> texts = new(StringComparer.Ordinal);

    /// <summary>A form as an address fills it in.</summary>
    /// <param name="form">The form.</param>
    /// <param name="query">The address's query, or empty.</param>
    /// <param name="usual">The unit where the address names none.</param>
    public WorkingDraft(WorkingForm form, string query, LengthUnit usual)
    {
        Form = form;
        Unit = usual;
        foreach (var (key, values) in QueryHelpers.ParseQuery(query))
        {
            var text = values.LastOrDefault() ?? "";
            if (key == UnitKey)
                Unit = text switch
                {
                    "in" => LengthUnit.Inch,
                    "mm" => LengthUnit.Millimetre,
                    _ => usual,
                };
            else if (key == ProjectKey)
                Project = Guid.TryParse(text, out var project) ? project : null;
            else if (text.Length is > 0 and <= MostCharacters)
                texts[key] = text;
        }

        Run();
    }

    /// <summary>The form.</summary>
    public WorkingForm Form { get; }

    /// <summary>The project whose parts are added up; null for none.</summary>
    public Guid? Project { get; }

    /// <summary>Unit of lengths without a suffix, and of what is shown.</summary>
    public LengthUnit Unit { get; private set; }

    /// <summary>What is typed, by key.</summary>
    public IReadOnlyDictionary<string, string> Texts => texts;

    /// <summary>What came out, or last came out; null where nothing did yet.</summary>
    public Answer? Answer { get; private set; }

    /// <summary>Whether <see cref="Answer"/> belongs to what was typed before.</summary>
    public bool IsStale { get; private set; }

    /// <summary>What is wrong with what is typed.</summary>
    public ImmutableArray<Fault> Faults { get; private set; } = [];

    /// <summary>What is still to be typed; nothing is wrong with it.</summary>
    public ImmutableArray<Fault> Missing { get; private set; } = [];

    /// <summary>Gives the same again.</summary>
    public string Address => Links.Working(Form.Name, texts, Unit, Project);

    /// <summary>The same form with other texts beside what is typed.</summary>
    public string With(IReadOnlyDictionary<string, string> given) =>
        Links.Working(Form.Name, texts.ToImmutableDictionary().SetItems(given), Unit, Project);

    /// <summary>What is typed for a key, or nothing.</summary>
    public string Text(FormKey key) => texts.GetValueOrDefault(key.Name, "");

    /// <summary>What is wrong with a key, beside its field; null where nothing is.</summary>
    public Fault? FaultOf(FormKey key) => Faults.FirstOrDefault(fault => fault.Field == key.Name);

    /// <summary>Faults that no field shows: of keys that the form does not take.</summary>
    public ImmutableArray<Fault> Elsewhere => [.. Faults.Where(fault => Form.Keys.All(key => key.Name != fault.Field))];

    /// <summary>Takes a key's text in and works it out.</summary>
    public void Type(FormKey key, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            texts.Remove(key.Name);
        else
            texts[key.Name] = text[..Math.Min(text.Length, MostCharacters)];
        Run();
    }

    /// <summary>Changes the unit; what is typed is written so that it means what it meant.</summary>
    public void Choose(LengthUnit unit)
    {
        if (unit == Unit)
            return;
        foreach (var key in Form.Keys.Where(key => texts.ContainsKey(key.Name)))
            texts[key.Name] = Rewrite(key, texts[key.Name], unit);
        Unit = unit;
        Run();
    }

    private string Rewrite(FormKey key, string text, LengthUnit to) =>
        key.Kind switch
        {
            KeyKind.Length
            or KeyKind.LengthOrZero
                when LengthText.Parse(text, Unit) is { Ok: true } meant && LengthText.Parse(text, to) != meant =>
                LengthFormat.Exact(meant.Value, to),
            KeyKind.Quantity when key.Quantity is { } kind && kind.Metric != kind.Customary && text.Trim().All(IsOfNumber) =>
                $"{text.Trim()} {kind.Name(Unit)}",
            _ => text,
        };

    private static bool IsOfNumber(char c) => char.IsAsciiDigit(c) || c is '.' or '-';

    private void Run()
    {
        var (answer, faults) = Form.Run(texts, Unit);
        Missing = [.. faults.Where(fault => fault.Value.Length == 0)];
        Faults = [.. faults.Where(fault => fault.Value.Length > 0)];
        (Answer, IsStale) = answer is null ? (Answer, Answer is not null) : (answer, false);
    }
}
