using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>Counts of parts and stock, the shopping list, the cost and what is claimed of it.</summary>
internal sealed class CountCheck
{
    private readonly CutRequest request;
    private readonly CutPlan plan;
    private readonly Dictionary<string, long> placed = [];
    private readonly Dictionary<string, long> used = [];
    private readonly ILookup<string, UnplacedPart> unplaced;
    private readonly ILookup<string, Purchase> bought;

    private CountCheck(CutRequest request, CutPlan plan)
    {
        (this.request, this.plan) = (request, plan);
        foreach (var layout in plan.Layouts)
        {
            used[layout.Stock] = used.GetValueOrDefault(layout.Stock) + layout.Copies;
            foreach (var piece in layout.Pieces)
                placed[piece.Part] = placed.GetValueOrDefault(piece.Part) + layout.Copies;
        }

        unplaced = plan.Unplaced.ToLookup(one => one.Part);
        bought = plan.Buy.ToLookup(one => one.Stock);
    }

    public static IEnumerable<Fault> Of(CutRequest request, CutPlan plan)
    {
        var check = new CountCheck(request, plan);
        return check
            .Parts()
            .Concat(check.Unplaced())
            .Concat(request.Stock.SelectMany(check.Stock))
            .Concat(check.Strangers())
            .Concat(check.Costs());
    }

    private IEnumerable<Fault> Parts()
    {
        foreach (var part in request.Parts)
        {
            var (there, missing) = (placed.GetValueOrDefault(part.Id), unplaced[part.Id].Sum(one => (long)one.Quantity));
            if (there + missing != part.Quantity)
                yield return Fault.Of(
                    "parts." + part.Id,
                    $"{there} + {missing}",
                    $"placed and unplaced do not come to {part.Quantity}"
                );
        }
    }

    private IEnumerable<Fault> Unplaced()
    {
        foreach (var one in plan.Unplaced)
            if (one.Quantity < 1 || string.IsNullOrWhiteSpace(one.Reason))
                yield return Fault.Of("unplaced", one.Part, "lacks a quantity or a reason");
    }

    private IEnumerable<Fault> Stock(CutStock stock)
    {
        var cut = used.GetValueOrDefault(stock.Id);
        var listed = bought[stock.Id].Sum(one => (long)one.Quantity);
        if (cut > (stock.Quantity ?? long.MaxValue))
            yield return Fault.Of("stock." + stock.Id, $"{cut}", $"are used and {stock.Quantity} are there");
        if (listed != (stock.Offcut ? 0 : cut))
            yield return Fault.Of("buy." + stock.Id, $"{listed}", $"are on the shopping list and {cut} are cut");
        var price = bought[stock.Id].Aggregate(Money.Zero, (sum, one) => sum + one.Cost);
        if (price != stock.Price * listed)
            yield return Fault.Of("buy." + stock.Id, $"{price}", $"is not {listed} times {stock.Price}");
    }

    private IEnumerable<Fault> Strangers()
    {
        foreach (var part in unplaced.Select(group => group.Key).Except(request.Parts.Select(part => part.Id)))
            yield return Fault.Of("unplaced", part, "isn't a part in the request");
        foreach (var stock in bought.Select(group => group.Key).Except(request.Stock.Select(stock => stock.Id)))
            yield return Fault.Of("buy", stock, "isn't a stock in the request");
    }

    private IEnumerable<Fault> Costs()
    {
        var cost = request.Stock.Aggregate(Money.Zero, (sum, stock) => sum + (stock.Price * used.GetValueOrDefault(stock.Id)));
        if (plan.Unit != request.Unit)
            yield return Fault.Of("unit", $"{plan.Unit}", $"is not the request's, {request.Unit}");
        if (cost != plan.Cost)
            yield return Fault.Of("cost", $"{plan.Cost}", $"is not what the stock comes to, {cost}");
        if (plan.CostLowerBound > plan.Cost)
            yield return Fault.Of("costLowerBound", $"{plan.CostLowerBound}", $"is more than the cost, {plan.Cost}");
        if (plan.Status == PlanStatus.Proven && plan.CostLowerBound != plan.Cost)
            yield return Fault.Of("status", "proven", "is claimed, but the bound does not meet the cost");
        if (plan.Unplaced.IsEmpty == (plan.Status == PlanStatus.Incomplete))
            yield return Fault.Of("status", $"{plan.Status}", "does not agree with what is unplaced");
    }
}
