using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Materials;

/// <summary>How stock thinner than an inch is counted in board feet. Sellers differ, so this is a setting.</summary>
public enum ThinStock
{
    /// <summary>As an inch, so by the square foot of face (Noyes, Handwork in Wood, 1910; hardwood rules, from memory).</summary>
    AsOneInch,

    /// <summary>By its real thickness (Carpentry and Woodwork, 1910s).</summary>
    RealThickness,
}

/// <summary>Board measure: a board foot is 144 cubic inches.</summary>
public static class BoardMeasure
{
    private static readonly Length Inch = Length.FromInches(1);

    /// <summary>The volume that is paid for.</summary>
    /// <param name="thickness">The thickness it is sold by: nominal for most stock.</param>
    /// <param name="width">Across the grain.</param>
    /// <param name="length">Along the grain.</param>
    /// <param name="pieces">How many alike.</param>
    /// <param name="thin">How stock under one inch counts.</param>
    public static Volume Counted(Length thickness, Length width, Length length, int pieces, ThinStock thin) =>
        Area.Of(width, length) * (thin == ThinStock.AsOneInch ? Length.Max(thickness, Inch) : thickness) * pieces;
}
