using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Lengths and prices of a document.</summary>
internal static class DocumentMeasures
{
    /// <summary>A length of zero or more: a number of the unit, or text.</summary>
    public static Length? Length(this DocumentValue value, LengthUnit unit) =>
        value.Element.ValueKind switch
        {
            JsonValueKind.Undefined or JsonValueKind.Null => null,
            JsonValueKind.String => FromText(value, unit),
            JsonValueKind.Number => FromNumber(value, unit),
            _ => Refused<Length>(value, "is not a length: write a number or text like \"34 1/2\""),
        };

    /// <summary>A length of more than zero.</summary>
    public static Length? Size(this DocumentValue value, LengthUnit unit)
    {
        var length = value.Length(unit);
        return length is { IsPositive: false } ? Refused<Length>(value, DocumentRanges.Nothing) : length;
    }

    /// <summary>The price of one thing, zero or more.</summary>
    public static Money? Price(this DocumentValue value) => value.Amount(MoneyText.Largest.Amount);

    /// <summary>A sum of prices, zero or more.</summary>
    public static Money? Total(this DocumentValue value) => value.Amount(MoneyText.Largest.Amount * CutRequestRanges.MostPieces);

    private static Money? Amount(this DocumentValue value, decimal most)
    {
        if (value.Decimal("a price like 6.48") is not { } amount)
            return null;
        return CutRequestRanges.Price(amount, most) is { } message ? Refused<Money>(value, message) : Money.From(amount);
    }

    private static Length? FromText(DocumentValue value, LengthUnit unit)
    {
        if (value.Text() is not { } text)
            return null;
        var parsed = LengthText.Parse(text, unit);
        if (parsed.Ok)
            return parsed.Value;
        value.Faults.Add(parsed.Fault.At(value.Path));
        return null;
    }

    private static Length? FromNumber(DocumentValue value, LengthUnit unit)
    {
        if (value.Decimal("a length like 34.5") is not { } number)
            return null;
        if (number < 0)
            return Refused<Length>(value, CutRequestRanges.NegativeLength);
        return number > LengthText.Longest.To(unit)
            ? Refused<Length>(value, CutRequestRanges.TooLong)
            : Core.Measures.Length.From(number, unit);
    }

    private static T? Refused<T>(DocumentValue value, string message)
        where T : struct
    {
        value.Refuse(message);
        return null;
    }
}
