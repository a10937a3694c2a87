namespace ShopPlanner.Services.Health;

/// <summary>What a warning about the shop's data is about. There is at most one of each.</summary>
public enum HealthTopic
{
    /// <summary>The database is damaged.</summary>
    Damage,

    /// <summary>The shop is open for reading only.</summary>
    ReadOnly,

    /// <summary>The disk has little room left.</summary>
    LowDisk,

    /// <summary>A restore was taken back.</summary>
    Restore,

    /// <summary>Backups fail.</summary>
    Backups,

    /// <summary>Backups do not reach the second folder.</summary>
    SecondFolder,

    /// <summary>Another program took the server's database.</summary>
    Server,
}

/// <summary>A warning that stays until its cause is gone.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="Text">Whole sentences: what is wrong, what is safe, what to do.</param>
/// <param name="SinceUtc">When it was first said.</param>
public sealed record HealthNotice(HealthTopic Topic, string Text, DateTime SinceUtc);

/// <summary>Tells every page what is wrong with the shop's data, where nobody reads a log.</summary>
public interface IShopHealth
{
    /// <summary>Raised, on any thread, when the warnings changed.</summary>
    event Action? Changed;

    /// <summary>The warnings that stand, gravest first; empty when all is well.</summary>
    IReadOnlyList<HealthNotice> Notices { get; }
}
