namespace ShopPlanner.Cli.Care;

/// <summary>The check of a data folder, for <c>check</c> without a design.</summary>
internal static class FolderCheckRun
{
    /// <summary>Prints what was found. The exit status is 0 where all is well, 2 where the folder is not sound, 3 where it is but
    /// has no fresh backup.</summary>
    public static Task<int> RunAsync(string? data) =>
        CareOptions.RunAsync(
            data,
            care =>
            {
                var check = care.Check();
                foreach (var line in check.Lines)
                    Console.Out.WriteLine(line);
                return Task.FromResult(
                    !check.IsSound ? ExitStatus.Refused
                    : check.HasFreshBackup ? ExitStatus.Done
                    : ExitStatus.Incomplete
                );
            }
        );
}
