using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Times;

/// <summary>Reads how long work took, as people write it: <c>45</c>, <c>1:30</c>, <c>1 h 30 min</c>, <c>1.5 h</c>.</summary>
public static partial class WorkTimeText
{
    private const int Hour = 60;
    private const int Most = 100 * Hour;

    /// <summary>Returns the minutes of a text, or what is wrong with it.</summary>
    /// <param name="text">A number alone is minutes; at least 1, at most 100 hours.</param>
    public static Parsed<int> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Minutes(text.Trim()) is not { } minutes)
            return Fault.Of("", text, "is not a time: write minutes, like 45, or hours and minutes, like 1:30");
        return minutes is >= 1 and <= Most
            ? (int)Math.Round(minutes, MidpointRounding.AwayFromZero)
            : Fault.Of("", text, "is not from 1 minute to 100 hours: write the time at work, without the wait");
    }

    private static decimal? Minutes(string text) =>
        Clock().Match(text) is { Success: true } clock ? (Number(clock, 1) * Hour) + Number(clock, 2)
        : Plain().Match(text) is { Success: true } plain ? Number(plain, 1)
        : Words().Match(text) is { Success: true } words
            ? (Number(words, 1) * Hour) + (words.Groups[2].Success ? Number(words, 2) : 0)
        : null;

    private static decimal Number(Match match, int group) =>
        decimal.Parse(match.Groups[group].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex("^([0-9]{1,3}):([0-5][0-9])(?: ?h)?$")]
    private static partial Regex Clock();

    [GeneratedRegex("^([0-9]{1,5}) ?(?:m|min|minutes?)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Plain();

    [GeneratedRegex(
        "^([0-9]{1,3}(?:[.][0-9]{1,2})?) ?(?:h|hr|hrs|hours?)(?: ?([0-5]?[0-9]) ?(?:m|min|minutes?)?)?$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Words();
}
