using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>A value of a JSON document with its path, so that every fault names its place. After a fault a reading gives
/// nothing.</summary>
internal sealed class JsonNode(JsonElement? element, string path, List<Fault> faults)
{
    private const int MostEntries = 500;
    private const int MostCharacters = 2000;

    public string Path => path;

    public bool Present => element is { ValueKind: not JsonValueKind.Null };

    public JsonNode this[string name] =>
        new(IsObject && element!.Value.TryGetProperty(name, out var inner) ? inner : null, Under(name), faults);

    /// <summary>A text; a number counts as the text it is written with.</summary>
    public string? Text() =>
        !Present
            ? null
            : element!.Value.ValueKind switch
            {
                JsonValueKind.String when element.Value.GetString()!.Length > MostCharacters => Fail(
                    $"is longer than {MostCharacters} characters"
                ),
                JsonValueKind.String => element.Value.GetString(),
                JsonValueKind.Number => element.Value.GetRawText(),
                _ => Fail("isn't a text or a number: write one value here, as in \"3/4 in\""),
            };

    /// <summary>A text that must be there.</summary>
    public string Required()
    {
        if (Text() is { Length: > 0 } text)
            return text;
        if (!Present || (element!.Value.ValueKind == JsonValueKind.String && element.Value.GetString() is ""))
            Fail("is missing: write a value here");
        return "";
    }

    /// <summary>A sentence or a word that must be there: a number is none.</summary>
    public string Words()
    {
        if (!Present || element!.Value.ValueKind == JsonValueKind.String)
            return Required();
        Fail("isn't a text: put it in quotes");
        return "";
    }

    /// <summary>A whole number that must be there, not in quotes; null after a fault.</summary>
    public int? Whole()
    {
        if (element is { ValueKind: JsonValueKind.Number } number && number.TryGetInt32(out var whole))
            return whole;
        Fail(Present ? "isn't a whole number: write it without quotes, as in 2" : "is missing: write a whole number here");
        return null;
    }

    /// <summary>The entries of a list; none where it is absent.</summary>
    public IEnumerable<JsonNode> Items()
    {
        if (!Present)
            return [];
        if (element!.Value.ValueKind != JsonValueKind.Array)
            return None("isn't a list: write […]");
        return element.Value.GetArrayLength() > MostEntries
            ? None($"has more than {MostEntries} entries")
            : element
                .Value.EnumerateArray()
                .Select(
                    (one, i) => new JsonNode(one, Under(i.ToString(System.Globalization.CultureInfo.InvariantCulture)), faults)
                )
                .ToList();
    }

    /// <summary>The members of an object; none where it is absent. Duplicate names are refused.</summary>
    public IReadOnlyList<(string Name, JsonNode Value)> Members()
    {
        if (!Present)
            return [];
        if (!IsObject)
        {
            Fail("isn't an object: write {…}");
            return [];
        }

        foreach (var twice in element!.Value.EnumerateObject().GroupBy(one => one.Name).Where(group => group.Count() > 1))
            faults.Add(Fault.Of(Under(twice.Key), twice.Key, "appears twice: keep one of them"));
        return [.. element.Value.EnumerateObject().Select(one => (one.Name, new JsonNode(one.Value, Under(one.Name), faults)))];
    }

    /// <summary>Refuses members that are not known, so that nothing written is silently lost.</summary>
    public void Only(params ReadOnlySpan<string> names)
    {
        foreach (var (name, value) in Members())
            if (!names.Contains(name))
                faults.Add(Fault.Of(value.Path, name, "isn't a member here: it has " + string.Join(", ", names.ToArray())));
    }

    /// <summary>One of some words.</summary>
    public T OneOf<T>(IReadOnlyDictionary<string, T> words, T otherwise)
        where T : struct
    {
        if (!Present)
            return otherwise;
        if (Text() is { } text && words.TryGetValue(text, out var value))
            return value;
        Fail("isn't a choice: pick one of " + string.Join(", ", words.Keys));
        return otherwise;
    }

    public string? Fail(string message)
    {
        faults.Add(Fault.Of(path, element?.GetRawText(), message));
        return null;
    }

    private bool IsObject => element is { ValueKind: JsonValueKind.Object };

    private string Under(string name) => path.Length == 0 ? name : path + "." + name;

    private IEnumerable<JsonNode> None(string message)
    {
        Fail(message);
        return [];
    }
}
