using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making;

/// <summary>Plans the work between the last cut and the finished piece.</summary>
public static class WorkPlanner
{
    /// <summary>Returns the plan. The same piece and choices give the same plan.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="choices">What the builder decides.</param>
    public static WorkPlan Of(Piece piece, WorkChoices choices) =>
        WorkMerge.Of(piece, [], AssemblyOrder.Of(piece, choices), [], null, []);
}
