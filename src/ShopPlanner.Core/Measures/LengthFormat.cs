using System.Globalization;

namespace ShopPlanner.Core.Measures;

/// <summary>A length as text, rounded, with what the rounding took or gave.</summary>
/// <param name="Text">The text, e.g. <c>34 1/2</c>.</param>
/// <param name="Remainder">Exact less shown: more than zero when the true length is longer than shown.</param>
public readonly record struct RoundedText(string Text, Length Remainder)
{
    /// <summary>The text with the remainder in words: <c>just over 3/8</c>, <c>just under 3/8</c>, or the text alone when it is
    /// exact.</summary>
    public string InWords =>
        Remainder.Ticks switch
        {
            > 0 => "just over " + Text,
            < 0 => "just under " + Text,
            _ => Text,
        };

    /// <summary>The text with a sign for the remainder where a drawing has no room for words: <c>3/8 +</c>, <c>3/8 −</c>, or the
    /// text alone when it is exact.</summary>
    public string WithSign =>
        Remainder.Ticks switch
        {
            > 0 => Text + " +",
            < 0 => Text + " −",
            _ => Text,
        };
}

/// <summary>
/// Prints lengths. Inches are fractions reduced to lowest terms; a value half-way between two marks of the rule is rounded
/// away from zero (ties: common practice differs, this is our rule). Millimetres have at most one decimal. The exact value is
/// never replaced by what is shown: sums are made of lengths, not of texts.
/// </summary>
public static class LengthFormat
{
    /// <summary>The finest fraction shown unless another is asked for: sixty-fourths of an inch.</summary>
    public const int FinestDenominator = 64;

    /// <summary>Plain characters that <see cref="LengthText"/> reads back: <c>34 1/2</c>, <c>876.3</c>.</summary>
    /// <param name="length">What to print.</param>
    /// <param name="unit">Inches as fractions or millimetres with at most one decimal.</param>
    /// <param name="denominator">2, 4, 8, 16, 32 or 64: the fraction of an inch to round to.</param>
    public static RoundedText Plain(Length length, LengthUnit unit, int denominator = FinestDenominator) =>
        Print(length, unit, denominator, (n, d) => Digits(n) + "/" + Digits(d));

    /// <summary>Set for reading: <c>34 ½</c>, <c>11 ¹⁵⁄₁₆</c>, <c>876.3</c>.</summary>
    /// <inheritdoc cref="Plain" path="/param"/>
    public static RoundedText Set(Length length, LengthUnit unit, int denominator = FinestDenominator) =>
        Print(length, unit, denominator, FractionGlyphs.Set);

    /// <summary>Set for reading, with the unit's sign: <c>34 ½″</c>, <c>876.3 mm</c>.</summary>
    /// <inheritdoc cref="Plain" path="/param"/>
    public static string WithUnit(Length length, LengthUnit unit, int denominator = FinestDenominator)
    {
        var rounded = Set(length, unit, denominator);
        return (rounded with { Text = rounded.Text + (unit == LengthUnit.Inch ? "″" : " mm") }).InWords;
    }

    /// <summary>The unit that lengths were made in: the one preferred, unless they are whole marks of a rule in the other
    /// alone.</summary>
    /// <param name="preferred">Where both are exact, or neither.</param>
    /// <param name="lengths">E.g. the sides of a sheet.</param>
    public static LengthUnit MadeIn(LengthUnit preferred, params ReadOnlySpan<Length> lengths)
    {
        var other = preferred == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
        return !AreExact(lengths, preferred) && AreExact(lengths, other) ? other : preferred;
    }

    private static bool AreExact(ReadOnlySpan<Length> lengths, LengthUnit unit)
    {
        foreach (var length in lengths)
            if (Plain(length, unit).Remainder != Length.Zero)
                return false;
        return true;
    }

    /// <summary>Text that reads back to the same length exactly: a fraction of an inch of up to 1/64, or tenths of a millimetre,
    /// where one of them is exact (in the other unit with its sign: <c>330 mm</c> for a length shown in inches), else a decimal
    /// of the unit with six places.</summary>
    public static string Exact(Length length, LengthUnit unit)
    {
        var plain = Plain(length, unit);
        if (plain.Remainder == Length.Zero)
            return plain.Text;
        var other = unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
        var foreign = Plain(length, other);
        return foreign.Remainder == Length.Zero
            ? foreign.Text + (other == LengthUnit.Inch ? " in" : " mm")
            : length.To(unit).ToString("0.######", CultureInfo.InvariantCulture);
    }

    private static RoundedText Print(Length length, LengthUnit unit, int denominator, Func<long, long, string> fraction) =>
        unit == LengthUnit.Inch ? Inches(length, denominator, fraction) : Millimetres(length);

    private static RoundedText Millimetres(Length length)
    {
        var shown = Math.Round(length.ToMillimetres(), 1, MidpointRounding.AwayFromZero);
        return new(shown.ToString("0.#", CultureInfo.InvariantCulture), length - Length.FromMillimetres(shown));
    }

    private static RoundedText Inches(Length length, int denominator, Func<long, long, string> fraction)
    {
        if (denominator is not (1 or 2 or 4 or 8 or 16 or 32 or 64))
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "a rule is divided by 2, 4, 8, 16, 32 or 64");
        var step = Length.TicksPerInch / denominator;
        var steps = (Math.Abs(length.Ticks) + (step / 2)) / step;
        var shown = Length.FromTicks(steps * step * Math.Sign(length.Ticks));
        var (whole, rest) = Math.DivRem(steps, denominator);
        return new(Sign(shown) + Join(whole, rest, denominator, fraction), length - shown);
    }

    private static string Sign(Length shown) => shown.Ticks < 0 ? "−" : "";

    private static string Join(long whole, long rest, int denominator, Func<long, long, string> fraction)
    {
        if (rest == 0)
            return Digits(whole);
        var divisor = (long)System.Numerics.BigInteger.GreatestCommonDivisor(rest, denominator);
        var text = fraction(rest / divisor, denominator / divisor);
        return whole == 0 ? text : Digits(whole) + " " + text;
    }

    private static string Digits(long number) => number.ToString(CultureInfo.InvariantCulture);
}
