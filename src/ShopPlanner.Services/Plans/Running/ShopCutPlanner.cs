using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Services.Plans.Running;

/// <summary>The planner and, sharing no code with it, the verifier.</summary>
internal sealed class ShopCutPlanner : ICutPlanner
{
    public string Version => CutPlanner.Version;

    public CutPlan Plan(CutRequest request, SearchControl control) => CutPlanner.Plan(request, control);

    public ImmutableArray<Fault> Check(CutRequest request, CutPlan plan) => PlanVerifier.Check(request, plan);
}
