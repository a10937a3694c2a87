using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>How a piece is finished. Immutable.</summary>
/// <param name="Steps">In an order that can be followed. Those of <see cref="WorkPhase.FinishBefore"/> come after all work on the
/// single parts and before the parts that they handle are joined, those of <see cref="WorkPhase.Finish"/> after assembly and
/// fitting; their <c>After</c> names only steps of this plan.</param>
/// <param name="Amounts">What it takes; null where the piece stays bare.</param>
/// <param name="Findings">What the material or the use does not allow, and what to watch.</param>
public sealed record FinishPlan(ImmutableArray<WorkStep> Steps, FinishAmounts? Amounts, ImmutableArray<WorkFinding> Findings)
{
    /// <summary>How much of each product, with its formula and sources.</summary>
    public ImmutableArray<Working<double>> Volumes { get; init; } = [];
}
