using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Together;

/// <summary>Parts of a request that belong together: those of one project.</summary>
/// <param name="Name">What names the group; unlike all others.</param>
/// <param name="Parts">Ids of its parts. Every part of the request is in one group.</param>
public sealed record PlanGroup(string Name, ImmutableHashSet<string> Parts);

/// <summary>A group planned by itself.</summary>
/// <param name="Group">The group's name.</param>
/// <param name="Request">Its parts, and the stock that the groups before it left.</param>
/// <param name="Plan">The answer.</param>
public sealed record AlonePlan(string Group, CutRequest Request, CutPlan Plan);

/// <summary>Several groups in one plan, beside what each of them comes to by itself.</summary>
/// <param name="Plan">All groups together.</param>
/// <param name="Alone">Each group by itself, in order: a group takes nothing of the stock on hand that one before it cuts up.
/// So all of them can be cut side by side, and together they are a plan too.</param>
public sealed record JointPlan(CutPlan Plan, ImmutableArray<AlonePlan> Alone);
