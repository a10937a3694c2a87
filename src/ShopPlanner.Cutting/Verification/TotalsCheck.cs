using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>Counts and sums: every piece once, no more stock than there is, the shopping list, cost, bound and status.</summary>
internal static class TotalsCheck
{
    public static void Run(CutRequest request, CutPlan plan, Findings findings)
    {
        if (plan.Unit != request.Unit) findings.Add("unit", plan.Unit.ToString(), "is not the request's unit");
        CheckPieces(request, plan, findings);
        var used = plan.Layouts.GroupBy(layout => layout.Stock).ToDictionary(
            group => group.Key, group => group.Sum(layout => (long)layout.Copies), StringComparer.Ordinal);
        var bought = plan.Buy.ToLookup(purchase => purchase.Stock, StringComparer.Ordinal);
        foreach (var stock in request.Stock)
            CheckStock(stock, used.GetValueOrDefault(stock.Id), [.. bought[stock.Id]], findings);
        foreach (var unknown in bought.Select(group => group.Key).Except(request.Stock.Select(stock => stock.Id)))
            findings.Add("buy", unknown, "is no stock of the request");
        CheckCost(request, plan, used, findings);
    }

    private static void CheckPieces(CutRequest request, CutPlan plan, Findings findings)
    {
        var placed = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var layout in plan.Layouts)
            foreach (var piece in layout.Pieces)
                placed[piece.Part] = placed.GetValueOrDefault(piece.Part) + layout.Copies;
        var unplaced = plan.Unplaced.ToLookup(part => part.Part, StringComparer.Ordinal);
        foreach (var part in request.Parts)
        {
            var missing = unplaced[part.Id].Sum(item => (long)item.Quantity);
            var there = placed.GetValueOrDefault(part.Id);
            if (there + missing != part.Quantity)
                findings.Add("layouts", part.Id, $"has {there} pieces placed and {missing} unplaced: {part.Quantity} are wanted");
        }

        foreach (var item in plan.Unplaced)
        {
            if (item.Quantity < 1) findings.Add("unplaced", item.Part, "is unplaced less than once");
            if (string.IsNullOrWhiteSpace(item.Reason)) findings.Add("unplaced", item.Part, "is unplaced without a reason");
        }

        foreach (var unknown in unplaced.Select(group => group.Key).Except(request.Parts.Select(part => part.Id)))
            findings.Add("unplaced", unknown, "is no part of the request");
    }

    private static void CheckStock(CutStock stock, long used, List<Purchase> bought, Findings findings)
    {
        if (used > stock.Quantity) findings.Add("layouts", stock.Id, $"is cut {used} times: there are {stock.Quantity}");
        var wanted = stock.Offcut ? 0 : used;
        if (bought.Sum(purchase => (long)purchase.Quantity) != wanted)
            findings.Add("buy", stock.Id, $"is to be bought {bought.Sum(p => (long)p.Quantity)} times: {wanted} are cut");
        foreach (var purchase in bought.Where(purchase => purchase.Cost != stock.Price * purchase.Quantity))
            findings.Add("buy", purchase.Cost.ToString(), $"is not the price of {purchase.Quantity} of {stock.Id}");
    }

    private static void CheckCost(CutRequest request, CutPlan plan, Dictionary<string, long> used, Findings findings)
    {
        var cost = request.Stock.Aggregate(Money.Zero, (sum, stock) => sum + (stock.Price * used.GetValueOrDefault(stock.Id)));
        if (plan.Cost != cost) findings.Add("cost", plan.Cost.ToString(), $"is not what the stock comes to: {cost}");
        if (plan.CostLowerBound > plan.Cost) findings.Add("costLowerBound", plan.CostLowerBound.ToString(), "is more than the cost");
        if (plan.Status == PlanStatus.Incomplete == plan.Unplaced.IsEmpty)
            findings.Add("status", plan.Status.ToString(), $"does not fit {plan.Unplaced.Length} parts unplaced");
        if (plan.Status == PlanStatus.Proven && plan.CostLowerBound != plan.Cost)
            findings.Add("status", plan.Status.ToString(), $"is claimed, but the bound {plan.CostLowerBound} is not the cost {plan.Cost}");
    }
}
