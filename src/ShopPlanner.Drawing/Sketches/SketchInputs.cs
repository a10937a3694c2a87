using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>
/// What a sketch is drawn from. Keys are asked for by name, several where forms name the same thing differently; what is not
/// given is taken from the form's default, else from an everyday size, so that there is always something to see.
/// </summary>
internal sealed class SketchInputs(WorkingForm form, IReadOnlyDictionary<string, string> given, LengthUnit unit, Answer? answer)
{
    /// <summary>Unit of the figures shown.</summary>
    public LengthUnit Unit { get; } = unit;

    /// <summary>The main figure as text; empty where nothing came out.</summary>
    public string Main => answer is null ? "" : answer.Results[0].Figure.Text(Unit);

    /// <summary>What is given and what came out, in words.</summary>
    public string Description
    {
        get
        {
            var asked = form.Keys.Where(key => Text(key.Name) is not null).Select(key => $"{key.Label} {Text(key.Name)}");
            var found = answer?.Results.Select(result => $"{result.Name} {result.Figure.Text(Unit)}") ?? [];
            return string.Join("; ", asked.Concat(found)) + ".";
        }
    }

    /// <summary>The first result that is a row of lengths; empty where there is none.</summary>
    public ImmutableArray<Length> Places =>
        answer?.Results.Select(result => result.Figure).OfType<LengthsFigure>().FirstOrDefault()?.Lengths ?? [];

    /// <summary>A length in inches, for drawing.</summary>
    public double Inches(string otherwise, params string[] keys) => (double)Length(otherwise, keys).ToInches();

    /// <summary>The length of the first of the keys that is given, or their default, or the everyday size.</summary>
    public Length Length(string otherwise, params string[] keys)
    {
        if (MaybeLength(keys) is { } found)
            return found;
        UsesExamples = true;
        return LengthText.Parse(otherwise, LengthUnit.Inch).Value;
    }

    /// <summary>True once a size was drawn that nobody gave.</summary>
    public bool UsesExamples { get; private set; }

    /// <summary>The length of the first of the keys that is given or has a default; null where none is.</summary>
    public Length? MaybeLength(params string[] keys) => keys.Select(Read).FirstOrDefault(length => length is not null);

    /// <summary>A whole number within limits that can be drawn.</summary>
    public int Count(int otherwise, int most, params string[] keys) =>
        int.TryParse(First(keys), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? Math.Clamp(number, 0, most)
            : otherwise;

    /// <summary>A word or a choice in lower case.</summary>
    public string Word(string otherwise, params string[] keys) => (First(keys) ?? otherwise).ToLowerInvariant();

    /// <summary>A quantity as a person reads it, with the unit where the text has none; empty where there is none.</summary>
    public string Quantity(params string[] keys)
    {
        var key = form.Keys.FirstOrDefault(one => keys.Contains(one.Name) && Text(one.Name) is not null);
        if (key is null)
            return "";
        var text = Text(key.Name)!;
        return key.Quantity is { } kind && char.IsAsciiDigit(text[^1]) ? $"{text} {kind.Name(Unit)}".TrimEnd() : text;
    }

    /// <summary>The first length among the results whose name holds the first of the words that finds one.</summary>
    public Length? ResultLength(params string[] words) =>
        words.SelectMany(Named).Select(result => Of(result.Figure)).FirstOrDefault(length => length is not null);

    /// <summary>The first whole number among the results whose name holds the word.</summary>
    public int? ResultCount(string word) =>
        Named(word).Select(result => Whole(result.Figure)).FirstOrDefault(number => number is not null);

    /// <summary>The result of this name as a person reads it; empty where there is none.</summary>
    public string ResultText(string name) => Named(name).FirstOrDefault()?.Figure.Text(Unit) ?? "";

    /// <summary>A whole number among what went into the results, by its name.</summary>
    public int? InputCount(string name) =>
        answer?.Results.SelectMany(Below).FirstOrDefault(one => one.Name == name) is { } input ? Whole(input.Figure) : null;

    /// <summary>The length of the first result of all.</summary>
    public Length? MainLength => answer is null ? null : Of(answer.Results[0].Figure);

    /// <summary>The number of the first result of all, in its metric unit.</summary>
    public double? MainValue =>
        answer?.Results[0].Figure is QuantityFigure figure && double.IsFinite(figure.Value) ? figure.Value : null;

    /// <summary>A length as it stands in the drawing; what is made in millimeters stays so among inches.</summary>
    public string Shown(Length length) =>
        LengthFormat.WithUnit(length, Unit == LengthUnit.Inch ? LengthFormat.MadeIn(Unit, length) : Unit);

    /// <summary>A reading of calipers as it stands in the drawing.</summary>
    public string Reading(Length length) => new FineLengthFigure(length).Text(Unit);

    private static Length? Of(Figure figure) =>
        figure switch
        {
            LengthFigure one => one.Length,
            FineLengthFigure fine => fine.Length,
            EnteredFigure entered => entered.Length,
            BitFigure bit => bit.Length,
            OwnUnitFigure own => own.Length,
            SettingFigure setting => setting.Length,
            _ => null,
        };

    private static int? Whole(Figure figure) =>
        figure is QuantityFigure { Value: >= 0 and < 10_000 } quantity ? (int)quantity.Value : null;

    private static IEnumerable<Working> Below(Working working) =>
        working.Inputs.SelectMany(input => Below(input.Working).Prepend(input.Working));

    private IEnumerable<Working> Named(string word) =>
        answer?.Results.Where(result => result.Name.Contains(word, StringComparison.OrdinalIgnoreCase)) ?? [];

    private string? First(string[] keys) => keys.Select(Text).FirstOrDefault(text => text is not null);

    private Length? Read(string key) => Parse(Text(key)) ?? Parse(form.Keys.FirstOrDefault(one => one.Name == key)?.Default);

    private Length? Parse(string? text) =>
        text is not null && LengthText.ParsePositive(text, Unit) is { Ok: true } length ? length.Value : null;

    private string? Text(string key)
    {
        if (form.Keys.FirstOrDefault(one => one.Name == key) is not { } found)
            return null;
        return given.TryGetValue(key, out var text) && !string.IsNullOrWhiteSpace(text) ? text.Trim() : found.Default;
    }
}
