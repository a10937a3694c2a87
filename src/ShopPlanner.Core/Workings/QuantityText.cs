using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>Reads quantities with their units as a builder writes them: <c>75 lb</c>, <c>12 1/2 sq ft</c>, <c>25 lb/ft</c>,
/// <c>21 celsius</c>. Without a unit the system's own is meant.</summary>
internal static partial class QuantityText
{
    /// <summary>The longest text that is looked at.</summary>
    public const int MaxCharacters = 40;

    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["lbs"] = "lb",
        ["pound"] = "lb",
        ["pounds"] = "lb",
        ["kgs"] = "kg",
        ["kilogram"] = "kg",
        ["kilograms"] = "kg",
        ["foot"] = "ft",
        ["feet"] = "ft",
        ["meter"] = "m",
        ["meters"] = "m",
        ["gallon"] = "gal",
        ["gallons"] = "gal",
        ["liter"] = "l",
        ["liters"] = "l",
        ["celsius"] = "c",
        ["fahrenheit"] = "f",
        ["newton"] = "n",
        ["newtons"] = "n",
        ["sqft"] = "ft2",
        ["sqm"] = "m2",
        ["psf"] = "lb/ft2",
        ["plf"] = "lb/ft",
    };

    /// <summary>The value in the metric unit of its kind; null where the text is not understood.</summary>
    public static double? Read(string text, QuantityKind kind, LengthUnit system) => Parse(text, kind, system)?.Value;

    /// <summary>The value in the metric unit of its kind, with the system of the unit that is written or meant; null where the
    /// text is not understood.</summary>
    public static (double Value, LengthUnit System)? Parse(string text, QuantityKind kind, LengthUnit system)
    {
        var match = Amount().Match(text.Length <= MaxCharacters ? Plain(text) : "");
        if (!match.Success || !TryNumber(match.Groups["number"].Value, out var number))
            return null;
        var unit = Same(match.Groups["unit"].Value);
        if (kind == QuantityKind.Force && unit == "lb")
            unit = "lbf";
        LengthUnit? written =
            unit.Length == 0 ? system
            : unit == Same(kind.Metric) ? LengthUnit.Millimetre
            : unit == Same(kind.Customary) ? LengthUnit.Inch
            : null;
        return written is { } own ? (kind.ToMetric(number, own), own) : null;
    }

    /// <summary>A decimal number, <c>12.5</c>, or a fraction, <c>12 1/2</c>; finite.</summary>
    public static bool TryNumber(string text, out double number)
    {
        number = 0;
        if (text.Length > MaxCharacters)
            return false;
        var match = Fraction().Match(Plain(text));
        if (!match.Success)
            return double.TryParse(
                    text,
                    NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
                    CultureInfo.InvariantCulture,
                    out number
                ) && double.IsFinite(number);
        number = Part(match, "whole") + (Part(match, "over") / Part(match, "under"));
        return double.IsFinite(number);
    }

    /// <summary>What would be right.</summary>
    public static string Wanted(QuantityKind kind) =>
        kind.Metric == kind.Customary
            ? "write a number" + (kind.Metric.Length > 0 ? " of " + kind.Metric : "")
            : $"write a number of {kind.Customary} or {kind.Metric}";

    /// <summary>A limit in the unit of a system, rounded to the side on which it is taken.</summary>
    /// <param name="metric">In the metric unit of its kind.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="system">Of who reads it.</param>
    /// <param name="isLeast">True for the least value taken, false for the greatest.</param>
    public static string Limit(double metric, QuantityKind kind, LengthUnit system, bool isLeast)
    {
        // What the units' factors leave behind must not lift a round number to the next one.
        const double noise = 1e-9;
        var value = kind.FromMetric(metric, system);
        var step = Math.Abs(value) switch
        {
            >= 100 => 1,
            >= 10 => 10,
            _ => 100,
        };
        var steps = isLeast ? Math.Ceiling((value * step) - noise) : Math.Floor((value * step) + noise);
        var number = (steps / step).ToString("0.##", CultureInfo.InvariantCulture);
        return $"{number} {kind.Name(system)}".TrimEnd();
    }

    private static double Part(Match match, string group) =>
        match.Groups[group] is { Length: > 0 } digits ? double.Parse(digits.ValueSpan, CultureInfo.InvariantCulture) : 0;

    private static string Plain(string text) =>
        FractionGlyphs
            .Spell(text.Replace("²", "2", StringComparison.Ordinal).Replace("³", "3", StringComparison.Ordinal))
            .Replace('−', '-')
            .Trim();

    // Each side of a stroke word by word: "lb per sq. ft." is lb/ft2.
    private static string Same(string unit)
    {
        var plain = unit.ToLowerInvariant()
            .Replace("²", "2", StringComparison.Ordinal)
            .Replace("³", "3", StringComparison.Ordinal)
            .Replace("^", "", StringComparison.Ordinal)
            .Replace("°", " ", StringComparison.Ordinal)
            .Replace(".", " ", StringComparison.Ordinal);
        return string.Join('/', Per().Split(plain).Select(Side));
    }

    private static string Side(string words)
    {
        var parts = words
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Where(word => word is not ("degree" or "degrees" or "deg"))
            .ToList();
        if (parts.Count == 2 && parts[0] is "sq" or "square")
            return Word(parts[1]) + "2";
        return string.Join(' ', parts.Select(Word));
    }

    private static string Word(string word) => Words.GetValueOrDefault(UnitSpelling.American(word), word);

    [GeneratedRegex(
        @"^(?<number>[-+]?([0-9]+\s*[-\s]\s*[0-9]+\s*/\s*[0-9]+|[0-9]+\s*/\s*[0-9]+|[0-9]+(\.[0-9]*)?|\.[0-9]+))"
            + @"\s*(?<unit>\D.*)?$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant
    )]
    private static partial Regex Amount();

    [GeneratedRegex(
        @"^\+?((?<whole>[0-9]{1,12})(\s+|\s*-\s*))?(?<over>[0-9]{1,6})\s*/\s*(?<under>[0-9]{1,6})$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant
    )]
    private static partial Regex Fraction();

    [GeneratedRegex(@"\s*/\s*|\s+per\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Per();
}
