using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Materials;

/// <summary>Least and greatest size allowed.</summary>
/// <param name="Least">No smaller than this.</param>
/// <param name="Greatest">No larger than this.</param>
public readonly record struct SizeRange(Length Least, Length Greatest);

/// <summary>How far a new sheet may be off and still be as ordered.</summary>
public static class SheetTolerances
{
    private static readonly Length ThirtySecond = Length.FromInches(0, 1, 32);
    private static readonly Length SixtyFourth = Length.FromInches(0, 1, 64);

    /// <summary>Unsanded plywood: 1/32 in either way up to 13/16 in, 5 % above; at 9 % moisture content (PS 1, quoted).</summary>
    public static SizeRange UnsandedPlywood(Length thickness) =>
        Around(thickness, thickness <= Length.FromInches(0, 13, 16) ? ThirtySecond : Percent(thickness, 5));

    /// <summary>Sanded plywood: 1/64 in either way up to 3/4 in, 3 % above (PS 1-19, quoted).</summary>
    public static SizeRange SandedPlywood(Length thickness) =>
        Around(thickness, thickness <= Length.FromInches(0, 3, 4) ? SixtyFourth : Percent(thickness, 3));

    /// <summary>Hardwood plywood: no thicker, up to 3/64 in thinner (HP-1, quoted by a trade magazine).</summary>
    public static SizeRange HardwoodPlywood(Length thickness) => new(thickness - Length.FromInches(0, 3, 64), thickness);

    /// <summary>MDF: 0.125 mm either way (ANSI A208.2, quoted).</summary>
    public static SizeRange Mdf(Length thickness) => Around(thickness, Length.FromMillimetres(0.125m));

    /// <summary>A plywood sheet's length or width: no longer, up to 1/16 in shorter (PS 1-19, quoted).</summary>
    public static SizeRange PlywoodSide(Length side) => new(side - Length.FromInches(0, 1, 16), side);

    /// <summary>An MDF sheet's length or width: 2 mm either way (ANSI A208.2, quoted).</summary>
    public static SizeRange MdfSide(Length side) => Around(side, Length.FromMillimetres(2));

    /// <summary>How far a plywood sheet may be out of square: 1/64 in for each foot of its longest edge (PS 1-19,
    /// quoted).</summary>
    public static Length PlywoodOutOfSquare(Length longestEdge) =>
        Length.FromTicks(longestEdge.Ticks * SixtyFourth.Ticks / Length.TicksPerFoot);

    /// <summary>How far a plywood edge may stray from a straight line, corner to corner (PS 1-19, quoted).</summary>
    public static readonly Length PlywoodEdgeStraightness = Length.FromInches(0, 1, 16);

    private static SizeRange Around(Length size, Length by) => new(size - by, size + by);

    private static Length Percent(Length size, int percent) => Length.FromTicks(size.Ticks * percent / 100);
}
