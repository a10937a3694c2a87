using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>How a piece goes together.</summary>
/// <param name="Steps">Of the phases assembly, fitting and in place, each after all that its <c>After</c> names.</param>
/// <param name="Subassemblies">Units that are put together by themselves, those alike told once, in the order of their
/// making.</param>
/// <param name="Findings">What no order brings together, and what is hard to reach.</param>
public sealed record AssemblyPlan(
    ImmutableArray<WorkStep> Steps,
    ImmutableArray<Subassembly> Subassemblies,
    ImmutableArray<WorkFinding> Findings
);
