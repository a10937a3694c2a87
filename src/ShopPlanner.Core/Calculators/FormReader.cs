using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>
/// Reads the texts given to a form, key by key, and gathers what is wrong with them. After a fault a reading gives a harmless
/// value: nothing is worked out from it.
/// </summary>
public sealed class FormReader
{
    private readonly WorkingForm form;
    private readonly Dictionary<string, string> given = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<Fault> faults = [];

    internal FormReader(WorkingForm form, IReadOnlyDictionary<string, string> given, LengthUnit unit)
    {
        (this.form, Unit) = (form, unit);
        foreach (var (name, value) in given)
            if (!form.Keys.Any(key => string.Equals(key.Name, name, StringComparison.OrdinalIgnoreCase)))
                faults.Add(Fault.Of(name, value, $"is not an input of {form.Name}: it takes {Taken()}"));
            else if (!this.given.TryAdd(name, value))
                faults.Add(Fault.Of(name, value, $"is a second value, after '{this.given[name]}': give each input once"));
    }

    /// <summary>Unit of lengths without a suffix.</summary>
    public LengthUnit Unit { get; }

    /// <summary>What is wrong so far.</summary>
    public IReadOnlyList<Fault> Faults => faults;

    /// <summary>True where a text is given (a default does not count).</summary>
    public bool Has(string key) => given.TryGetValue(key, out var text) && !string.IsNullOrWhiteSpace(text);

    /// <summary>The text, or the default; null where neither is there.</summary>
    public string? Text(string key)
    {
        var which = Key(key);
        if (Has(key))
            return given[key].Trim();
        if (which.Default is null && !which.Optional)
            faults.Add(Fault.Of(key, "", "is missing: " + Wanted(which)));
        return which.Default;
    }

    /// <summary>A length within the key's limits.</summary>
    public Length Length(string key) => MaybeLength(key) ?? Inch;

    /// <summary>A length within the key's limits; null where it is optional and not given.</summary>
    public Length? MaybeLength(string key)
    {
        var which = Key(key);
        if (Text(key) is not { } text)
            return null;
        var read = which.Kind == KeyKind.Length ? LengthText.ParsePositive(text, Unit) : LengthText.Parse(text, Unit);
        if (!read.Ok)
            return Refuse<Length>(read.Fault.At(key));
        var (least, most) = (Limit(which.Least), Limit(which.Most));
        if (read.Value < least)
            return Refuse<Length>(Fault.Of(key, text, "is too small: at least " + Said(which.Least, true)));
        return read.Value > most
            ? Refuse<Length>(Fault.Of(key, text, "is too large: at most " + Said(which.Most, false)))
            : read.Value;
    }

    /// <summary>A length within the key's limits, as a figure that was given.</summary>
    internal Working<Length> Given(string name, string key) => Entered(name, Length(key));

    /// <summary>A length read off calipers or a dial, as a figure that was given: told in decimals.</summary>
    internal Working<Length> Read(string name, string key)
    {
        var length = Length(key);
        return Working.Looked(name, length, new FineLengthFigure(length), Working.AsGiven);
    }

    /// <summary>A length as a figure that was given; null where it is optional and not given.</summary>
    internal Working<Length>? MaybeGiven(string name, string key) =>
        MaybeLength(key) is { } length ? Entered(name, length) : null;

    /// <summary>A whole number within the key's limits.</summary>
    public int Count(string key) => MaybeCount(key) ?? 1;

    /// <summary>A whole number within the key's limits; null where it is optional and not given.</summary>
    public int? MaybeCount(string key)
    {
        if (Text(key) is not { } text)
            return null;
        if (!int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
            return Refuse<int>(Fault.Of(key, text, "is not a whole number: " + Wanted(Key(key))));
        return Within(Key(key), number, text) ? number : null;
    }

    /// <summary>A number within the key's limits.</summary>
    public double Number(string key) => MaybeNumber(key) ?? 1;

    /// <summary>A number within the key's limits, one percent sign allowed; null where it is optional and not given.</summary>
    public double? MaybeNumber(string key)
    {
        if (Text(key) is not { } text)
            return null;
        var bare = text.EndsWith('%') ? text[..^1].TrimEnd() : text;
        if (!QuantityText.TryNumber(bare, out var number))
            return Refuse<double>(Fault.Of(key, text, "is not a number: " + Wanted(Key(key))));
        return Within(Key(key), number, text) ? number : null;
    }

    /// <summary>A quantity in the metric unit of its kind; limits of the key are texts with units.</summary>
    public double Quantity(string key) => MaybeQuantity(key) ?? 1;

    /// <summary>A quantity in the metric unit of its kind; null where it is optional and not given.</summary>
    public double? MaybeQuantity(string key)
    {
        var which = Key(key);
        if (Text(key) is not { } text)
            return null;
        var kind = which.Quantity!;
        if (QuantityText.Parse(text, kind, Unit) is not (var value, var system))
            return Refuse<double>(Fault.Of(key, text, "can't be read: " + QuantityText.Wanted(kind)));
        if (which.Least is { } least && QuantityText.Read(least, kind, Unit) is { } low && value < low)
            return Refuse<double>(Fault.Of(key, text, "is too small: at least " + QuantityText.Limit(low, kind, system, true)));
        return which.Most is { } most && QuantityText.Read(most, kind, Unit) is { } high && value > high
            ? Refuse<double>(Fault.Of(key, text, "is too large: at most " + QuantityText.Limit(high, kind, system, false)))
            : value;
    }

    /// <summary>A quantity as a figure that was given.</summary>
    internal Working<double> GivenQuantity(string name, string key, int digits) =>
        Working.Given(name, Quantity(key), Key(key).Quantity!, digits);

    /// <summary>A quantity as a figure that was given; null where it is optional and not given.</summary>
    internal Working<double>? MaybeGivenQuantity(string name, string key, int digits) =>
        MaybeQuantity(key) is { } value ? Working.Given(name, value, Key(key).Quantity!, digits) : null;

    /// <summary>One of the key's choices.</summary>
    public string Choice(string key) => MaybeChoice(key) ?? Key(key).Choices[0].Word;

    /// <summary>One of the key's choices; null where it is optional and not given.</summary>
    public string? MaybeChoice(string key)
    {
        var which = Key(key);
        if (Text(key) is not { } text)
            return null;
        if (which.Choices.FirstOrDefault(one => string.Equals(one.Word, text, StringComparison.OrdinalIgnoreCase)) is { } choice)
            return choice.Word;
        faults.Add(Fault.Of(key, text, "is not a choice: " + Wanted(which)));
        return null;
    }

    /// <summary>Notes a fault that the form itself finds between keys.</summary>
    public void Refuse(string key, string message) => faults.Add(Fault.Of(key, given.GetValueOrDefault(key), message));

    private static Working<Length> Entered(string name, Length length) =>
        Working.Looked(name, length, new EnteredFigure(length), Working.AsGiven);

    private static Length Tenth => Measures.Length.FromMillimetres(0.1m);

    private static Length Inch => Measures.Length.FromInches(1);

    private FormKey Key(string name) => form.Keys.First(key => key.Name == name);

    private Length? Limit(string? text) => text is null ? null : LengthText.Parse(text, Unit).Value;

    // Limits are declared in customary units; who works in millimetres reads them in millimetres.
    private string? Said(string? limit, bool isLeast)
    {
        if (Unit == LengthUnit.Inch || Limit(limit) is not { } length)
            return limit;
        var shown = LengthSteps.ShownUp(length, Unit);
        return LengthFormat.WithUnit(isLeast || shown == length ? shown : LengthSteps.ShownUp(length - Tenth, Unit), Unit);
    }

    private bool Within(FormKey key, double number, string text)
    {
        if (key.Least is { } least && number < double.Parse(least, CultureInfo.InvariantCulture))
            faults.Add(Fault.Of(key.Name, text, "is too small: at least " + least));
        else if (key.Most is { } most && number > double.Parse(most, CultureInfo.InvariantCulture))
            faults.Add(Fault.Of(key.Name, text, "is too large: at most " + most));
        else
            return true;
        return false;
    }

    private T? Refuse<T>(Fault fault)
        where T : struct
    {
        faults.Add(fault);
        return null;
    }

    private string Taken() => string.Join(", ", form.Keys.Select(key => key.Name));

    private static string Wanted(FormKey key) =>
        key.Kind switch
        {
            KeyKind.Choice => "pick one of " + string.Join(", ", key.Choices.Select(one => one.Word)),
            KeyKind.Length or KeyKind.LengthOrZero => "write a length like 34 1/2, 8 ft or 600 mm",
            KeyKind.Count => "write a whole number",
            KeyKind.Number => "write a number",
            KeyKind.Quantity => QuantityText.Wanted(key.Quantity!),
            _ => key.Hint.Length > 0 ? key.Hint : "write a word",
        };
}
