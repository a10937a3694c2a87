using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace ShopPlanner.Cli;

/// <summary><c>--seconds N</c>: how long a search may last.</summary>
internal static class SecondsOption
{
    private const double MostSeconds = 86_400;

    /// <summary>Returns the option.</summary>
    /// <param name="what">What is searched for: <c>plan</c>.</param>
    public static Option<double?> Create(string what) =>
        new("--seconds")
        {
            Description =
                "How long to keep searching, instead of the request's limits.seconds. Ctrl-C stops early with the best "
                + $"{what} so far.",
            HelpName = "N",
            CustomParser = Read,
        };

    private static double? Read(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (
            double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds)
            && seconds is > 0 and <= MostSeconds
        )
            return seconds;
        result.AddError($"--seconds: '{text}' is not a number of seconds: write more than 0, at most 86,400.");
        return null;
    }
}
