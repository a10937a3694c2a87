using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>
/// Checks a plan against its request in exact arithmetic, sharing no code with the planner: sizes, kerf, trims, grain, straight
/// cuts, counts, costs and the claim of proof, and by making the cuts one by one.
/// </summary>
public static class PlanVerifier
{
    /// <summary>Everything that is wrong with a plan; empty when it can be cut as drawn and costs what it says.</summary>
    public static ImmutableArray<Fault> Check(CutRequest request, CutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        var faults = ImmutableArray.CreateBuilder<Fault>();
        var parts = request.Parts.DistinctBy(part => part.Id).ToDictionary(part => part.Id);
        var stocks = request.Stock.DistinctBy(stock => stock.Id).ToDictionary(stock => stock.Id);
        for (var i = 0; i < plan.Layouts.Length; i++)
        {
            var where = $"layouts[{i}]";
            var layout = plan.Layouts[i];
            var stock = stocks.GetValueOrDefault(layout.Stock);
            if (stock is null)
                faults.Add(Fault.Of(where, layout.Stock, "isn't a stock in the request"));
            else
                faults.AddRange(LayoutCheck.Of(request, parts, stock, layout, where));
        }

        faults.AddRange(CountCheck.Of(request, plan));
        return faults.ToImmutable();
    }
}
