using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Materials;

/// <summary>
/// A material's name as words and sizes in no order: <c>1x12 pine</c>, <c>pine 1 x 12</c> and <c>Pine 1×12</c> are the same.
/// </summary>
internal sealed partial class MaterialWords
{
    // Above this a bare number is millimetres: no board or sheet is so many inches thick.
    private const int MostInches = 4;

    // How people say what the list names otherwise (common practice).
    private static readonly Dictionary<string, string> Synonyms = new()
    {
        ["ply"] = "plywood",
        ["chipboard"] = "particleboard",
        ["spf"] = "whitewood",
        ["spruce"] = "whitewood",
        ["doug"] = "douglas",
    };

    // What tells no material from another.
    private static readonly HashSet<string> Idle =
    [
        "in",
        "inch",
        "inches",
        "board",
        "boards",
        "lumber",
        "sheet",
        "sheets",
        "wood",
        "of",
        "a",
        "the",
        "nominal",
    ];

    private readonly HashSet<string> words;

    private MaterialWords(HashSet<string> words) => this.words = words;

    /// <summary>Reads a name.</summary>
    public static MaterialWords Of(string text)
    {
        var plain = Joints().Replace(TextRules.Key(text).ToLowerInvariant(), " ");
        plain = Section().Replace(Compounds(plain), " $1x$2 ");
        var words = new HashSet<string>();
        foreach (Match match in Word().Matches(plain))
            if (Read(match) is { } word)
                words.Add(word);
        return new MaterialWords(words);
    }

    /// <summary>Whether there is nothing in it that tells one material from another.</summary>
    public bool IsIdle => words.Count == 0;

    /// <summary>Whether everything that was typed is in this name.</summary>
    public bool Have(MaterialWords typed) => typed.words.Count > 0 && typed.words.All(Has);

    /// <summary>Whether this name and what was typed say the same.</summary>
    public bool Equal(MaterialWords typed) => words.Count == typed.words.Count && Have(typed);

    // The first letters of a word will do, from three on.
    private bool Has(string word) =>
        words.Contains(word)
        || (word.Length >= 3 && char.IsLetter(word[0]) && words.Any(one => one.StartsWith(word, StringComparison.Ordinal)));

    private static string Compounds(string text) =>
        text.Replace("particle board", "particleboard", StringComparison.Ordinal)
            .Replace("white wood", "whitewood", StringComparison.Ordinal)
            .Replace("ply wood", "plywood", StringComparison.Ordinal);

    private static string? Read(Match match)
    {
        var text = match.Value;
        if (match.Groups["section"].Success)
            return text;
        if (match.Groups["size"] is { Success: true } size)
            return Size(size.Value, match.Groups["unit"].Value);
        text = Synonyms.GetValueOrDefault(text, text);
        return Idle.Contains(text) ? null : text;
    }

    // Sizes are compared as lengths: 3/4, .75 and 3/4 in are one.
    private static string Size(string number, string unit)
    {
        var isBareMillimetres =
            unit.Length == 0
            && decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var bare)
            && bare > MostInches;
        var read = LengthText.ParsePositive(number, unit == "mm" || isBareMillimetres ? LengthUnit.Millimetre : LengthUnit.Inch);
        return read.Ok ? read.Value.Ticks.ToString(CultureInfo.InvariantCulture) : number;
    }

    // 3/4-ply, 3/4" and douglas-fir: what joins words is a blank.
    [GeneratedRegex("""(?:\s*-\s*(?=[a-z])|["”″(),])""")]
    private static partial Regex Joints();

    // Thickness by width; a third number is the length it is sold in.
    [GeneratedRegex(@"(?<![\d/.])(\d+(?:/\d+)?)\s*(?:x|by)\s*(\d+)(?:\s*(?:x|by)\s*\d+\S*)?(?![\d/.])")]
    private static partial Regex Section();

    [GeneratedRegex(
        @"(?<section>\d+(?:/\d+)?x\d+)|(?<size>(?:\d+ )?\d+/\d+|\d*\.\d+|\d+)\s*(?<unit>mm|in(?:ch(?:es)?)?\b)?|[\p{L}\d]+"
    )]
    private static partial Regex Word();
}
