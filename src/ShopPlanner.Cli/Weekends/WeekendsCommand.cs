using System.CommandLine;

namespace ShopPlanner.Cli.Weekends;

/// <summary><c>weekends REQUEST.json [-o SCHEDULE.json] [--seconds N]</c>: schedules the work of several weekends.</summary>
internal static class WeekendsCommand
{
    private static readonly Argument<string> Request = new("REQUEST.json")
    {
        Description =
            "The schedule request: the tasks with their labor and holds, the windows, people, clamps and space there are. Use - "
            + "for standard input.",
    };

    private static readonly Option<string?> Output = new("-o", "--output")
    {
        Description = "Where to write the schedule. Default: standard output.",
        HelpName = "SCHEDULE.json",
    };

    private static readonly Option<double?> Seconds = SecondsOption.Create("schedule");

    public static Command Create()
    {
        var command = new Command(
            "weekends",
            "Schedules tasks into working windows, so that the last one is finished as early as possible. Exit status 0: "
                + "a schedule was written; 2: the request has errors, one per line, and nothing was written; 3: there is "
                + "no schedule, and what was written says why."
        )
        {
            Request,
            Output,
            Seconds,
        };
        command.SetAction(parsed =>
            WeekendsRun.Run(parsed.GetRequiredValue(Request), parsed.GetValue(Output), parsed.GetValue(Seconds))
        );
        return command;
    }
}
