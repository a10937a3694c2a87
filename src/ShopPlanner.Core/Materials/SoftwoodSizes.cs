using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Materials;

/// <summary>A softwood size as named and as dressed.</summary>
/// <param name="Nominal">What it is called, as a length: 1 in for a 1x.</param>
/// <param name="Dry">Least dressed size at no more than 19% moisture content.</param>
/// <param name="Green">Least dressed size unseasoned.</param>
public sealed record NominalSize(Length Nominal, Length Dry, Length Green);

/// <summary>
/// Softwood lumber, nominal to least dressed size. The standard's sizes are minimums, so measured stock may be larger; a
/// measured size always goes before these.
/// </summary>
public static class SoftwoodSizes
{
    /// <summary>Where the figures come from.</summary>
    public static readonly SourceNote Source = new(
        "PS 20 American Softwood Lumber Standard, table of dressed sizes",
        Certainty.Quoted
    );

    /// <summary>Thickness of boards (under 2 in nominal) and of dimension lumber.</summary>
    public static readonly ImmutableArray<NominalSize> Thicknesses =
    [
        Of("3/8", "5/16", "11/32"),
        Of("1/2", "7/16", "15/32"),
        Of("5/8", "9/16", "19/32"),
        Of("3/4", "5/8", "11/16"),
        Of("1", "3/4", "25/32"),
        Of("1 1/4", "1", "1 1/32"),
        Of("1 1/2", "1 1/4", "1 9/32"),
        Of("2", "1 1/2", "1 9/16"),
        Of("2 1/2", "2", "2 1/16"),
        Of("3", "2 1/2", "2 9/16"),
        Of("3 1/2", "3", "3 1/16"),
        Of("4", "3 1/2", "3 9/16"),
        Of("4 1/2", "4", "4 1/16"),
    ];

    /// <summary>Width of boards and of dimension lumber.</summary>
    public static readonly ImmutableArray<NominalSize> Widths =
    [
        Of("2", "1 1/2", "1 9/16"),
        Of("3", "2 1/2", "2 9/16"),
        Of("4", "3 1/2", "3 9/16"),
        Of("5", "4 1/2", "4 5/8"),
        Of("6", "5 1/2", "5 5/8"),
        Of("7", "6 1/2", "6 5/8"),
        Of("8", "7 1/4", "7 1/2"),
        Of("9", "8 1/4", "8 1/2"),
        Of("10", "9 1/4", "9 1/2"),
        Of("11", "10 1/4", "10 1/2"),
        Of("12", "11 1/4", "11 1/2"),
        Of("14", "13 1/4", "13 1/2"),
        Of("16", "15 1/4", "15 1/2"),
    ];

    /// <summary>The dressed size of a timber's side, 5 in nominal and more: 1/2 in off a 5 or 6, 3/4 in off a 7 to 15, 1 in off
    /// a 16 and more; unseasoned 1/2 in off any. Null for less than 5 in.</summary>
    public static NominalSize? Timber(Length nominal)
    {
        if (nominal < Length.FromInches(5))
            return null;
        var off =
            nominal < Length.FromInches(7) ? Length.FromInches(0, 1, 2)
            : nominal < Length.FromInches(16) ? Length.FromInches(0, 3, 4)
            : Length.FromInches(1);
        return new(nominal, nominal - off, nominal - Length.FromInches(0, 1, 2));
    }

    internal static BoardSection? Section(string name, Length thickness, Length width)
    {
        var (across, along) =
            thickness < Length.FromInches(5)
                ? (Find(Thicknesses, thickness), Find(Widths, width))
                : (Timber(thickness), Timber(width));
        return across is null || along is null ? null : new(name, WoodKind.Softwood, across.Dry, along.Dry, Source);
    }

    private static NominalSize? Find(ImmutableArray<NominalSize> sizes, Length nominal) =>
        sizes.FirstOrDefault(size => size.Nominal == nominal);

    private static NominalSize Of(string nominal, string dry, string green) =>
        new(Inches.Of(nominal), Inches.Of(dry), Inches.Of(green));
}
