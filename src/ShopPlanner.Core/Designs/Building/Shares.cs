using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Divides a clear extent among bays with a part between neighbours, to the last tick.</summary>
internal static class Shares
{
    /// <summary>Clear size of each bay. Equal shares are a whole number of the finest steps of a rule, so that they can be set;
    /// what that leaves over goes to the last of them.</summary>
    /// <param name="clear">The extent to divide.</param>
    /// <param name="between">Thickness of the part between two bays.</param>
    /// <param name="sizes">Wanted sizes; null for an equal share of the rest.</param>
    /// <param name="unit">Sixty-fourths of an inch or tenths of a millimetre.</param>
    public static ImmutableArray<Length> Of(Length clear, Length between, ImmutableArray<Working<Length>?> sizes, LengthUnit unit)
    {
        var free = sizes.Count(one => one is null);
        var rest = clear.Ticks - (between.Ticks * (sizes.Length - 1)) - sizes.Sum(one => one?.Value.Ticks ?? 0);
        var given = 0;
        return [.. sizes.Select(one => one?.Value ?? Length.FromTicks(Share(rest, free, given++, Step(unit))))];
    }

    /// <summary>The finest step of a rule, in ticks.</summary>
    public static long Step(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Length.TicksPerInch / 64 : Length.TicksPerMillimetre / 10;

    private static long Share(long rest, int free, int i, long step)
    {
        var share = rest / free / step * step;
        return i < free - 1 ? share : rest - (share * (free - 1));
    }
}
