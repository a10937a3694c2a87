using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Backups;

/// <summary>What a shop holds, in the figures that a person knows it by.</summary>
/// <param name="Projects">Projects, those in the trash with them.</param>
/// <param name="Plans">Cut plans.</param>
/// <param name="Pieces">Pieces of rack and bin.</param>
/// <param name="Entries">Lines of the stock ledger.</param>
public sealed record ShopFigures(long Projects, long Plans, long Pieces, long Entries);

/// <summary>What restoring a backup would give.</summary>
/// <param name="Backup">The backup, every page of which was checked.</param>
/// <param name="Program">The version of the program that wrote it.</param>
/// <param name="Then">What the backup holds.</param>
/// <param name="Now">What the shop holds now.</param>
public sealed record RestorePreview(BackupView Backup, string Program, ShopFigures Then, ShopFigures Now);

/// <summary>Restores a backup at the next start, before anything else is done; where it fails, the shop is as it was.</summary>
public interface IRestoreService
{
    /// <summary>Whether the next start restores a backup.</summary>
    bool IsAsked { get; }

    /// <summary>Checks every page of a backup and says what restoring it would give.</summary>
    /// <param name="name">Its file's name.</param>
    /// <param name="cancel">Stops it.</param>
    Task<Outcome<RestorePreview>> PreviewAsync(string name, CancellationToken cancel = default);

    /// <summary>Lets the next start restore a backup.</summary>
    /// <param name="name">Its file's name.</param>
    Outcome<Done> Ask(string name);
}
