using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;
using ShopPlanner.Services.Weekends.Stored;

namespace ShopPlanner.Services.Weekends;

/// <summary>The one row that keeps the weekends.</summary>
internal static class WeekendRows
{
    /// <summary>Returns the row; null before anything was said.</summary>
    public static Task<StoredWeekends?> ReadAsync(ShopContext db, CancellationToken cancel) =>
        db.Weekends.SingleOrDefaultAsync(cancel);

    /// <summary>Returns what a row says.</summary>
    public static WeekendDocument Document(StoredWeekends? row) =>
        row is null ? WeekendDocument.Usual : WeekendDocument.Read(row.Document);

    /// <summary>Stores a document in the row, or in a new one.</summary>
    public static async Task<StoredWeekends> StoreAsync(
        ShopContext db,
        StoredWeekends? row,
        WeekendDocument document,
        CancellationToken cancel
    )
    {
        if (row is null)
            db.Weekends.Add(row = new StoredWeekends { Document = document.Write() });
        else
            row.Document = document.Write();
        await db.SaveChangesAsync(cancel);
        return row;
    }
}
