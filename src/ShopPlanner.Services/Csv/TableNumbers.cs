using System.Text.RegularExpressions;

namespace ShopPlanner.Services.Csv;

/// <summary>Reads numbers of a table whose decimal mark may be a comma. Whether it is, the whole table tells: a wrong guess
/// would ruin a sheet.</summary>
internal sealed partial class TableNumbers
{
    private readonly bool isAsTyped;
    private readonly bool commaIsDecimal;

    private TableNumbers(bool isAsTyped, bool commaIsDecimal) =>
        (this.isAsTyped, this.commaIsDecimal) = (isAsTyped, commaIsDecimal);

    /// <summary>Leaves every number as it is: what this program wrote reads back the same.</summary>
    public static TableNumbers AsTyped { get; } = new(isAsTyped: true, commaIsDecimal: false);

    /// <summary>Whether a comma in a number is its decimal mark.</summary>
    public bool CommaIsDecimal => commaIsDecimal;

    /// <summary>Returns how to read the numbers of a table.</summary>
    /// <param name="separator">What stands between its cells: beside semicolons the comma is the decimal mark, since
    /// spreadsheets write semicolons where the comma is taken (common practice).</param>
    /// <param name="numbers">Its cells that should hold numbers.</param>
    /// <param name="commaIsDecimal">What a person says; null to find it out.</param>
    public static TableNumbers Of(char separator, IReadOnlyList<string> numbers, bool? commaIsDecimal = null)
    {
        if (commaIsDecimal is { } said)
            return new(isAsTyped: false, said);
        // Thousands come in threes: a comma before one or two digits, or before four, is a decimal mark.
        var hasDecimal = numbers.Any(text => Decimal().IsMatch(text));
        var hasThousands = numbers.Any(text => Thousands().IsMatch(text));
        return new(isAsTyped: false, !hasThousands && (separator == ';' || hasDecimal));
    }

    /// <summary>Returns the number with a period for its decimal mark; as it is where that is not certain.</summary>
    public string Plain(string text) =>
        commaIsDecimal && text.Count(c => c == ',') == 1 && !text.Contains('.') && Comma().IsMatch(text)
            ? text.Replace(',', '.')
            : text;

    /// <summary>Returns a whole number without the <c>.0</c> that spreadsheets write.</summary>
    public string Whole(string text) =>
        !isAsTyped && WithZeros().Match(Plain(text)) is { Success: true } whole ? whole.Groups["number"].Value : text;

    [GeneratedRegex(@"\d,\d")]
    private static partial Regex Comma();

    [GeneratedRegex(@"\d,(?:\d{1,2}|\d{4,})(?!\d)")]
    private static partial Regex Decimal();

    [GeneratedRegex(@"\d,\d{3}(?:\.|,\d{3})")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"^(?<number>\d+)\.0*$")]
    private static partial Regex WithZeros();
}
