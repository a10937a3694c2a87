using System.Globalization;

namespace ShopPlanner.Core.Measures;

/// <summary>Reads an amount of money: digits with at most four decimals after a full stop, e.g. <c>6.48</c>.</summary>
public static class MoneyText
{
    /// <summary>The largest amount read: a million, beyond any price of a board.</summary>
    public static readonly Money Largest = Money.From(1_000_000);

    /// <summary>Reads an amount of zero or more.</summary>
    public static Parsed<Money> Parse(string? text)
    {
        var plain = (text ?? "").Trim().TrimStart('$', '€', '£', ' ');
        if (plain.Length == 0)
            return Fault.Of("", text, "is empty: write a price like 6.48");
        if (plain.Length > 20)
            return Fault.Of("", text, "is too long to be a price");
        if (plain.Contains(','))
            return Fault.Of("", text, "has a comma: write the decimal point as a period, 6.48");
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
