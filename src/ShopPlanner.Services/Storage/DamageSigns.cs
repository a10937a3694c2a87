using Microsoft.Data.Sqlite;

namespace ShopPlanner.Services.Storage;

/// <summary>Tells a damaged database from other failures.</summary>
public static class DamageSigns
{
    private const int Corrupt = 11,
        NotADatabase = 26;

    /// <summary>Whether a failure comes from damaged pages (sqlite.org/rescode.html: 11 and 26).</summary>
    public static bool Explain(Exception? cause)
    {
        for (var at = cause; at is not null; at = at.InnerException)
            if (at is SqliteException { SqliteErrorCode: Corrupt or NotADatabase })
                return true;
        return false;
    }
}
