using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>What a plan costs in all: what was paid for it, and what it still asks for.</summary>
internal static class RestMoney
{
    /// <summary>Returns what was paid for a plan, and what is left to pay at its prices.</summary>
    public static async Task<(Money Paid, Money Left)> OfAsync(ShopContext db, PlanRecord record, CancellationToken cancel)
    {
        var lines = await BoughtLines.LoadAsync(db, record, cancel);
        return (
            Sum(lines.SelectMany(line => line.Pieces).Select(piece => piece.Purchase.Price)),
            Sum(lines.Select(line => line.Stock.Price * line.Left))
        );
    }

    private static Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate(Money.Zero, (sum, one) => sum + one);
}
