using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Backups;

/// <summary>A backup: a copy of the database that was opened again, checked and counted.</summary>
/// <param name="File">Full path.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="MadeUtc">When.</param>
/// <param name="Why">Why it was made, as it stands in its name: <c>daily</c>, <c>by-hand</c>, <c>before-…</c>.</param>
public sealed record BackupView(string File, long Bytes, DateTime MadeUtc, string Why);

/// <summary>Where backups go besides the data folder.</summary>
/// <param name="Folder">Full path; empty for none.</param>
/// <param name="IsByOption">Whether the program was started with it, so that it cannot be changed here.</param>
public sealed record SecondFolderView(string Folder, bool IsByOption);

/// <summary>A file among the backups that is none.</summary>
/// <param name="File">Full path.</param>
/// <param name="Fault">What is wrong, to be read after its name.</param>
public sealed record StrangeFile(string File, string Fault);

/// <summary>Backs the database up while the shop goes on working.</summary>
public interface IBackupService
{
    /// <summary>The rule by which backups are kept, in words.</summary>
    static string Rule => CopyRotation.InWords;

    /// <summary>The second folder.</summary>
    SecondFolderView Second { get; }

    /// <summary>Makes a copy in the data folder's <c>backups</c>; it has its final name only after it was opened again and found
    /// whole.</summary>
    /// <param name="command">Made by the device; asked again with it, answers with the copy that was made.</param>
    /// <param name="cancel">Stops it; no copy is left behind.</param>
    Task<Outcome<BackupView>> CreateAsync(CommandId command, CancellationToken cancel = default);

    /// <summary>Returns the backups there are, newest first. What is empty, cut off or dated in the future is none.</summary>
    IReadOnlyList<BackupView> List();

    /// <summary>Returns files among the backups that are none.</summary>
    IReadOnlyList<StrangeFile> Strange();

    /// <summary>Chooses the second folder.</summary>
    /// <param name="folder">Full path of a folder that is there; blank for none.</param>
    Outcome<Done> ChooseSecond(string folder);
}
