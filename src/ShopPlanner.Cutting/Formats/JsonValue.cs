using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Reads one JSON value as one of the trade's measures. Numbers go through decimals, never through binary fractions.</summary>
internal static class JsonValue
{
    private const int ShownBytes = 64;

    // The largest price of as many pieces as are allowed.
    private const decimal LargestTotal = 1_000_000m * CutRequestRules.MostPieces;

    /// <summary>A length of zero or more: a number of the unit, or text.</summary>
    public static Parsed<Length> Length(JsonElement value, LengthUnit unit) => value.ValueKind switch
    {
        JsonValueKind.String when IsShort(value) => LengthText.Parse(value.GetString(), unit),
        JsonValueKind.Number => NumberAsLength(value, unit),
        _ => Wrong(value, "is not a length: write a number, or text like \"34 1/2\""),
    };

    /// <summary>An amount of money of zero or more: a number.</summary>
    public static Parsed<Money> Money(JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.Number) return Wrong(value, "is not a price: write a number like 6.48");
        if (Number(value) is not { } amount) return Wrong(value, "is more than a million");
        if (amount < 0) return Wrong(value, "is less than nothing: a price is zero or more");
        if (amount > MoneyText.Largest.Amount) return Wrong(value, "is more than a million");
        return Core.Measures.Money.From(amount);
    }

    /// <summary>A sum of prices: a number of zero or more.</summary>
    public static Parsed<Money> Total(JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.Number && Number(value) is >= 0 and <= LargestTotal and var amount)
            return Core.Measures.Money.From(amount);
        return Wrong(value, "is not a sum of money: a number of zero or more is wanted");
    }

    /// <summary>A whole number within limits.</summary>
    public static Parsed<int> Count(JsonElement value, int least, int most)
    {
        var between = string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most} is wanted");
        if (value.ValueKind != JsonValueKind.Number) return Wrong(value, "is not a count: " + between);
        if (Number(value) is not { } number || number != decimal.Truncate(number) || number < least || number > most)
            return Wrong(value, "will not do: " + between);
        return (int)number;
    }

    /// <summary>The number exactly, or null where it is outside the range of a decimal (1e400).</summary>
    public static decimal? Number(JsonElement value) =>
        decimal.TryParse(JsonMarshal.GetRawUtf8Value(value), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    /// <summary>True for a text short enough to be looked at.</summary>
    public static bool IsShort(JsonElement text) => JsonMarshal.GetRawUtf8Value(text).Length <= 1000;

    /// <summary>The value as it stands in the document, cut short: for faults.</summary>
    public static string Shown(JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.Object) return "{…}";
        if (value.ValueKind == JsonValueKind.Array) return "[…]";
        var raw = JsonMarshal.GetRawUtf8Value(value);
        if (value.ValueKind == JsonValueKind.String && raw.Length <= 1000) return value.GetString() ?? "";
        return Encoding.UTF8.GetString(raw[..Math.Min(raw.Length, ShownBytes)]);
    }

    public static Fault Wrong(JsonElement value, string message) => Fault.Of("", Shown(value), message);

    private static Parsed<Length> NumberAsLength(JsonElement value, LengthUnit unit)
    {
        var most = LengthText.Longest.To(unit);
        if (Number(value) is not { } number) return Wrong(value, "is no length: no stock is so long");
        if (number < 0) return Wrong(value, "is less than nothing: a length is zero or more");
        return number > most ? Wrong(value, "is more than 100 m: no stock is so long") : Core.Measures.Length.From(number, unit);
    }
}
