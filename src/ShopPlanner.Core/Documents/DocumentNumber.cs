using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;

namespace ShopPlanner.Core.Documents;

/// <summary>Numbers of a document, read from their digits: none passes through binary floating point on its way.</summary>
public static class DocumentNumber
{
    private const int MostDigits = 100;
    private const NumberStyles Style =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>A whole number within limits.</summary>
    /// <param name="value">The value.</param>
    /// <param name="least">The smallest allowed.</param>
    /// <param name="most">The largest allowed.</param>
    public static int? Count(this DocumentValue value, int least, int most)
    {
        if (value.Decimal("a whole number") is not { } number)
            return null;
        if (number != decimal.Truncate(number))
            return Refused<int>(value, "is not a whole number");
        return DocumentRanges.Count(number, least, most) is { } message ? Refused<int>(value, message) : (int)number;
    }

    /// <summary>Seconds of more than zero (or, where a plan says how long it took, of zero) and at most <paramref
    /// name="most"/>.
    /// </summary>
    /// <param name="value">The value.</param>
    /// <param name="most">The longest allowed.</param>
    /// <param name="orNone">Whether zero is allowed.</param>
    public static double? Seconds(this DocumentValue value, double most, bool orNone = false)
    {
        if (value.Decimal("a number of seconds") is not { } seconds)
            return null;
        return DocumentRanges.Seconds((double)seconds, most, orNone) is { } message
            ? Refused<double>(value, message)
            : value.Element.GetDouble();
    }

    /// <summary>A number.</summary>
    /// <param name="value">The value.</param>
    /// <param name="wanted">What is to be written there instead of what is no number: <c>a price like 6.48</c>.</param>
    public static decimal? Decimal(this DocumentValue value, string wanted)
    {
        if (!value.Present || !value.Is(JsonValueKind.Number, "is not a number: write " + wanted))
            return null;
        var digits = JsonMarshal.GetRawUtf8Value(value.Element);
        return digits.Length <= MostDigits && decimal.TryParse(digits, Style, CultureInfo.InvariantCulture, out var number)
            ? number
            : Refused<decimal>(value, $"is too large or too small: write {wanted}");
    }

    private static T? Refused<T>(DocumentValue value, string message)
        where T : struct
    {
        value.Refuse(message);
        return null;
    }
}
