using System.Collections.Immutable;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>What stands beside a plan's documents, so that lists need not open them.</summary>
internal static class PlanHeader
{
    /// <summary>The ids of projects as one text.</summary>
    public static string ListOf(IEnumerable<Guid> projects) => string.Join(' ', projects);

    /// <summary>The ids of such a text.</summary>
    public static ImmutableArray<Guid> Projects(string list) =>
        [.. list.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Guid.Parse)];
}
