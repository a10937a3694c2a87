using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Documents;

/// <summary>Words of documents and what they stand for.</summary>
public static class DocumentWords
{
    /// <summary>The units, in every format.</summary>
    public static IReadOnlyDictionary<string, LengthUnit> Units { get; } =
        new Dictionary<string, LengthUnit> { ["in"] = LengthUnit.Inch, ["mm"] = LengthUnit.Millimetre };

    /// <summary>Returns the word for a value.</summary>
    /// <typeparam name="T">Of the values.</typeparam>
    /// <param name="words">Each with its value.</param>
    /// <param name="value">One of them.</param>
    public static string Of<T>(IReadOnlyDictionary<string, T> words, T value) =>
        words.First(pair => EqualityComparer<T>.Default.Equals(pair.Value, value)).Key;
}
