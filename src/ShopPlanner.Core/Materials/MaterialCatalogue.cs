using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Materials;

/// <summary>The woods, sheets and sizes that are known, found by id or by the name the trade uses.</summary>
public static class MaterialCatalogue
{
    private static readonly FrozenDictionary<string, Species> SpeciesById = SpeciesList.All.ToFrozenDictionary(s => s.Id);
    private static readonly FrozenDictionary<string, SheetGood> SheetsById = SheetList.All.ToFrozenDictionary(s => s.Id);

    /// <summary>All woods.</summary>
    public static ImmutableArray<Species> Species => SpeciesList.All;

    /// <summary>All sheet goods.</summary>
    public static ImmutableArray<SheetGood> SheetGoods => SheetList.All;

    /// <summary>What a home-improvement store stocks as a rule: fills a new shop's list of materials.</summary>
    public static ImmutableArray<StockMaterial> StoreMaterials => StoreList.All;

    /// <summary>The wood with this id.</summary>
    public static bool TryFindSpecies(string id, [NotNullWhen(true)] out Species? species) =>
        SpeciesById.TryGetValue(id, out species);

    /// <summary>The sheet with this id.</summary>
    public static bool TryFindSheet(string id, [NotNullWhen(true)] out SheetGood? sheet) => SheetsById.TryGetValue(id, out sheet);

    /// <summary>The actual size of a board known by its nominal section.</summary>
    /// <param name="nominal">Thickness by width in inches: <c>1x3</c>, <c>2 x 4</c>, <c>5/4×6</c>.</param>
    /// <param name="kind">Softwood or hardwood.</param>
    /// <param name="section">Dry and planed; null when no such size is made.</param>
    public static bool TryFindSection(string nominal, WoodKind kind, [NotNullWhen(true)] out BoardSection? section)
    {
        section = null;
        var sides = nominal.Replace('×', 'x').Replace('X', 'x').Split('x');
        if (sides.Length != 2)
            return false;
        var thickness = LengthText.ParsePositive(sides[0], LengthUnit.Inch);
        var width = LengthText.ParsePositive(sides[1], LengthUnit.Inch);
        if (!thickness.Ok || !width.Ok)
            return false;
        var name = sides[0].Trim() + "x" + sides[1].Trim();
        section =
            kind == WoodKind.Softwood
                ? SoftwoodSizes.Section(name, thickness.Value, width.Value)
                : HardwoodSizes.Section(name, thickness.Value, width.Value);
        return section is not null;
    }
}
