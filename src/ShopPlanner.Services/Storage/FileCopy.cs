using Microsoft.EntityFrameworkCore;

namespace ShopPlanner.Services.Storage;

/// <summary>Writes a shop that a server keeps into a database file of this program's schema: the form in which it is backed up,
/// archived and moved.</summary>
internal static class FileCopy
{
    /// <summary>Writes it, and reads something from it.</summary>
    /// <param name="db">In a transaction that reads one state.</param>
    /// <param name="file">Is not there yet, and stays.</param>
    /// <param name="read">Reads from the file, whose connection is open.</param>
    /// <param name="cancel">Stops it.</param>
    public static async Task<T> WriteAsync<T>(
        ShopContext db,
        string file,
        Func<ShopContext, Task<T>> read,
        CancellationToken cancel
    )
    {
        await WriteAsync(db, file, cancel);
        var made = new SqliteContextFactory(file);
        try
        {
            await using var copy = made.CreateDbContext();
            await copy.Database.OpenConnectionAsync(cancel);
            return await read(copy);
        }
        finally
        {
            made.Release();
        }
    }

    /// <summary>Writes it.</summary>
    /// <param name="db">In a transaction that reads one state.</param>
    /// <param name="file">Is not there yet; what is half-written is left to the caller.</param>
    /// <param name="cancel">Stops it.</param>
    public static async Task WriteAsync(ShopContext db, string file, CancellationToken cancel)
    {
        var made = new SqliteContextFactory(file);
        try
        {
            await using var target = made.CreateDbContext();
            await target.Database.MigrateAsync(cancel);
            await RowCopy.AllAsync(db, target, cancel);
            // Into the one file, which is read as it is from here on.
            await target.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = DELETE", cancel);
        }
        finally
        {
            made.Release();
        }
    }
}
