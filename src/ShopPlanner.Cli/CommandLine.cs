using System.CommandLine;

namespace ShopPlanner.Cli;

/// <summary>Runs the command that the arguments ask for.</summary>
internal static class CommandLine
{
    // The library's own handler would print a complaint's stack.
    private static readonly InvocationConfiguration Plain = new() { EnableDefaultExceptionHandler = false };

    /// <summary>The exit status; a wrong usage is refused with one line.</summary>
    public static int Run(RootCommand root, string[] args)
    {
        var parsed = root.Parse(args);
        try
        {
            return parsed.Errors.Count == 0 ? parsed.Invoke(Plain) : throw new Complaint(Usage(parsed));
        }
        catch (Complaint complaint)
        {
            Complaint.Print(complaint.Message);
            return ExitStatus.Refused;
        }
    }

    private static string Usage(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        var name = command is RootCommand ? "shop-planner" : "shop-planner " + command.Name;
        var wrong =
            parsed.UnmatchedTokens.Count > 0
                ? $"'{parsed.UnmatchedTokens[0]}' isn't a command or option."
                : parsed.Errors[0].Message;
        return $"{name}: {wrong} Try {name} --help";
    }
}
