using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>Counts of parts and stock, the shopping list, the cost and what is claimed of it.</summary>
internal static class CountCheck
{
    public static IEnumerable<Fault> Of(CutRequest request, CutPlan plan) =>
        Parts(request, plan).Concat(Stock(request, plan)).Concat(Costs(request, plan));

    private static IEnumerable<Fault> Parts(CutRequest request, CutPlan plan)
    {
        foreach (var part in request.Parts)
        {
            var placed = plan.Layouts.Sum(layout => layout.Copies * layout.Pieces.Count(piece => piece.Part == part.Id));
            var missing = plan.Unplaced.Where(one => one.Part == part.Id).Sum(one => one.Quantity);
            if (placed + missing != part.Quantity)
                yield return Fault.Of("parts." + part.Id, $"{placed} + {missing}", $"placed and unplaced do not come to {part.Quantity}");
        }

        foreach (var one in plan.Unplaced)
            if (one.Quantity < 1 || string.IsNullOrWhiteSpace(one.Reason)) yield return Fault.Of("unplaced", one.Part, "lacks a quantity or a reason");
    }

    private static IEnumerable<Fault> Stock(CutRequest request, CutPlan plan)
    {
        foreach (var stock in request.Stock)
        {
            var used = Used(plan, stock);
            var bought = plan.Buy.Where(one => one.Stock == stock.Id).Sum(one => one.Quantity);
            if (used > (stock.Quantity ?? int.MaxValue)) yield return Fault.Of("stock." + stock.Id, $"{used}", $"are used and {stock.Quantity} are there");
            if (bought != (stock.Offcut ? 0 : used)) yield return Fault.Of("buy." + stock.Id, $"{bought}", $"are on the shopping list and {used} are cut");
            var price = plan.Buy.Where(one => one.Stock == stock.Id).Aggregate(Money.Zero, (sum, one) => sum + one.Cost);
            if (price != stock.Price * bought) yield return Fault.Of("buy." + stock.Id, $"{price}", $"is not {bought} times {stock.Price}");
        }

        foreach (var one in plan.Buy)
            if (!request.Stock.Any(stock => stock.Id == one.Stock)) yield return Fault.Of("buy", one.Stock, "is no stock of the request");
    }

    private static IEnumerable<Fault> Costs(CutRequest request, CutPlan plan)
    {
        var cost = request.Stock.Aggregate(Money.Zero, (sum, stock) => sum + (stock.Price * Used(plan, stock)));
        if (cost != plan.Cost) yield return Fault.Of("cost", $"{plan.Cost}", $"is not what the stock comes to, {cost}");
        if (plan.CostLowerBound > plan.Cost) yield return Fault.Of("costLowerBound", $"{plan.CostLowerBound}", $"is more than the cost, {plan.Cost}");
        if (plan.Status == PlanStatus.Proven && plan.CostLowerBound != plan.Cost) yield return Fault.Of("status", "proven", "is claimed, but the bound does not meet the cost");
        if (plan.Unplaced.IsEmpty == (plan.Status == PlanStatus.Incomplete)) yield return Fault.Of("status", $"{plan.Status}", "does not agree with what is unplaced");
    }

    private static long Used(CutPlan plan, CutStock stock) => plan.Layouts.Where(layout => layout.Stock == stock.Id).Sum(layout => (long)layout.Copies);
}
