using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Book;

internal sealed class BookService(ShopWork work, ReadPlans plans, TimeProvider clock) : IBookService
{
    public async Task<ShopBook> GetAsync(CancellationToken cancel = default) => Book(await RowsAsync(cancel));

    public async Task<string> ExportCsvAsync(CancellationToken cancel = default)
    {
        var rows = await RowsAsync(cancel);
        return BookCsv.Write(Book(rows).Entries, rows.Shop.Unit);
    }

    private Task<BookRows> RowsAsync(CancellationToken cancel) =>
        work.ReadAsync(db => BookRows.LoadAsync(db, plans, cancel), cancel);

    private ShopBook Book(BookRows rows) => new(new BookWriting(rows, clock.LocalTimeZone).Write(), Prices(rows), Offcuts(rows));

    private ImmutableArray<PriceSeen> Prices(BookRows rows)
    {
        var paid =
            from purchase in rows.Purchases
            let bought = rows.Entries[purchase.PieceId].FirstOrDefault(entry => entry.Kind == StockEntryKind.Bought)
            where bought is not null
            select new PriceSeen(
                rows.StockOf(rows.Pieces[purchase.PieceId].MaterialId, bought.Length, bought.Width),
                purchase.Store,
                Day(purchase.WhenUtc),
                purchase.Price,
                WasPaid: true
            );
        var listed = rows.Prices.Select(price => new PriceSeen(
            rows.StockOf(price.MaterialId, price.Length, price.Width),
            rows.Stores[price.StoreId],
            price.Seen,
            price.Price,
            WasPaid: false
        ));
        // Ten boards of one day and one price are one price.
        return
        [
            .. paid.Concat(listed)
                .Distinct()
                .OrderBy(price => price.Stock, StringComparer.OrdinalIgnoreCase)
                .ThenBy(price => price.Day)
                .ThenBy(price => price.WasPaid ? 0 : 1),
        ];
    }

    private ImmutableArray<OffcutAge> Offcuts(BookRows rows)
    {
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return
        [
            .. rows
                .OnHand.Where(piece => piece.Piece.Place == StockPlace.Bin)
                .Select(piece => (Piece: piece, Since: Day(rows.Entries[piece.Piece.Id].First().WhenUtc)))
                .Select(one => new OffcutAge(
                    one.Piece.Piece.Id,
                    one.Piece.Piece.Tag,
                    rows.StockOf(one.Piece.Piece.MaterialId, one.Piece.Length, one.Piece.Width),
                    one.Since,
                    Math.Max(0, today.DayNumber - one.Since.DayNumber),
                    Area.Of(one.Piece.Length, one.Piece.Width)
                ))
                .OrderBy(offcut => offcut.Since)
                .ThenBy(offcut => offcut.Tag.Length)
                .ThenBy(offcut => offcut.Tag, StringComparer.Ordinal),
        ];
    }

    private DateOnly Day(DateTime utc) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc), clock.LocalTimeZone));
}
