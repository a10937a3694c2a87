using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Backups;

/// <summary>A backup: a copy of the database that was opened again and checked.</summary>
/// <param name="File">Full path.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="MadeUtc">When.</param>
public sealed record BackupView(string File, long Bytes, DateTime MadeUtc);

/// <summary>Backs the database up while the shop goes on working.</summary>
public interface IBackupService
{
    /// <summary>Makes a copy in the data folder's <c>backups</c>; it has its final name only after it was opened again and found
    /// whole.</summary>
    /// <param name="command">Made by the device; asked again with it, answers with the copy that was made.</param>
    /// <param name="cancel">Stops it; no copy is left behind.</param>
    Task<Outcome<BackupView>> CreateAsync(CommandId command, CancellationToken cancel = default);

    /// <summary>Returns the backups there are, newest first.</summary>
    IReadOnlyList<BackupView> List();
}
