using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Documents;

/// <summary>Nobody mends more faults at a time than these.</summary>
internal static class FaultCap
{
    private const int Most = 100;

    /// <summary>Each fault once, the first hundred; one more says how many are left out.</summary>
    public static ImmutableArray<Fault> Of(IEnumerable<Fault> faults)
    {
        var all = faults.Distinct().ToList();
        return all.Count <= Most
            ? [.. all]
            : [.. all.Take(Most), new("", $"and {all.Count - Most} more", "faults are not listed: mend these first")];
    }
}
