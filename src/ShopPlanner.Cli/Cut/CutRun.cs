using System.Globalization;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cli.Cut;

/// <summary>One run of the command: read, plan, write.</summary>
internal static class CutRun
{
    /// <summary>The exit status.</summary>
    public static int Run(string from, string? to, double? seconds)
    {
        var target = TextOutput.At(to, "plan", from, "request");
        if (Read(from) is not { } request)
            return ExitStatus.Refused;
        if (seconds is { } given)
            request = request with { Limits = new CutLimits(given) };
        var plan = Plan(request);
        if (!Passes(request, plan))
            return ExitStatus.Failed;
        target.Write(CutPlanJson.Write(plan));
        LiveLine.Say(Summary(plan) + "; " + Beyond(PlanMeasures.Of(request, plan)));
        return plan.Status == PlanStatus.Incomplete ? ExitStatus.Incomplete : ExitStatus.Done;
    }

    // Nobody should cut by a plan that fails our own check.
    private static bool Passes(CutRequest request, CutPlan plan)
    {
        var faults = PlanVerifier.Check(request, plan);
        if (faults.IsEmpty)
            return true;
        Complaint.Print("the plan failed its own check, so nothing was written; please report this with the request:");
        foreach (var fault in faults)
            Complaint.Print(fault.ToString());
        return false;
    }

    private static CutRequest? Read(string from)
    {
        var (request, faults) = DocumentInput.Read(from, "request", CutRequestJson.Read);
        foreach (var fault in faults)
            Complaint.Print(fault.ToString());
        return request;
    }

    /// <summary>Plans a request, shown while a person watches.</summary>
    public static CutPlan Plan(CutRequest request) => LiveLine.While(request, Plan);

    private static CutPlan Plan(CutRequest request, Action<SearchProgress>? progress)
    {
        using var interrupt = new Interrupt();
        return CutPlanner.Plan(
            request,
            new SearchControl
            {
                Time = TimeSpan.FromSeconds(request.Limits.Seconds),
                Cancel = interrupt.Token,
                Progress = progress,
            }
        );
    }

    private static string Summary(CutPlan plan) =>
        plan.Status switch
        {
            PlanStatus.Proven => $"cost {plan.Cost}: proven cheapest",
            PlanStatus.BestFound => $"cost {plan.Cost}: best found; no plan costs less than {plan.CostLowerBound}",
            _ => string.Create(
                CultureInfo.InvariantCulture,
                $"cost {plan.Cost}, but {plan.Unplaced.Sum(part => (long)part.Quantity)} pieces are not in it: see \"unplaced\""
            ),
        };

    private static string Beyond(PlanMeasures measures) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{measures.FromBin} from rack and bin, {measures.NewStock} new, {measures.Kept} offcuts to keep, "
                + $"{measures.Cuts} cuts, {measures.SettingChanges} fence and stop changes"
        );
}
