using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>What is read aloud at the bench: no signs, and fractions in words, which a voice would else take for dates.</summary>
internal static partial class HeardWords
{
    private static readonly Dictionary<int, (string One, string More)> Parts = new()
    {
        [2] = ("half", "halves"),
        [4] = ("quarter", "quarters"),
        [8] = ("eighth", "eighths"),
        [16] = ("sixteenth", "sixteenths"),
        [32] = ("thirty-second", "thirty-seconds"),
        [64] = ("sixty-fourth", "sixty-fourths"),
    };

    /// <summary>Returns what is to do at a board or sheet; null stands for the end of its cuts.</summary>
    public static string Of(BenchView view, BenchStock stock, CutStep? step)
    {
        var board = $"{BenchWords.Noun(view, stock)} {stock.Number}. ";
        if (step is null)
            return board + "All cuts done. Measure the leftovers.";
        var unit = view.Plan.UnitOfLayout(stock.Layout);
        var setting = step.IsKerfOnly ? "" : $"{CutSentences.Setting(step, unit)}, {CutSentences.From(step)}. ";
        var caution = step.Caution.Length > 0 ? $"Safety: {step.Caution}. " : "";
        return Of(
            $"{board}Cut {step.Cut.N} of {stock.Cuts.Length}. {CutSentences.Doing(step)}. {setting}"
                + $"{caution}{Sentences.Of(step.Gives)}"
        );
    }

    /// <summary>Returns a text as it is read aloud.</summary>
    public static string Of(string text) =>
        Fraction()
            .Replace(Glyphs(text), Spoken)
            .Replace("″", " inches", StringComparison.Ordinal)
            .Replace(" mm", " millimeters", StringComparison.Ordinal)
            .Replace("×", "by", StringComparison.Ordinal);

    // 3⁄4 may be one sign: taken apart, it is read as any other.
    private static string Glyphs(string text) =>
        string.Concat(
            text.Select(
                (sign, i) =>
                    CharUnicodeInfo.GetNumericValue(sign) is var value && !char.IsAsciiDigit(sign) && value is > 0 and < 1
                        ? $"{(i > 0 && char.IsAsciiDigit(text[i - 1]) ? " " : "")}{value * 8:0}/8"
                        : sign.ToString()
            )
        );

    private static string Spoken(Match match)
    {
        var (top, bottom) = (Number(match, "top"), Number(match, "bottom"));
        for (; top % 2 == 0 && bottom % 2 == 0; (top, bottom) = (top / 2, bottom / 2)) { }
        if (!Parts.TryGetValue(bottom, out var part))
            return match.Value;
        var words = $"{top} {(top == 1 ? part.One : part.More)}";
        return match.Groups["whole"].Success ? $"{match.Groups["whole"].Value} and {words}" : words;
    }

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?:(?<whole>\d{1,4}) )?(?<top>\d{1,2})/(?<bottom>\d{1,2})")]
    private static partial Regex Fraction();
}
