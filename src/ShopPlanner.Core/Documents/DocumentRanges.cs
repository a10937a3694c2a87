using System.Globalization;
using System.Text;

namespace ShopPlanner.Core.Documents;

/// <summary>What a member of any document may be by itself. Every method returns what is wrong with a value, as the message
/// of a
/// <see cref="Measures.Fault"/>, or null.</summary>
public static class DocumentRanges
{
    /// <summary>The most bytes of an id or a name: a line.</summary>
    public const int MostTextBytes = 4000;

    /// <summary>The fault of a text that is no line.</summary>
    public const string TooLongText = "is too long: write one line";

    /// <summary>The fault of a size or a time that is zero or less.</summary>
    public const string Nothing = "must be more than zero";

    /// <summary>The fault of a name without a letter.</summary>
    public const string EmptyName = "is empty: write a short name";

    /// <summary>A whole number within limits.</summary>
    /// <param name="count">The number.</param>
    /// <param name="least">The smallest allowed.</param>
    /// <param name="most">The largest allowed.</param>
    public static string? Count(decimal count, int least, int most) =>
        count < least ? $"is too few: {least} or more"
        : count > most ? string.Create(CultureInfo.InvariantCulture, $"is too many: at most {most:N0}")
        : null;

    /// <summary>A time in seconds.</summary>
    /// <param name="seconds">The number.</param>
    /// <param name="most">The longest allowed.</param>
    /// <param name="orNone">Whether zero is allowed.</param>
    public static string? Seconds(double seconds, double most, bool orNone = false) =>
        !(seconds > 0 || (seconds == 0 && orNone)) ? Nothing
        : seconds > most ? string.Create(CultureInfo.InvariantCulture, $"is too long: at most {most:N0} seconds")
        : null;

    /// <summary>The length of a list.</summary>
    /// <param name="count">How many are in it.</param>
    /// <param name="most">The most allowed.</param>
    public static string? Entries(int count, int most) =>
        count > most ? string.Create(CultureInfo.InvariantCulture, $"entries are too many: at most {most:N0}") : null;

    /// <summary>A text, perhaps empty.</summary>
    public static string? Text(string text) => Encoding.UTF8.GetByteCount(text) > MostTextBytes ? TooLongText : null;

    /// <summary>A text that names something.</summary>
    public static string? Name(string text) => Text(text) ?? (string.IsNullOrWhiteSpace(text) ? EmptyName : null);
}
