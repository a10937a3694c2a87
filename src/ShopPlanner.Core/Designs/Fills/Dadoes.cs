using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>How deep a part may be let into what bounds its bay.</summary>
internal static class Dadoes
{
    /// <summary>The depth asked for; nothing where there is nothing to let it into. More than half of what takes it is a
    /// fault.</summary>
    public static Length Depth(NodeReader members, IReadOnlyList<Draft> taking, Axis axis, Length asked)
    {
        if (taking.Count == 0 || !asked.IsPositive)
            return Length.Zero;
        var thinnest = taking.MinBy(one => one.Box.Extent(axis).Ticks)!;
        var most = Length.FromTicks(thinnest.Box.Extent(axis).Ticks / 2);
        if (asked > most)
            members.Fail(
                "let_in",
                LengthFormat.WithUnit(asked, members.Unit),
                $"is more than half of the {thinnest.Name.ToLowerInvariant()}: at most "
                    + LengthFormat.WithUnit(RuleMarks.Down(most, members.Unit), members.Unit)
            );
        return asked;
    }
}
