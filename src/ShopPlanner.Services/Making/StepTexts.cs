using System.Collections.Immutable;

namespace ShopPlanner.Services.Making;

/// <summary>What a builder wrote about a step, as typed.</summary>
/// <param name="ProjectId">The project.</param>
/// <param name="StepId">The step.</param>
/// <param name="Title">A few words; empty for the plan's.</param>
/// <param name="Says">What to do, a line each; empty for the plan's.</param>
/// <param name="Note">Free text.</param>
/// <param name="Measured">Sizes of doors' openings, by <c>width 1</c>, <c>height 1</c> and so on.</param>
/// <param name="Version">Of the work when it was read.</param>
public sealed record StepTexts(
    Guid ProjectId,
    string StepId,
    string Title,
    string Says,
    string Note,
    ImmutableSortedDictionary<string, string> Measured,
    int Version
)
{
    /// <summary>How long it took; empty where that is not logged.</summary>
    public string Took { get; init; } = "";
}
