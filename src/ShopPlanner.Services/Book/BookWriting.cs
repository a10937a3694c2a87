using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Book;

/// <summary>Writes the lines of the book from what is stored.</summary>
internal sealed class BookWriting(BookRows rows, TimeZoneInfo zone)
{
    private readonly Dictionary<Guid, StoredPurchase> purchases = rows.Purchases.ToDictionary(one => one.PieceId);
    private readonly List<BookEntry> entries = [];

    /// <summary>All lines, oldest first.</summary>
    public ImmutableArray<BookEntry> Write()
    {
        foreach (var supply in rows.Supplies)
            Add(supply);
        foreach (var piece in rows.Pieces.Values)
            AddBought(piece, [.. rows.Entries[piece.Id]]);
        foreach (var finish in rows.Finishes)
            AddCut(finish);
        foreach (var log in rows.Logs)
            Add(log);
        return
        [
            .. entries
                .OrderBy(entry => entry.Day)
                .ThenBy(entry => entry.Figure)
                .ThenBy(entry => entry.What, StringComparer.Ordinal),
        ];
    }

    private DateOnly Day(DateTime utc) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc), zone));

    private void Add(StoredSupply supply) =>
        entries.Add(
            new BookEntry(
                Day(supply.WhenUtc),
                BookFigure.Spent,
                supply.ProjectId,
                rows.Projects.GetValueOrDefault(supply.ProjectId) ?? "",
                "",
                "",
                supply.Name
            )
            {
                Money = supply.Price!.Value,
            }
        );

    private void Add(WorkLog log) =>
        entries.Add(
            new BookEntry(
                Day(log.WhenUtc),
                BookFigure.Hours,
                log.ProjectId,
                rows.Projects.GetValueOrDefault(log.ProjectId) ?? "",
                "",
                "",
                log.Title
            )
            {
                Minutes = log.Time.Took,
            }
        );

    // What was taken back to the store is neither bought nor paid.
    private void AddBought(StoredPiece piece, List<StoredEntry> standing)
    {
        if (standing.Find(entry => entry.Kind == StockEntryKind.Bought) is not { } bought)
            return;
        if (standing.Exists(entry => entry.Kind == StockEntryKind.Returned))
            return;
        var purchase = purchases.GetValueOrDefault(piece.Id);
        var owners = purchase is null ? null : rows.Plans[purchase.PlanId];
        var weights = owners?.Weights(layout => layout.Stock == purchase!.Stock) ?? [1];
        var whose = owners?.Owners ?? [BookOwner.Nobody];
        var areas = Portions.Of(Area.Of(bought.Length, bought.Width), weights);
        var prices = purchase is null ? [] : Portions.Of(purchase.Price, weights);
        for (var i = 0; i < whose.Count; i++)
        {
            var line = new BookEntry(
                Day(purchase?.WhenUtc ?? bought.WhenUtc),
                BookFigure.Bought,
                whose[i].Project,
                whose[i].Name,
                purchase?.Store ?? "",
                rows.Materials[piece.MaterialId].Name,
                rows.NameOf(piece, bought)
            )
            {
                Piece = piece.Id,
                Plan = purchase?.PlanId,
            };
            if (areas[i] != Area.Zero)
                entries.Add(line with { Area = areas[i] });
            if (purchase is not null && prices[i] != Money.Zero)
                entries.Add(line with { Figure = BookFigure.Spent, Money = prices[i] });
        }
    }

    private void AddCut(StoredFinish finish)
    {
        var own = rows.OfFinish[finish.Id].ToList();
        if (own.Find(entry => entry.Kind == StockEntryKind.Cut) is not { } cut || rows.Plans[finish.PlanId] is not { } owners)
            return;
        var whole = Area.Of(cut.Length, cut.Width);
        var kept = own.Where(entry => entry.Kind == StockEntryKind.Binned)
            .Aggregate(Area.Zero, (sum, entry) => sum + Area.Of(entry.Length, entry.Width));
        var used = Used(finish, owners);
        var (parts, planned) = (owners.Weights(used), owners.Weights(layout => IsOf(owners, layout, finish)));
        var inParts = used.Aggregate(Area.Zero, (sum, piece) => sum + piece.Area);
        // A tape that measures generously makes no wood.
        var waste = whole - inParts - kept is var left && left > Area.Zero ? left : Area.Zero;
        var shares = parts.Any(weight => !weight.IsZero) ? parts : planned;
        Add(finish, cut, owners, BookFigure.Used, Portions.Of(inParts, shares));
        Add(finish, cut, owners, BookFigure.Kept, Portions.Of(kept, shares));
        Add(finish, cut, owners, BookFigure.Wasted, Portions.Of(waste, shares));
    }

    private static bool IsOf(PlanOwners owners, Layout layout, StoredFinish finish) =>
        owners.Record!.Plan.Layouts.IndexOf(layout) == finish.Layout;

    // The pieces that were freed: a board may be left before its last cut.
    private List<(string Part, Area Area)> Used(StoredFinish finish, PlanOwners owners)
    {
        if (owners.Record is not { } record || finish.Layout >= record.Plan.Layouts.Length)
            return [];
        var sizes = record.Draft.Request.Parts.ToDictionary(part => part.Id, part => Area.Of(part.Length, part.Width));
        var made = rows.Cuts[(finish.PlanId, finish.Layout, finish.Copy)].ToHashSet();
        var layout = record.Plan.Layouts[finish.Layout];
        return
        [
            .. PlanLayouts
                .Given(record.Draft.Request, layout, made, isFinished: true)
                .Select(piece => layout.Pieces[piece].Part)
                .Select(part => (part, sizes[part])),
        ];
    }

    private void Add(StoredFinish finish, StoredEntry cut, PlanOwners owners, BookFigure figure, ImmutableArray<Area> portions)
    {
        var piece = rows.Pieces[cut.PieceId];
        var store = purchases.GetValueOrDefault(piece.Id)?.Store ?? "";
        foreach (var (owner, area) in owners.Owners.Zip(portions).Where(pair => pair.Second != Area.Zero))
            entries.Add(
                new BookEntry(
                    Day(finish.WhenUtc),
                    figure,
                    owner.Project,
                    owner.Name,
                    store,
                    rows.Materials[piece.MaterialId].Name,
                    rows.NameOf(piece, cut)
                )
                {
                    Area = area,
                    Piece = piece.Id,
                    Plan = finish.PlanId,
                }
            );
    }
}
