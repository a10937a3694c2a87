using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>Keeps beside each finished board or sheet how many pieces it was to give and did not, by row of the parts
/// list.</summary>
internal static class LeftOuts
{
    /// <summary>Writes them down by the ticks that are stored, in place of what stood there.</summary>
    public static async Task WriteAsync(ShopContext db, PlanRecord record, StoredFinish finish, CancellationToken cancel)
    {
        var made = await db
            .Cuts.Where(cut => cut.PlanId == finish.PlanId && cut.Layout == finish.Layout && cut.Copy == finish.Copy && cut.Made)
            .Select(cut => cut.Cut)
            .ToHashSetAsync(cancel);
        var left = Of(record, finish.Layout, made);
        var stored = await db.LeftOut.Where(one => one.FinishId == finish.Id).ToListAsync(cancel);
        db.LeftOut.RemoveRange(stored.Where(one => !left.ContainsKey(one.RowId)));
        foreach (var (row, pieces) in left)
            if (stored.Find(one => one.RowId == row) is { } known)
                known.Pieces = pieces;
            else
                db.LeftOut.Add(
                    new StoredLeftOut
                    {
                        FinishId = finish.Id,
                        PlanId = finish.PlanId,
                        RowId = row,
                        Pieces = pieces,
                    }
                );
    }

    // Test pieces are none of the piece of furniture.
    private static Dictionary<Guid, int> Of(PlanRecord record, int index, HashSet<int> made)
    {
        var (layout, request) = (record.Plan.Layouts[index], record.Draft.Request);
        var practice = request.Parts.Where(part => part.PracticeFor is not null).Select(part => part.Id).ToHashSet();
        var given = PlanLayouts.Given(request, layout, made, isFinished: true).ToHashSet();
        return layout
            .Pieces.Where((piece, i) => !given.Contains(i) && !practice.Contains(piece.Part))
            .GroupBy(piece => record.Draft.Basis.Rows[piece.Part])
            .ToDictionary(row => row.Key, row => row.Count());
    }
}
