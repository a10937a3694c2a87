using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Csv;

/// <summary>Units of length as tables name them, in a heading or in a column of their own.</summary>
internal static class UnitWords
{
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
}
