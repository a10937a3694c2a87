using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>A piece that stopping a board put into the bin.</summary>
/// <param name="Number">The board or sheet.</param>
/// <param name="Piece">The piece.</param>
/// <param name="Left">Its size, and what it was.</param>
/// <param name="IsWanted">Whether it stays in the bin also where nothing is cut from it.</param>
internal sealed record StoppedPiece(int Number, StoredPiece Piece, KeptLeftover Left, bool IsWanted);

/// <summary>Stops the boards and sheets that are begun, as they lie there: what they have given stays given, and what is in hand
/// goes into the bin, so that the rest can be planned from it.</summary>
internal sealed class BoardStopping(
    ShopContext db,
    BenchPlan plan,
    BenchView view,
    string device,
    TimeProvider clock,
    CancellationToken cancel
)
{
    /// <summary>Stops each board that has a cut made and is not finished.</summary>
    public async Task<(List<StoppedPiece> Pieces, Outcome<BenchView>? Refusal)> StopAsync(StoredWrongCut wrong, ReadWrongCut read)
    {
        var stopped = new List<StoppedPiece>();
        foreach (var stock in view.Stocks.Where(stock => !stock.Finished))
        {
            var isRead = (stock.Layout, stock.Copy) == (read.At.Layout, read.At.Copy);
            if (!isRead && !stock.Cuts.Any(cut => cut.Made))
                continue;
            List<KeptLeftover> kept = [.. isRead ? InHand(stock, read) : Expected(stock)];
            var (binned, refusal) = await new Finishing(db, plan, device, clock, cancel).EnterAsync(
                new(stock.Layout, stock.Copy),
                kept,
                wrong.Id
            );
            if (refusal is not null)
                return (stopped, refusal);
            stopped.AddRange(binned.Zip(kept, (piece, left) => Stopped(stock, piece, left)));
        }

        return (stopped, null);
    }

    /// <summary>Takes what the new plan does not cut, and nobody would keep, out of the bin again.</summary>
    /// <param name="stopped">What went in.</param>
    /// <param name="used">The pieces that the new plan cuts.</param>
    public async Task SweepAsync(IEnumerable<StoppedPiece> stopped, IReadOnlySet<Guid> used)
    {
        foreach (var (_, piece, left, _) in stopped.Where(one => !one.IsWanted && !used.Contains(one.Piece.Id)))
        {
            var last = await db.Entries.Where(entry => entry.PieceId == piece.Id).SingleAsync(cancel);
            var condition = new StockCondition(last.Untrimmed, BadPlacesDocument.Read(last.BadPlaces));
            var note = new LedgerNote(left.Length, left.Width, condition, "", "scrap", device, last.FinishId);
            await Ledger.WriteAsync(db, piece, StockEntryKind.Discarded, -1, note, null, clock, cancel);
        }
    }

    private StoppedPiece Stopped(BenchStock stock, StoredPiece piece, KeptLeftover left)
    {
        var (keep, material) = (plan.Request.Keep, MaterialOf(stock));
        return new(stock.Number, piece, left, left.Reason is not null || keep.Keeps(material, left.Length, left.Width));
    }

    private IEnumerable<KeptLeftover> InHand(BenchStock stock, ReadWrongCut read)
    {
        var made = WrongCutReader.Made(stock, read.Cut.N);
        foreach (var area in Remaining.InHand(view.Plan, stock.Layout, made))
        {
            var (length, width) = read.Rests.TryGetValue(area, out var measured) ? measured : (area.Dx, area.Dy);
            if (IsOfUse(stock, length, width))
                yield return new(length, width, new(area, IsTrimmed: false));
        }

        foreach (var left in read.Pieces.Select(one => one.Left).OfType<KeptLeftover>())
            yield return left;
    }

    private IEnumerable<KeptLeftover> Expected(BenchStock stock) =>
        Remaining
            .Of(view, stock, allCutsMade: false)
            .Where(left => IsOfUse(stock, left.Length, left.Width))
            .Select(left => new KeptLeftover(left.Length, left.Width, Where(stock, left)));

    private LeftoverArea Where(BenchStock stock, ExpectedLeftover left)
    {
        if (left.From is { } area)
            return new(area, IsTrimmed: false);
        var planned = plan.Record.Plan.Layouts[stock.Layout].Leftovers[left.Index];
        return new(new(planned.X, planned.Y, planned.Dx, planned.Dy), IsTrimmed: true);
    }

    // Worth keeping, or large enough for a part of the plan.
    private bool IsOfUse(BenchStock stock, Length length, Length width) =>
        plan.Request.Keep.Keeps(MaterialOf(stock), length, width)
        || plan.Request.Parts.Any(part => part.Material == MaterialOf(stock).Id && RestUses.Fits(part, length, width));

    private CutMaterial MaterialOf(BenchStock stock) =>
        plan.Request.Materials.Single(material => material.Id == plan.StockOf(stock.Layout).Material);
}
