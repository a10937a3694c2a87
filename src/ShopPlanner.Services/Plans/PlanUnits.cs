using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Plans;

/// <summary>In which unit a plan over projects of different units speaks: a part in its project's, so that no size of a
/// millimetre project is shown as a rounded fraction of an inch.</summary>
public static class PlanUnits
{
    /// <summary>The unit of a part: its project's.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="part">The part's id in the request.</param>
    public static LengthUnit UnitOfPart(this PlanView plan, string part)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Units.TryGetValue(plan.Parts[part].ProjectId, out var unit) ? unit : plan.Request.Unit;
    }

    /// <summary>The unit of a layout: that of its parts where they agree, else the plan's.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layoutIndex">Index into its layouts.</param>
    public static LengthUnit UnitOfLayout(this PlanView plan, int layoutIndex)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var units = plan.Plan.Layouts[layoutIndex].Pieces.Select(piece => plan.UnitOfPart(piece.Part)).Distinct().ToList();
        return units.Count == 1 ? units[0] : plan.Request.Unit;
    }
}
