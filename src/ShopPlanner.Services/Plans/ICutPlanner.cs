using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Plans;

/// <summary>The planner as the services need it, so that tests can put a quick one in its place.</summary>
internal interface ICutPlanner
{
    /// <summary>Names the planner's version in stored plans.</summary>
    string Version { get; }

    /// <summary>Plans until the control stops it; never throws for being stopped.</summary>
    CutPlan Plan(CutRequest request, SearchControl control);

    /// <summary>Checks a plan against its request, independently of how it was made; empty when it can be cut.</summary>
    ImmutableArray<Fault> Check(CutRequest request, CutPlan plan);
}
