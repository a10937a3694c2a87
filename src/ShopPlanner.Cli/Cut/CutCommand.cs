using System.CommandLine;

namespace ShopPlanner.Cli.Cut;

/// <summary><c>cut REQUEST.json [-o PLAN.json] [--seconds N]</c>: plans a cut request.</summary>
internal static class CutCommand
{
    private static readonly Argument<string> Request = new("REQUEST.json")
    {
        Description =
            "The cut request: the parts to cut and the stock to cut them from, its bad places and untrimmed edges included. "
            + "Use - for standard input.",
    };

    private static readonly Option<string?> Output = new("-o", "--output")
    {
        Description = "Where to write the cut plan. Default: standard output.",
        HelpName = "PLAN.json",
    };

    private static readonly Option<double?> Seconds = SecondsOption.Create("plan");

    public static Command Create()
    {
        var command = new Command(
            "cut",
            "Plans what to buy and how to cut it. Exit status 0: the plan has every part; "
                + "2: the request has errors, one per line, and nothing was written; 3: a plan was written, but "
                + "it does not have every part."
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
}
