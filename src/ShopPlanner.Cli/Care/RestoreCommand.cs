using System.CommandLine;
using ShopPlanner.Services;

namespace ShopPlanner.Cli.Care;

/// <summary><c>restore BACKUP [--data DIR]</c>: puts a backup in the shop's place.</summary>
internal static class RestoreCommand
{
    private static readonly Argument<string> Backup = new("BACKUP")
    {
        Description = "The backup: a file of the data folder's 'backups', or one kept elsewhere.",
    };

    private static readonly Option<string?> Data = CareOptions.Data();

    public static Command Create()
    {
        var command = new Command(
            "restore",
            "Puts a backup in the shop's place. Stop the program first. What is there now is kept, and where anything fails "
                + "everything is as it was. Exit status 0: restored; 2: not restored, nothing was changed."
        )
        {
            Backup,
            Data,
        };
        command.SetAction((parsed, _) => RunAsync(parsed.GetRequiredValue(Backup), parsed.GetValue(Data)));
        return command;
    }

    private static Task<int> RunAsync(string backup, string? data) =>
        string.IsNullOrWhiteSpace(backup)
            ? throw new Complaint("restore: the backup's file has no name")
            : CareOptions.RunAsync(data, care => RunAsync(care, backup));

    private static async Task<int> RunAsync(ShopCare care, string backup)
    {
        var result = await care.RestoreAsync(backup);
        Console.Out.WriteLine($"Restored from {Path.GetFullPath(backup)}");
        if (result.Kept is { } kept)
            Console.Out.WriteLine($"What was there before is kept: {kept}");
        return ExitStatus.Done;
    }
}
