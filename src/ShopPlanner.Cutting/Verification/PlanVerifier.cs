using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>
/// Says whether a plan can be cut as drawn and answers its request. Shares no code with the planner: it has its own geometry and
/// replays the cuts one by one. All arithmetic is exact.
/// </summary>
public static class PlanVerifier
{
    /// <summary>Everything that is wrong with the plan, each with the path of the member in the plan; empty when it is right.</summary>
    /// <param name="request">A request that keeps its rules.</param>
    /// <param name="plan">The plan to check.</param>
    public static ImmutableArray<Fault> Check(CutRequest request, CutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        var findings = new Findings();
        var materials = request.Materials.ToDictionary(material => material.Id, StringComparer.Ordinal);
        var stock = request.Stock.ToDictionary(
            item => item.Id, item => StockArea.Of(request, item, materials[item.Material]), StringComparer.Ordinal);
        var parts = request.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        for (var i = 0; i < plan.Layouts.Length; i++)
            CheckLayout(plan.Layouts[i], Findings.At("layouts", i), request, stock, parts, findings);
        TotalsCheck.Run(request, plan, findings);
        return findings.Faults;
    }

    private static void CheckLayout(
        Layout layout, string at, CutRequest request, Dictionary<string, StockArea> stock, Dictionary<string, CutPart> parts,
        Findings findings)
    {
        if (layout.Copies < 1) findings.Add(at + ".copies", layout.Copies, "must be one or more");
        if (!stock.TryGetValue(layout.Stock, out var area))
        {
            findings.Add(at + ".stock", layout.Stock, "is no stock of the request");
            return;
        }

        LayoutCheck.Run(layout, at, area, parts, findings);
        LeftoverCheck.Run(layout, at, area, request.Keep, findings);
        new CutReplay(layout, at, area, findings).Run();
    }
}
