using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>How records were stored before there were documents: members under the names that the code had then, lengths in
/// ticks, amounts as counts. Those names stay as they are, whatever the code calls things now.</summary>
internal static class FirstRecords
{
    private static readonly JsonSerializerOptions Options = new()
    {
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    /// <summary>Reads one.</summary>
    /// <exception cref="JsonException">It is damaged.</exception>
    public static T Read<T>(string text) =>
        JsonSerializer.Deserialize<T>(text, Options) ?? throw new JsonException("it is empty");

    /// <summary>A length from its ticks.</summary>
    public static Length Size(long ticks) => Length.FromTicks(ticks);

    /// <summary>A length from its ticks, or none.</summary>
    public static Length? Size(long? ticks) => ticks is { } given ? Length.FromTicks(given) : null;

    /// <summary>The value that a word of that time stands for.</summary>
    /// <exception cref="JsonException">It is none of them.</exception>
    public static T Word<T>(string word, params ReadOnlySpan<(string Word, T Value)> words)
    {
        foreach (var (known, value) in words)
            if (known == word)
                return value;
        throw new JsonException($"“{word}” is no word of these documents");
    }

    /// <summary>The unit that a word of that time stands for.</summary>
    public static LengthUnit Unit(string word) => Word(word, ("Inch", LengthUnit.Inch), ("Millimetre", LengthUnit.Millimetre));
}
