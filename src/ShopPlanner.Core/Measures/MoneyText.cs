using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopPlanner.Core.Measures;

/// <summary>Reads an amount of money: digits with at most four decimals after a period, e.g. <c>6.48</c>.</summary>
public static partial class MoneyText
{
    /// <summary>The largest amount read: a million, beyond any price of a board.</summary>
    public static readonly Money Largest = Money.From(1_000_000);

    // A comma is never guessed at: what may be meant is said.
    private static string AdviceOn(string text)
    {
        var (before, after) = (text[..text.LastIndexOf(',')], text[(text.LastIndexOf(',') + 1)..]);
        var plain = before.Replace(",", "", StringComparison.Ordinal);
        if (Thousands().IsMatch(text))
            return after.Contains('.')
                ? $"has a comma: write {plain}{after}"
                : $"has a comma: write {plain}{after}, or {before}.{after} if the comma is a decimal point";
        return DecimalComma().IsMatch(text)
            ? $"has a comma: write the decimal point as a period, {plain.Replace(".", "", StringComparison.Ordinal)}.{after}"
            : "has a comma: write a price like 6.48 or 1038.98";
    }

    [GeneratedRegex(@"^\d{1,3}(,\d{3})+(\.\d*)?$")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"^\d+,\d+$|^\d{1,3}(\.\d{3})+,\d+$")]
    private static partial Regex DecimalComma();

    /// <summary>Reads an amount of zero or more.</summary>
    public static Parsed<Money> Parse(string? text)
    {
        var plain = (text ?? "").Trim().TrimStart('$', '€', '£', ' ');
        if (plain.Length == 0)
            return Fault.Of("", text, "is empty: write a price like 6.48");
        if (plain.Length > 20)
            return Fault.Of("", text, "is too long to be a price");
        if (plain.Contains(','))
            return Fault.Of("", text, AdviceOn(plain));
        if (
            !decimal.TryParse(
                plain,
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out var amount
            )
        )
            return Fault.Of("", text, "is not a price: write it like 6.48");
        if (amount < 0)
            return Fault.Of("", text, "is less than zero: a price is zero or more");
        if (amount > Largest.Amount)
            return Fault.Of("", text, "is more than a million");
        return amount == Money.From(amount).Amount
            ? Money.From(amount)
            : Fault.Of("", text, "has more than four decimals: write a price like 6.48");
    }
}
