using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Csv;

/// <summary>Sizes in cells.</summary>
internal static partial class TableSizes
{
    // No store sells a board of 25 ft: a figure above 300 is in millimeters.
    private const decimal MostInches = 300;

    /// <summary>Returns a size as it goes out: a fraction alone gets a nought before it, or a spreadsheet would read 3/4 as a day
    /// of March.</summary>
    public static string Spread(string size) => Fraction().IsMatch(size) ? "0 " + size : size;

    /// <summary>Returns a size as it was typed, without that nought.</summary>
    public static string Typed(string size) =>
        Spreadable().Match(size) is { Success: true } spread ? spread.Groups["size"].Value : size;

    /// <summary>Returns the unit that sizes without one are in, as far as they tell: fractions are inches, figures beyond any
    /// board's length are millimeters; else the usual one. Only a guess: it is shown before anything is written.</summary>
    /// <param name="sizes">Those that name no unit, with a period for the decimal mark.</param>
    /// <param name="usual">Of the project, the store or the shop.</param>
    public static LengthUnit Unit(IReadOnlyCollection<string> sizes, LengthUnit usual) =>
        sizes.Any(size => InFractions().IsMatch(size)) ? LengthUnit.Inch
        : sizes.Any(size => Figure(size) > MostInches) ? LengthUnit.Millimetre
        : usual;

    private static decimal? Figure(string size) =>
        decimal.TryParse(
            size,
            System.Globalization.NumberStyles.AllowDecimalPoint,
            System.Globalization.CultureInfo.InvariantCulture,
            out var figure
        )
            ? figure
            : null;

    [GeneratedRegex(@"^\d+/\d+$")]
    private static partial Regex Fraction();

    [GeneratedRegex(@"^0 (?<size>\d+/\d+)$")]
    private static partial Regex Spreadable();

    [GeneratedRegex(@"^\s*(?:\d+[\s-]+)?\d+/\d+\s*$|[¼½¾⅛⅜⅝⅞]\s*$")]
    private static partial Regex InFractions();
}
