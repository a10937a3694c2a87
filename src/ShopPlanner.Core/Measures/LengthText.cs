using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopPlanner.Core.Measures;

/// <summary>
/// Reads a length as a builder writes it: <c>34 1/2</c>, <c>3/4</c>, <c>34-1/2 in</c>, <c>34½"</c>, <c>8 ft</c>,
/// <c>8' 6 1/2"</c>, <c>600 mm</c>, <c>60 cm</c>, <c>1.2 m</c>, <c>0.75</c>. Text without a suffix is in the unit given. A
/// comma is
/// refused rather than guessed at: in one place it parts thousands, in another it is the decimal point.
/// </summary>
public static partial class LengthText
{
    /// <summary>The longest text that is looked at.</summary>
    public const int MaxCharacters = 40;

    /// <summary>The longest length that is read: 100 m, beyond any stock for a home shop.</summary>
    public static readonly Length Longest = Length.FromMillimetres(100_000);

    /// <summary>Returns the longest length in words, in the units of a system: <c>3,937 in (328 ft)</c>, <c>100 m</c>.</summary>
    public static string LongestIn(LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{Math.Floor(Longest.ToInches()):#,0} in ({Math.Floor(Longest.ToInches() / 12):0} ft)"
            )
            : string.Create(CultureInfo.InvariantCulture, $"{Longest.ToMillimetres() / 1000:0} m");

    /// <summary>Returns a text with its set fractions in plain digits: <c>34½</c> becomes <c>34 1/2</c>.</summary>
    public static string Spelled(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return FractionGlyphs.Spell(text);
    }

    private const string Example = "write it like 34 1/2, 8 ft or 600 mm";

    /// <summary>Reads a length of zero or more.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="unit">The unit of a number without a suffix.</param>
    /// <returns>The length to the nearest tick (3.125 µm), or the fault with an empty field name.</returns>
    public static Parsed<Length> Parse(string? text, LengthUnit unit)
    {
        if (string.IsNullOrWhiteSpace(text))
            return Fault.Of("", text, $"is empty: {Example}");
        if (text.Length > MaxCharacters)
            return Fault.Of("", text, $"is too long to be a length: {Example}");
        var plain = Plain(text);
        if (plain.StartsWith('-'))
            return Fault.Of("", text, "is less than zero: a length is zero or more");
        if (plain.Contains(','))
            return Fault.Of("", text, "has a comma: write the decimal point as a period, 1.5");
        return Match(plain, text, unit);
    }

    /// <summary>Reads a length that must be more than zero, such as a part's.</summary>
    /// <inheritdoc cref="Parse" path="/param|/returns"/>
    public static Parsed<Length> ParsePositive(string? text, LengthUnit unit)
    {
        var parsed = Parse(text, unit);
        return parsed is { Ok: true, Value.IsPositive: false } ? Fault.Of("", text, "must be more than zero") : parsed;
    }

    private static Parsed<Length> Match(string plain, string text, LengthUnit unit)
    {
        var match = Pattern().Match(plain);
        if (!match.Success || plain.Length == 0)
            return Fault.Of("", text, $"is not a length: {Example}");
        var feet = Amount(match, "feet", "feetnum", "feetden");
        var rest = Amount(match, "whole", "num", "den");
        if (feet is null || rest is null)
            return Fault.Of("", text, "is not a length: a fraction is divided by zero");
        var perUnit = TicksPer(match.Groups["suffix"].Value, match.Groups["ft"].Success ? LengthUnit.Inch : unit);
        var ticks = (feet.Value * Length.TicksPerFoot) + (rest.Value * perUnit);
        return ticks > Longest.Ticks
            ? Fault.Of("", text, $"is more than {LongestIn(unit)}: no stock is that long")
            : Length.FromTicks((long)Math.Round(ticks, MidpointRounding.AwayFromZero));
    }

    private static decimal? Amount(Match match, string whole, string numerator, string denominator)
    {
        var amount = Number(match.Groups[whole].Value);
        if (!match.Groups[numerator].Success)
            return amount;
        var divisor = Number(match.Groups[denominator].Value);
        return divisor == 0 ? null : amount + (Number(match.Groups[numerator].Value) / divisor);
    }

    // The pattern admits ASCII digits only, at most 12 before and after the point, so a decimal always holds them.
    private static decimal Number(string digits) =>
        digits.Length == 0 ? 0 : decimal.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static decimal TicksPer(string suffix, LengthUnit unit) =>
        suffix switch
        {
            "in" or "\"" or "inch" or "inches" => Length.TicksPerInch,
            "ft" or "'" or "foot" or "feet" => Length.TicksPerFoot,
            "mm" => Length.TicksPerMillimetre,
            "cm" => Length.TicksPerMillimetre * 10,
            "m" => Length.TicksPerMillimetre * 1000,
            _ => unit == LengthUnit.Inch ? Length.TicksPerInch : Length.TicksPerMillimetre,
        };

    private static string Plain(string text)
    {
        var plain = FractionGlyphs.Spell(text).Trim().ToLowerInvariant();
        return plain
            .Replace('″', '"')
            .Replace('”', '"')
            .Replace("''", "\"", StringComparison.Ordinal)
            .Replace('′', '\'')
            .Replace('’', '\'')
            .Replace('–', '-')
            .Replace('−', '-')
            .Replace('\u00a0', ' ')
            .Replace('\u202f', ' ');
    }

    [GeneratedRegex(
        """
            ^
            (?: (?<ft>
                  (?: (?<feet>[0-9]{1,12})(?:\s+|-)(?<feetnum>[0-9]{1,6})/(?<feetden>[0-9]{1,6})
                    | (?<feet>[0-9]{1,12}(?:\.[0-9]{1,12})?) )
                  \s*(?:'|ft\.?|foot|feet)
                ) (?:\s*-?\s*(?=[0-9.])|$) )?
            (?:
              (?: (?<whole>[0-9]{1,12}) (?:\s+|\s*-\s*)(?<num>[0-9]{1,6})\s*/\s*(?<den>[0-9]{1,6})
                | (?<whole>[0-9]{1,12}(?:\.[0-9]{0,12})?|\.[0-9]{1,12})
                | (?<num>[0-9]{1,6})\s*/\s*(?<den>[0-9]{1,6}) )
              \s*(?<suffix>inches|inch|in|"|(?(ft)(?!)|(?:foot|feet|ft|'|mm|cm|m)))?\.?
            )?
            $
            """,
        RegexOptions.IgnorePatternWhitespace | RegexOptions.CultureInvariant
    )]
    private static partial Regex Pattern();
}
