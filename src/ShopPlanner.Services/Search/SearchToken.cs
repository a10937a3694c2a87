using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Search;

/// <summary>One thing that must be found: a word, a size, or a pair of sizes.</summary>
internal sealed partial record SearchToken
{
    // Longer than this nobody means feet by a bare number.
    private const int MostFeet = 40;

    private SearchToken(string text) => (Text, Material) = (text, MaterialWords.Of(text));

    /// <summary>As typed, folded; a pair without blanks.</summary>
    public string Text { get; }

    /// <summary>What it says of a material.</summary>
    public MaterialWords Material { get; }

    /// <summary>The lengths that a size may mean.</summary>
    public IReadOnlyList<Length> Lengths { get; private init; } = [];

    /// <summary>The sides that a pair may mean.</summary>
    public IReadOnlyList<(Length A, Length B)> Pairs { get; private init; } = [];

    /// <summary>The letters of a mark with a number, such as <c>C</c> of <c>C1</c>; empty elsewhere.</summary>
    public string MarkLetters { get; private init; } = "";

    /// <summary>The number of a mark with one; zero elsewhere.</summary>
    public int MarkNumber { get; private init; }

    public static SearchToken Word(string text)
    {
        var mark = Mark().Match(text);
        return mark.Success
            ? new(text)
            {
                MarkLetters = mark.Groups["letters"].Value,
                MarkNumber = int.Parse(mark.Groups["number"].Value, System.Globalization.CultureInfo.InvariantCulture),
            }
            : new(text);
    }

    public static SearchToken Size(string number, string unit) => new(number + unit) { Lengths = [.. Read(number, unit)] };

    public static SearchToken Pair(string first, string firstUnit, string second, string secondUnit)
    {
        var unit = secondUnit.Length > 0 ? secondUnit : firstUnit;
        var (a, b) = (Read(first, firstUnit.Length > 0 ? firstUnit : unit), Read(second, unit));
        return new(first + "x" + second) { Pairs = [.. a.Zip(b)] };
    }

    // A bare number is looked for in every unit, in the same order.
    private static IEnumerable<Length> Read(string number, string unit)
    {
        string[] units = unit.Length > 0 ? [unit] : ["in", "mm", "ft"];
        foreach (var one in units)
            if (LengthText.ParsePositive($"{number} {one}", LengthUnit.Inch) is { Ok: true } read)
                if (unit.Length > 0 || one != "ft" || read.Value <= Length.FromFeet(MostFeet))
                    yield return read.Value;
    }

    [GeneratedRegex(@"^(?<letters>[a-z]{1,3})(?<number>\d{1,4})$")]
    private static partial Regex Mark();
}
