using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Csv;

/// <summary>Units of length as tables name them, in a heading or in a column of their own.</summary>
internal static partial class UnitWords
{
    private const int MostCharacters = 60;

    private static readonly Dictionary<string, string> Suffixes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["in"] = "in",
        ["inch"] = "in",
        ["inches"] = "in",
        ["\""] = "in",
        ["″"] = "in",
        ["ft"] = "ft",
        ["foot"] = "ft",
        ["feet"] = "ft",
        ["mm"] = "mm",
        ["millimeter"] = "mm",
        ["millimeters"] = "mm",
        ["cm"] = "cm",
        ["centimeter"] = "cm",
        ["centimeters"] = "cm",
        ["m"] = "m",
        ["meter"] = "m",
        ["meters"] = "m",
    };

    /// <summary>Returns the suffix that lengths are read with: <c>in</c>, <c>ft</c>, <c>mm</c>, <c>cm</c> or <c>m</c>; null
    /// where the text names no unit.</summary>
    public static string? Find(string text) => Suffixes.GetValueOrDefault(UnitSpelling.American(text.Trim().TrimEnd('.')));

    /// <summary>Returns a heading's name and the unit that it names, as a suffix: <c>Length (mm)</c>, <c>Width [in]</c>,
    /// <c>Length, mm</c>, <c>Length in.</c>; the whole heading and null where it names none.</summary>
    public static (string Name, string? Unit) Split(string heading) =>
        heading.Length <= MostCharacters
        && WithUnit().Match(heading.Trim()) is { Success: true } match
        && Find(match.Groups["unit"].Value) is { } unit
            ? (match.Groups["name"].Value, unit)
            : (heading, null);

    [GeneratedRegex("""^(?<name>.+?)(?:[\s,(\[/]+(?<unit>\p{L}{1,12})\.?|[\s(\[]*(?<unit>["″]))[)\]\s]*$""")]
    private static partial Regex WithUnit();
}
