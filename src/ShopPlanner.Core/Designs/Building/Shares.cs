using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Divides a clear extent among bays with a part between neighbours, to the last tick.</summary>
internal static class Shares
{
    /// <summary>Clear size of each bay. Equal shares are a whole number of the finest steps of a rule, so that they can be set;
    /// what that leaves over is spread a step each, mirrored about the middle, so that shares that face each other are
    /// alike.</summary>
    /// <param name="clear">The extent to divide.</param>
    /// <param name="between">Thickness of the part between two bays.</param>
    /// <param name="sizes">Wanted sizes; null for an equal share of the rest.</param>
    /// <param name="unit">Sixty-fourths of an inch or tenths of a millimetre.</param>
    public static ImmutableArray<Length> Of(Length clear, Length between, ImmutableArray<Working<Length>?> sizes, LengthUnit unit)
    {
        var free = sizes.Count(one => one is null);
        var rest = clear - (between * (sizes.Length - 1)) - sizes.Aggregate(Length.Zero, (sum, one) => sum + Given(one));
        var shares = free == 0 ? [] : Equal(rest, free, unit);
        var given = 0;
        return [.. sizes.Select(one => one?.Value ?? shares[given++])];
    }

    /// <summary>Equal shares, as many as asked for, that come to the whole.</summary>
    public static ImmutableArray<Length> Equal(Length whole, int count, LengthUnit unit)
    {
        var step = Step(unit);
        var each = (long)Math.Floor((decimal)whole.Ticks / count / step) * step;
        var shares = Enumerable.Repeat(each, count).ToArray();
        var over = whole.Ticks - (each * count);
        // The outermost pair first; a pair takes two steps or none.
        for (var i = 0; i < count / 2 && over >= step * 2; i++, over -= step * 2)
            (shares[i], shares[count - 1 - i]) = (each + step, each + step);
        // What is left is less than two steps: the middle one takes it, or the two in the middle take half each.
        shares[count / 2] += count % 2 == 1 ? over : over - (over / 2);
        if (count % 2 == 0)
            shares[(count / 2) - 1] += over / 2;
        return [.. shares.Select(Length.FromTicks)];
    }

    /// <summary>The finest step of a rule, in ticks.</summary>
    public static long Step(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Length.TicksPerInch / 64 : Length.TicksPerMillimetre / 10;

    private static Length Given(Working<Length>? size) => size?.Value ?? Length.Zero;
}
