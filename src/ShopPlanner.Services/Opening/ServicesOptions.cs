namespace ShopPlanner.Services.Opening;

/// <summary>Where a shop's data lies and how it is opened.</summary>
/// <param name="DataFolder">Holds the database, backups and keys; made on first run.</param>
/// <param name="Demo">True to seed the demo into an empty data folder.</param>
/// <param name="SecondBackups">Another folder that every backup is copied to; null where Setup says.</param>
public sealed record ServicesOptions(string DataFolder, bool Demo, string? SecondBackups = null)
{
    /// <summary>A database of a PostgreSQL server that keeps the shop, as Npgsql writes a connection; null for a file in the data
    /// folder.</summary>
    public string? Database { get; init; }
}
