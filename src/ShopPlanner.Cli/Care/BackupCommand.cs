using System.CommandLine;
using ShopPlanner.Services;

namespace ShopPlanner.Cli.Care;

/// <summary><c>backup [--data DIR] [--to FILE]</c>: makes a verified backup, also while the program runs.</summary>
internal static class BackupCommand
{
    private static readonly Option<string?> Data = CareOptions.Data();

    private static readonly Option<string?> To = new("--to")
    {
        Description = "Also copies the backup to this file, for example on another disk.",
        HelpName = "FILE",
    };

    public static Command Create()
    {
        var command = new Command(
            "backup",
            "Makes a backup in the data folder's 'backups', also while the program runs. It is opened again, checked and counted "
                + "before it has its name. Exit status 0: done; 2: no backup could be made."
        )
        {
            Data,
            To,
        };
        command.SetAction(
            (parsed, _) => CareOptions.RunAsync(parsed.GetValue(Data), care => RunAsync(care, parsed.GetValue(To)))
        );
        return command;
    }

    private static async Task<int> RunAsync(ShopCare care, string? to)
    {
        var made = await care.BackUpAsync();
        if (to is { Length: > 0 })
            ShopCare.Bring(made, to);
        Console.Out.WriteLine($"Backup made and checked: {made}");
        if (to is { Length: > 0 })
            Console.Out.WriteLine($"Copied to {Path.GetFullPath(to)}");
        return ExitStatus.Done;
    }
}
