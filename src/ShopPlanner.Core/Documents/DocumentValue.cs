using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;

namespace ShopPlanner.Core.Documents;

/// <summary>
/// A member's value with its path. Each reading method gives null, and notes the fault with path and value, when the value is
/// not what was asked for; null without a fault when the member is absent or <c>null</c>, see <see cref="Required"/>.
/// </summary>
/// <param name="Element">The value; undefined where the member is absent.</param>
/// <param name="Path">Its member, like <c>parts[3].length</c>.</param>
/// <param name="Faults">Where faults are noted.</param>
public readonly record struct DocumentValue(JsonElement Element, string Path, FaultList Faults)
{
    private const int ShownBytes = 200;

    /// <summary>Whether the member is there and not <c>null</c>.</summary>
    public bool Present => Element.ValueKind is not (JsonValueKind.Undefined or JsonValueKind.Null);

    /// <summary>The same value, its absence noted as a fault.</summary>
    public DocumentValue Required(string wanted)
    {
        if (!Present)
            Faults.Add(Path, "", "is missing: " + wanted);
        return this;
    }

    /// <summary>Notes a fault about this value.</summary>
    public void Refuse(string message) => Faults.Add(Path, Show(Element), message);

    /// <summary>The object; an empty one when absent or no object, whose missing members are no further faults.</summary>
    public DocumentObject Object() =>
        Present && Is(JsonValueKind.Object, "is not an object: write {…}")
            ? new DocumentObject(Element, Path, Faults)
            : new DocumentObject(default, Path, new FaultList());

    /// <summary>The items of the array; none when absent.</summary>
    public IEnumerable<DocumentValue> Items(int most)
    {
        if (!Present || !Is(JsonValueKind.Array, "is not a list: write […]"))
            return [];
        var count = Element.GetArrayLength();
        if (DocumentRanges.Entries(count, most) is not { } message)
            return Indexed();
        Faults.Add(Path, count.ToString(CultureInfo.InvariantCulture), message);
        return [];
    }

    /// <summary>Text, perhaps empty.</summary>
    public string? Text()
    {
        if (!Present || !Is(JsonValueKind.String, "is not text: write it in quotes"))
            return null;
        if (JsonMarshal.GetRawUtf8Value(Element).Length <= DocumentRanges.MostTextBytes)
            return Element.GetString();
        Refuse(DocumentRanges.TooLongText);
        return null;
    }

    /// <summary>Text that names something, so not blank.</summary>
    public string? Id()
    {
        var text = Text();
        if (text is null || text.AsSpan().Trim().Length > 0)
            return text;
        Refuse(DocumentRanges.EmptyName);
        return null;
    }

    /// <summary>One of a few words.</summary>
    public T? OneOf<T>(IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(words);
        if (Text() is not { } text)
            return null;
        if (words.TryGetValue(text, out var value))
            return value;
        Refuse("is unknown: write one of " + string.Join(", ", words.Keys));
        return null;
    }

    /// <summary>True or false.</summary>
    public bool? Flag()
    {
        if (!Present)
            return null;
        if (Element.ValueKind is JsonValueKind.True or JsonValueKind.False)
            return Element.GetBoolean();
        Refuse("is neither true nor false");
        return null;
    }

    /// <summary>True when the value is of the kind; notes the fault otherwise.</summary>
    public bool Is(JsonValueKind kind, string message)
    {
        if (Element.ValueKind == kind)
            return true;
        Refuse(message);
        return false;
    }

    /// <summary>A value as it stands in the document, shortened.</summary>
    public static string Show(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Undefined)
            return "";
        if (element.ValueKind == JsonValueKind.Object)
            return "{…}";
        if (element.ValueKind == JsonValueKind.Array)
            return "[…]";
        var raw = JsonMarshal.GetRawUtf8Value(element);
        if (raw.Length > ShownBytes)
            return Encoding.UTF8.GetString(raw[..ShownBytes]).TrimStart('"');
        return element.ValueKind == JsonValueKind.String ? element.GetString()! : Encoding.UTF8.GetString(raw);
    }

    /// <summary>The text, number or truth value at a path like <c>parts[3].length </c> below this one, as it stands in the
    /// document; null where there is none.</summary>
    public string? ScalarAt(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var at = Element;
        foreach (var step in path.Split('.', '['))
        {
            var isIndex = step.EndsWith(']');
            if (isIndex && at.ValueKind == JsonValueKind.Array)
                at = at[int.Parse(step[..^1], CultureInfo.InvariantCulture)];
            else if (isIndex || at.ValueKind != JsonValueKind.Object || !at.TryGetProperty(step, out at))
                return null;
        }

        return at.ValueKind is JsonValueKind.Object or JsonValueKind.Array or JsonValueKind.Null ? null : Show(at);
    }

    private IEnumerable<DocumentValue> Indexed()
    {
        var (path, faults) = (Path, Faults);
        return Element
            .EnumerateArray()
            .Select(
                (item, index) => new DocumentValue(item, string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]"), faults)
            );
    }
}
