using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Doors or drawer fronts of one size side by side in an opening, with gaps at both ends and between them.</summary>
/// <param name="Each">Size of one along the opening, rounded down to the tick.</param>
/// <param name="Places">Near edge of each from the start of the opening; the last one ends exactly at its gap.</param>
/// <param name="Rest">What equal sizes leave over, fewer ticks than there are fronts: it lies in the gaps between them.</param>
public sealed record EqualFronts(Working<Length> Each, ImmutableArray<Length> Places, Length Rest)
{
    /// <summary>Gaps as the trade leaves them.</summary>
    public static readonly SourceNote Gaps = new(
        "Geometry; side gaps of 1/16 in for furniture and 3/32 in for cabinets from a trade forum",
        Certainty.Read
    );

    /// <summary>Shares an opening out.</summary>
    /// <param name="name">What one is called in the result: <c>Door width</c>.</param>
    /// <param name="opening">Clear size.</param>
    /// <param name="count">One or more.</param>
    /// <param name="edge">Gap at each end.</param>
    /// <param name="between">Gap between two.</param>
    public static EqualFronts Of(string name, Working<Length> opening, int count, Working<Length> edge, Working<Length> between)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var free = (opening.Value - (edge.Value * 2) - (between.Value * (count - 1))).Ticks;
        var (size, rest) = (Math.DivRem(free, count).Quotient, free % count);
        var template = Template(count);
        (string Key, Working Input)[] inputs =
        [
            ("opening", opening),
            ("edge", edge),
            ("between", between),
            ("count", Working.Given("Number", count, QuantityKind.Bare, 0)),
            ("gaps", Working.Given("Gaps between", count - 1, QuantityKind.Bare, 0)),
        ];
        var used = inputs.Where(input => template.Contains("{" + input.Key + "}", StringComparison.Ordinal));
        var each = Working.Of(name, Length.FromTicks(size), template, Gaps, [.. used]);
        var places = Enumerable
            .Range(0, count)
            .Select(i => edge.Value + ((each.Value + between.Value) * i) + Share(rest, i, count));
        return new(each, [.. places], Length.FromTicks(rest));
    }

    private static Length Share(long rest, int index, int count) => Length.FromTicks(count == 1 ? 0 : rest * index / (count - 1));

    private static string Template(int count) =>
        count switch
        {
            1 => "{opening} − 2 × {edge}",
            2 => "({opening} − 2 × {edge} − {between}) ÷ 2",
            _ => "({opening} − 2 × {edge} − {gaps} × {between}) ÷ {count}",
        };
}
