using System.Diagnostics;
using System.Globalization;
using ShopPlanner.Cutting;

namespace ShopPlanner.Benchmarks;

/// <summary>What came of one demo job.</summary>
/// <param name="FirstPlanMs">Until a plan with every piece was there.</param>
/// <param name="PeakMegabytes">The most memory the program has held so far.</param>
public sealed record DemoRow(
    string Name, int Pieces, string Status, double FirstPlanMs, double Seconds, decimal Cost, decimal Bound, decimal GapPercent, double PeakMegabytes)
{
    public const string Heading = "job                pieces     status  first ms  total s       cost      bound   gap %  peak MB so far";

    public static DemoRow Of(string name, CutRequest request, CutPlan plan, TimeSpan first, TimeSpan total)
    {
        using var process = Process.GetCurrentProcess();
        var (cost, bound) = (plan.Cost.Amount, plan.CostLowerBound.Amount);
        return new(
            name, request.Parts.Sum(part => part.Quantity), plan.Status.ToString(), first.TotalMilliseconds, total.TotalSeconds, cost, bound,
            cost == 0 ? 0 : (cost - bound) / cost * 100, process.PeakWorkingSet64 / 1048576.0);
    }

    public string Text() => string.Create(CultureInfo.InvariantCulture,
        $"{Name,-18}{Pieces,7}{Status,11}{FirstPlanMs,10:0}{Seconds,9:0.00}{Cost,11:0.00}{Bound,11:0.00}{GapPercent,8:0.00}{PeakMegabytes,16:0}");
}
