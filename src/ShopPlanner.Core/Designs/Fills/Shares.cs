using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Divides a clear extent among bays with a part between neighbours, to the last tick.</summary>
internal static class Shares
{
    /// <summary>Clear size of each bay; what equal shares leave over goes to the first ones, a tick each.</summary>
    /// <param name="clear">The extent to divide.</param>
    /// <param name="between">Thickness of the part between two bays.</param>
    /// <param name="sizes">Wanted sizes; null for an equal share of the rest.</param>
    public static ImmutableArray<Length> Of(Length clear, Length between, ImmutableArray<Working<Length>?> sizes)
    {
        var free = sizes.Count(one => one is null);
        var rest = clear.Ticks - (between.Ticks * (sizes.Length - 1)) - sizes.Sum(one => one?.Value.Ticks ?? 0);
        var given = 0;
        return [.. sizes.Select(one => one?.Value ?? Length.FromTicks(Share(rest, free, given++)))];
    }

    private static long Share(long rest, int free, int i) => (rest / free) + (i < rest % free ? 1 : 0);
}
