using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>The tint of a role's material: that of what a store stocks under its id, of its wood or sheet, or a pale one of our
/// own.</summary>
public static class RoleTint
{
    // Our own choice: a board a little warmer than a sheet.
    private const string Board = "#EAD7B5";
    private const string Sheet = "#EADFC8";

    /// <summary><c>#RRGGBB</c>.</summary>
    public static string Of(RoleMaterial material)
    {
        ArgumentNullException.ThrowIfNull(material);
        if (MaterialCatalogue.StoreMaterials.FirstOrDefault(one => one.Id == material.Id) is { } stocked)
            return stocked.Tint;
        if (material.Species is { } wood && MaterialCatalogue.TryFindSpecies(wood, out var species))
            return species.Tint;
        if (material.Species is { } sheet && MaterialCatalogue.TryFindSheet(sheet, out var good))
            return good.Tint;
        return material.Form == MaterialForm.Board ? Board : Sheet;
    }
}
