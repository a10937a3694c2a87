using System.Globalization;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>
/// The members of one JSON object. Each method reads one member and, when it is wrong, notes the fault with the member's path and
/// gives a stand-in, so that reading goes on and every fault is found. A null member is an absent one.
/// </summary>
internal sealed class Members(JsonElement element, string path, FaultList faults, LengthUnit unit)
{
    /// <summary>The longest id or name read.</summary>
    public const int MaxText = 200;

    public FaultList Faults => faults;

    /// <summary>The unit of a number without one.</summary>
    public LengthUnit Unit => unit;

    /// <summary>The same object with lengths in another unit.</summary>
    public Members In(LengthUnit other) => new(element, path, faults, other);

    public bool Has(string name) => Find(name) is not null;

    /// <summary>A member's path, for faults.</summary>
    public string At(string name) => path.Length == 0 ? name : path + "." + name;

    /// <summary>A length of more than nothing that must be there.</summary>
    public Length Size(string name) => Require(name) is { } value ? Positive(name, value) : default;

    /// <summary>A length of more than nothing, if it is there.</summary>
    public Length? OptionalSize(string name) => Find(name) is { } value ? Positive(name, value) : null;

    /// <summary>A length of zero or more, if it is there.</summary>
    public Length? OptionalLength(string name) =>
        Find(name) is { } value ? Take(name, JsonValue.Length(value, unit)) : null;

    /// <summary>A length of zero or more that must be there.</summary>
    public Length Length(string name) => Require(name) is { } value ? Take(name, JsonValue.Length(value, unit)) : default;

    /// <summary>An amount of money; nothing when absent.</summary>
    public Money Price(string name) => Find(name) is { } value ? Take(name, JsonValue.Money(value)) : default;

    /// <summary>A sum of money that must be there.</summary>
    public Money Total(string name) => Require(name) is { } value ? Take(name, JsonValue.Total(value)) : default;

    /// <summary>A whole number within limits, if it is there.</summary>
    public int? OptionalCount(string name, int least, int most) =>
        Find(name) is { } value ? Take(name, JsonValue.Count(value, least, most)) : null;

    /// <summary>A whole number within limits that must be there.</summary>
    public int Count(string name, int least, int most) =>
        Require(name) is { } value ? Take(name, JsonValue.Count(value, least, most)) : least;

    /// <summary>Seconds, if they are there: zero or more, at most a day.</summary>
    public double? OptionalSeconds(string name)
    {
        if (Find(name) is not { } value) return null;
        var number = value.ValueKind == JsonValueKind.Number ? JsonValue.Number(value) : null;
        if (number is >= 0 and <= 86_400) return (double)number;
        Refuse(name, value, "is not a time: a number of seconds up to 86400 is wanted");
        return null;
    }

    /// <summary>A text of at most <see cref="MaxText"/> characters that must be there and not be blank.</summary>
    public string Text(string name) => Require(name) is { } value ? Text(name, value) : "";

    /// <summary>The same, if it is there.</summary>
    public string? OptionalText(string name) => Find(name) is { } value ? Text(name, value) : null;

    /// <summary>True or false; false when absent.</summary>
    public bool Flag(string name)
    {
        if (Find(name) is not { } value) return false;
        if (value.ValueKind is not (JsonValueKind.True or JsonValueKind.False)) Refuse(name, value, "is neither true nor false");
        return value.ValueKind == JsonValueKind.True;
    }

    /// <summary>One of several words; <paramref name="otherwise"/> when absent, required where that is null.</summary>
    public T Choice<T>(string name, WordTable<T> words, T? otherwise)
        where T : struct
    {
        if ((otherwise is null ? Require(name) : Find(name)) is not { } value) return otherwise ?? default;
        if (value.ValueKind == JsonValueKind.String && JsonValue.IsShort(value) && words.Find(value.GetString()!) is { } meant)
            return meant;
        Refuse(name, value, "is unknown: " + words.Listed + " is wanted");
        return default;
    }

    /// <summary>An object, if it is there; an empty one otherwise.</summary>
    public Members Object(string name)
    {
        if (Find(name) is not { } value) return new(default, At(name), faults, unit);
        if (value.ValueKind != JsonValueKind.Object) Refuse(name, value, "is not an object");
        return new(value, At(name), faults, unit);
    }

    /// <summary>The objects of an array that must be there; none where it is wrong.</summary>
    public IEnumerable<Members> Objects(string name) => Elements(name, Require(name)).Where(IsObject).Select(Inner);

    /// <summary>The objects of an array, if it is there.</summary>
    public IEnumerable<Members> OptionalObjects(string name) => Elements(name, Find(name)).Where(IsObject).Select(Inner);

    /// <summary>The texts of an array; a null element stays null.</summary>
    public IEnumerable<string?> Texts(string name)
    {
        foreach (var (at, value) in Elements(name, Find(name)))
        {
            if (value.ValueKind == JsonValueKind.String) yield return value.GetString();
            else if (value.ValueKind == JsonValueKind.Null) yield return null;
            else faults.Add(JsonValue.Wrong(value, "is not text").At(at));
        }
    }

    public void Refuse(string name, string value, string message) => faults.Add(At(name), value, message);

    private void Refuse(string name, JsonElement value, string message) =>
        faults.Add(JsonValue.Wrong(value, message).At(At(name)));

    private IEnumerable<(string At, JsonElement Value)> Elements(string name, JsonElement? array)
    {
        if (array is not { } value) yield break;
        if (value.ValueKind != JsonValueKind.Array)
        {
            Refuse(name, value, "is not a list");
            yield break;
        }

        var index = 0;
        foreach (var item in value.EnumerateArray())
            yield return (string.Create(CultureInfo.InvariantCulture, $"{At(name)}[{index++}]"), item);
    }

    private bool IsObject((string At, JsonElement Value) item)
    {
        if (item.Value.ValueKind == JsonValueKind.Object) return true;
        faults.Add(JsonValue.Wrong(item.Value, "is not an object").At(item.At));
        return false;
    }

    private Members Inner((string At, JsonElement Value) item) => new(item.Value, item.At, faults, unit);

    private string Text(string name, JsonElement value)
    {
        var text = value.ValueKind == JsonValueKind.String && JsonValue.IsShort(value) ? value.GetString()! : null;
        if (text is null || text.Length > MaxText) Refuse(name, value, $"is not a text of at most {MaxText} characters");
        else if (string.IsNullOrWhiteSpace(text)) Refuse(name, value, "is blank");
        return text ?? "";
    }

    private Length Positive(string name, JsonElement value)
    {
        var parsed = JsonValue.Length(value, unit);
        return Take(name, parsed is { Ok: true, Value.IsPositive: false } ? JsonValue.Wrong(value, "must be more than nothing") : parsed);
    }

    private T Take<T>(string name, Parsed<T> parsed)
        where T : struct
    {
        if (parsed.Ok) return parsed.Value;
        faults.Add(parsed.Fault.At(At(name)));
        return default;
    }

    private JsonElement? Require(string name)
    {
        var value = Find(name);
        if (value is null) faults.Add(At(name), "", "is missing");
        return value;
    }

    private JsonElement? Find(string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var value)
        && value.ValueKind != JsonValueKind.Null
            ? value
            : null;
}
