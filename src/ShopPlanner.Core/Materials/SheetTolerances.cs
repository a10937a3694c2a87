using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Materials;

/// <summary>Least and greatest size allowed.</summary>
/// <param name="Least">No smaller than this.</param>
/// <param name="Greatest">No larger than this.</param>
public readonly record struct SizeRange(Length Least, Length Greatest);

/// <summary>How far a new sheet may be off and still be as ordered.</summary>
public static class SheetTolerances
{
    /// <summary>Hardwood plywood: no thicker, up to 3/64 in thinner (HP-1, quoted by a trade magazine).</summary>
    public static SizeRange HardwoodPlywood(Length thickness) => new(thickness - Length.FromInches(0, 3, 64), thickness);

    /// <summary>MDF: 0.125 mm either way (ANSI A208.2, quoted).</summary>
    public static SizeRange Mdf(Length thickness) => Around(thickness, Length.FromMillimetres(0.125m));

    private static SizeRange Around(Length size, Length by) => new(size - by, size + by);
}
