using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Staleness;

/// <summary>Tells what changed about the saw, the store's cuts, the car, and what is worth keeping.</summary>
internal sealed class LimitChanges
{
    private readonly CutRequest request;
    private readonly List<string> changes = [];

    private LimitChanges(CutRequest request) => this.request = request;

    /// <param name="record">The plan.</param>
    /// <param name="now">The shop as it stands.</param>
    public static IReadOnlyList<string> Find(PlanRecord record, Snapshot now)
    {
        var found = new LimitChanges(record.Draft.Request);
        var (saw, keep, carry) = SawReader.Read(now.Shop, []);
        found.Saw(saw);
        var cuts = RequestStock.StoreCuts(record.Draft.Order, now, record.Draft.Basis.Materials.Keys.ToHashSet());
        found.Store(cuts);
        if (cuts is not null && record.Draft.Request.Store is not null)
            found.Uncut(record.Draft.Basis, now);
        found.Carry(carry);
        found.Keep(keep);
        return [.. found.changes.Distinct()];
    }

    private void Saw(SawSettings now)
    {
        Say("the saw's kerf", request.Saw.Kerf, now.Kerf);
        Say("the end trim of boards", request.Saw.BoardEndTrim, now.BoardEndTrim);
        Say("the edge trim of sheets", request.Saw.SheetEdgeTrim, now.SheetEdgeTrim);
        Say("the saw's widest rip", request.Saw.WidestRip, now.WidestRip);
        Say("the saw's longest crosscut", request.Saw.LongestCrosscut, now.LongestCrosscut);
    }

    private void Store(StoreCuts? now)
    {
        var (was, most) = (request.Store?.Most ?? 0, now?.Most ?? 0);
        if (was != most)
            changes.Add($"the store now makes {First(most)}" + (was > 0 ? $", not {First(was)}" : ""));
        else if (now is not null)
            Say("the store cut tolerance", request.Store!.Tolerance, now.Tolerance);
    }

    // Of a store that begins or ceases to cut while others go on.
    private void Uncut(PlanBasis basis, Snapshot now)
    {
        foreach (var stock in request.Stock)
            if (
                basis.StockOrigins[stock.Id] is StockOrigin.PriceOrigin sold
                && now.Prices.TryGetValue(sold.Price, out var price)
                && IsUncut(price, now) != stock.SoldUncut
            )
                changes.Add(
                    $"{basis.Stocks[stock.Id].Store} {(stock.SoldUncut ? "now cuts for you" : "no longer cuts for you")}"
                );
    }

    private static bool IsUncut(StoredPrice price, Snapshot now) => now.Stores[price.StoreId].FirstCuts == 0;

    private void Carry(CarryLimit? now)
    {
        Say("the longest piece the car carries", Limit(request.Carry?.Longest), Limit(now?.Longest));
        Say("the widest piece the car carries", Limit(request.Carry?.Widest), Limit(now?.Widest));
    }

    private void Keep(KeepRule now)
    {
        Say("the shortest board leftover to keep", request.Keep.BoardLength, now.BoardLength);
        Say("the shortest sheet leftover to keep", request.Keep.SheetLength, now.SheetLength);
        Say("the narrowest sheet leftover to keep", request.Keep.SheetWidth, now.SheetWidth);
    }

    private void Say(string what, Length? was, Length? now)
    {
        if (was != now)
            changes.Add($"{what} is now {(now is { } length ? StockWords.Say(length, request.Unit) : "not set")}");
    }

    // The side that the settings leave open stands in the request as the longest length there is.
    private static Length? Limit(Length? side) => side == LengthText.Longest ? null : side;

    private static string First(int cuts) =>
        cuts switch
        {
            0 => "no free cuts",
            1 => "1 free cut",
            _ => $"{cuts} free cuts",
        };
}
