using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>Writes a wrong cut down: the cut is made, and its pieces are needed again.</summary>
internal sealed class WrongCutKeeping(ShopContext db, BenchPlan plan, string device, TimeProvider clock, CancellationToken cancel)
{
    /// <summary>Adds the wrong cut with its pieces, and ticks the cut where it is not ticked yet.</summary>
    public async Task<StoredWrongCut> AddAsync(ReadWrongCut read)
    {
        var isTicked = !read.Start.Stock.Finished && await TickAsync(read);
        var wrong = db
            .WrongCuts.Add(
                new StoredWrongCut
                {
                    Id = Guid.CreateVersion7(),
                    PlanId = plan.Record.Stored.Id,
                    Layout = read.At.Layout,
                    Copy = read.At.Copy,
                    Cut = read.Cut.N,
                    Reason = read.Reason,
                    IsTickedByIt = isTicked,
                    LastPlan = await db.Plans.MaxAsync(one => one.Number, cancel),
                    Standing = true,
                    WhenUtc = clock.GetUtcNow().UtcDateTime,
                    Device = device,
                }
            )
            .Entity;
        var pieces = plan.Record.Plan.Layouts[read.At.Layout].Pieces;
        var practice = plan.Request.Parts.Where(part => part.PracticeFor is not null).Select(part => part.Id).ToHashSet();
        db.WrongPieces.AddRange(
            read.Pieces.Select(one => new StoredWrongPiece
            {
                WrongCutId = wrong.Id,
                Piece = one.Piece.Piece,
                RowId = plan.Record.Draft.Basis.Rows[pieces[one.Piece.Piece].Part],
                IsPractice = practice.Contains(pieces[one.Piece.Piece].Part),
            })
        );
        await db.SaveChangesAsync(cancel);
        return wrong;
    }

    /// <summary>Puts what is left of the pieces into the bin, while the board stays in hand.</summary>
    public async Task BinAsync(StoredWrongCut wrong, ReadWrongCut read)
    {
        var stock = plan.StockOf(read.At.Layout);
        foreach (var (piece, left) in read.Pieces)
        {
            if (left is null)
                continue;
            var note = new LedgerNote(left.Length, left.Width, StockCondition.Sound, "", left.Reason!, device);
            var binned = await Ledger.EnterAsync(db, StockPlace.Bin, stock.Material, StockEntryKind.Binned, note, clock, cancel);
            await NoteLeftAsync(wrong, piece, binned.Id);
        }

        await db.SaveChangesAsync(cancel);
    }

    /// <summary>Remembers which piece of the bin is what is left of a wrong one.</summary>
    public async Task NoteLeftAsync(StoredWrongCut wrong, GivenPiece piece, Guid binned) =>
        (await db.WrongPieces.FindAsync([wrong.Id, piece.Piece], cancel))!.LeftPieceId = binned;

    // Whether the cut was not ticked before.
    private async Task<bool> TickAsync(ReadWrongCut read)
    {
        var tick = await db.Cuts.FindAsync([plan.Record.Stored.Id, read.At.Layout, read.At.Copy, read.Cut.N], cancel);
        if (tick is { Made: true })
            return false;
        tick ??= db
            .Cuts.Add(
                new StoredCut
                {
                    PlanId = plan.Record.Stored.Id,
                    Layout = read.At.Layout,
                    Copy = read.At.Copy,
                    Cut = read.Cut.N,
                }
            )
            .Entity;
        (tick.Made, tick.Device, tick.WhenUtc) = (true, device, clock.GetUtcNow().UtcDateTime);
        return true;
    }
}
