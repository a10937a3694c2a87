using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>What may be done at the bench, and where a plan stands by what was done.</summary>
internal static class BenchRules
{
    /// <summary>Null where the device has a name.</summary>
    public static Fault? RefuseDevice(string device) => TextRules.Line("device", device, TextRules.NameCharacters);

    /// <summary>Whether the plan was given up, for another one or for none, while its projects are still there.</summary>
    public static bool IsSuperseded(StoredPlan plan) => plan is { State: PlanState.Withdrawn, WithdrawnWith: null };

    /// <summary>Null where there is such a board or sheet to work on.</summary>
    public static Fault? Refuse(StoredPlan stored, CutPlan plan, int layout, int copy)
    {
        if (stored.State == PlanState.Withdrawn)
            return Fault.Of(
                "plan",
                stored.Name,
                stored.WithdrawnWith is null
                    ? "is canceled: restore it before you cut"
                    : "was canceled when its project was deleted: restore the project from the trash, then mark this again"
            );
        return RefusePlace(plan, layout, copy);
    }

    /// <summary>Null where the plan has such a board or sheet.</summary>
    public static Fault? RefusePlace(CutPlan plan, int layout, int copy)
    {
        if (layout < 0 || layout >= plan.Layouts.Length)
            return new Fault("layout", $"{layout}", "is not a layout of this plan");
        var copies = plan.Layouts[layout].Copies;
        return copy < 1 || copy > copies ? new Fault("copy", $"{copy}", $"is not from 1 to {copies}") : null;
    }

    /// <summary>Where a plan stands.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="finished">Its boards and sheets that are finished.</param>
    /// <param name="begun">Whether any of its cuts is made.</param>
    public static PlanState StateOf(StoredPlan plan, int finished, bool begun) =>
        finished > 0 && finished == plan.Stocks ? PlanState.Cut
        : finished > 0 || begun ? PlanState.Cutting
        : PlanState.Ready;
}
