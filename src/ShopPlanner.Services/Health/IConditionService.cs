namespace ShopPlanner.Services.Health;

/// <summary>How the shop's data is.</summary>
/// <param name="Program">Version of the program.</param>
/// <param name="Database">What keeps the shop, with its version.</param>
/// <param name="Folder">Full path of the data folder.</param>
/// <param name="DatabaseBytes">Size of the database, with its log where it is a file.</param>
/// <param name="FreeBytes">Room left on its disk.</param>
/// <param name="CheckedUtc">When every page of the database was read last; null where it was not yet since the start.</param>
/// <param name="NewestBackupUtc">When the newest good backup was made; null without one.</param>
/// <param name="Backups">How many good backups there are.</param>
/// <param name="SecondFolder">Full path of the second folder for backups; empty for none.</param>
public sealed record ShopCondition(
    string Program,
    string Database,
    string Folder,
    long DatabaseBytes,
    long FreeBytes,
    DateTime? CheckedUtc,
    DateTime? NewestBackupUtc,
    int Backups,
    string SecondFolder
)
{
    /// <summary>How long half of the last changes took at most; null while there was none since the start.</summary>
    public TimeSpan? UsualChange { get; init; }

    /// <summary>How long 99 of 100 of the last changes took at most.</summary>
    public TimeSpan? SlowChange { get; init; }
}

/// <summary>Tells how the shop's data is, for whoever looks after it.</summary>
public interface IConditionService
{
    /// <summary>Returns whether the shop can be read now.</summary>
    Task<bool> IsReadableAsync(CancellationToken cancel = default);

    /// <summary>Returns it as it is now.</summary>
    ShopCondition Get();
}
