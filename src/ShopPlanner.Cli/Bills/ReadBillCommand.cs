using System.CommandLine;

namespace ShopPlanner.Cli.Bills;

/// <summary><c>read-bill TEXT.txt [-o FILE]</c>: reads a written stock bill into parts.</summary>
internal static class ReadBillCommand
{
    private static readonly Argument<string> Text = new("TEXT.txt")
    {
        Description = "The bill as plain text. Use - for standard input.",
    };

    private static readonly Option<string?> Output = new("-o", "--output")
    {
        Description = "Where to write. Default: standard output.",
        HelpName = "FILE",
    };

    public static Command Create()
    {
        var command = new Command(
            "read-bill",
            "Reads a written stock bill, like 4 posts, 1-3/4 by 1-3/4 by 30 in., into parts as JSON. What isn't certain is "
                + "marked as a doubt and listed on standard error. "
                + "Exit status 0: done; 2: no part could be read, and nothing was written."
        )
        {
            Text,
            Output,
        };
        command.SetAction(parsed => ReadBillRun.Run(parsed.GetRequiredValue(Text), parsed.GetValue(Output)));
        return command;
    }
}
