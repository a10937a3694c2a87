using System.Diagnostics;
using System.Globalization;
using ShopPlanner.Cutting;

namespace ShopPlanner.Benchmarks;

/// <summary>What came of planning one job.</summary>
/// <param name="Sizes">Different parts.</param>
/// <param name="FirstPlanMs">Until a plan with every piece was there.</param>
/// <param name="EarlyGapPercent">Of the best known after one second of this search; null where no whole plan was.</param>
/// <param name="PeakMegabytes">The most memory the program has held so far, earlier jobs included.</param>
public sealed record JobRow(
    string Name,
    int Pieces,
    int Sizes,
    string Status,
    double FirstPlanMs,
    double Seconds,
    decimal Cost,
    decimal Bound,
    decimal? EarlyGapPercent,
    decimal GapPercent,
    double PeakMegabytes
)
{
    public const string Heading =
        "job                pieces  sizes     status  first ms  total s       cost      bound  gap % 1 s   gap %  peak MB so far";

    public static JobRow Of(string name, CutRequest request, CutPlan plan, Milestones heard)
    {
        using var process = Process.GetCurrentProcess();
        var total = heard.Elapsed;
        var gap = Milestones.GapPercent(plan.Cost.Amount, plan.CostLowerBound.Amount);
        return new(
            name,
            request.Parts.Sum(part => part.Quantity),
            request.Parts.Length,
            plan.Status.ToString(),
            (heard.FirstPlan ?? total).TotalMilliseconds,
            total.TotalSeconds,
            plan.Cost.Amount,
            plan.CostLowerBound.Amount,
            Milestones.IsEarly(total) ? gap : heard.EarlyGapPercent,
            gap,
            process.PeakWorkingSet64 / 1048576.0
        );
    }

    public string Text() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Name, -18}{Pieces, 7}{Sizes, 7}{Status, 11}{FirstPlanMs, 10:0}{Seconds, 9:0.00}{Cost, 11:0.00}{Bound, 11:0.00}"
        ) + Gaps();

    private string Gaps()
    {
        var early = EarlyGapPercent?.ToString("0.00", CultureInfo.InvariantCulture) ?? "no plan";
        return string.Create(CultureInfo.InvariantCulture, $"{early, 11}{GapPercent, 8:0.00}{PeakMegabytes, 16:0}");
    }
}
