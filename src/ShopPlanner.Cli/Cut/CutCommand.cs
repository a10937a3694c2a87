using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace ShopPlanner.Cli.Cut;

/// <summary><c>cut REQUEST.json [-o PLAN.json] [--seconds N]</c>: plans a cut request.</summary>
internal static class CutCommand
{
    private const double MostSeconds = 86_400;

    private static readonly Argument<string> Request = new("REQUEST.json")
    {
        Description = "The cut request: parts wanted and stock to be had. - reads standard input.",
    };

    private static readonly Option<string?> Output = new("-o", "--output")
    {
        Description = "Where to write the cut plan; standard output if absent.",
        HelpName = "PLAN.json",
    };

    private static readonly Option<double?> Seconds = new("--seconds")
    {
        Description =
            "How long to look for a better plan, instead of the request's limits.seconds. Ctrl-C stops earlier with "
            + "the best so far.",
        HelpName = "N",
        CustomParser = ReadSeconds,
    };

    public static Command Create()
    {
        var command = new Command(
            "cut",
            "Says what to buy and how to cut it. Exit status 0: every part has its place; "
                + "2: the request is wrong, one line for each fault, nothing written; 3: a plan was written, but "
                + "parts remain unplaced."
        )
        {
            Request,
            Output,
            Seconds,
        };
        command.SetAction(parsed =>
            CutRun.Run(parsed.GetRequiredValue(Request), parsed.GetValue(Output), parsed.GetValue(Seconds))
        );
        return command;
    }

    private static double? ReadSeconds(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (
            double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds)
            && seconds is > 0 and <= MostSeconds
        )
            return seconds;
        result.AddError($"--seconds: '{text}' is not a number of seconds of more than 0 and at most 86,400.");
        return null;
    }
}
