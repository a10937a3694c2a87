using System.Text.RegularExpressions;

namespace ShopPlanner.Core.Measures;

/// <summary>Names of units, which people spell in two ways.</summary>
public static partial class UnitSpelling
{
    /// <summary>Returns the word in the American spelling: <c>meters</c> and <c>liters</c>, whichever way they were
    /// written.</summary>
    public static string American(string word) => British().Replace(word, "$1er$2");

    [GeneratedRegex("^(.*(?:met|lit))re(s?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex British();
}
