namespace ShopPlanner.Core.Materials;

/// <summary>Under which name the properties of a store's material stand in the tables of woods and panels.</summary>
public static class StoreProperties
{
    /// <summary>The wood, or the kind of sheet, of a material that comes with the program; null for the user's own.</summary>
    /// <param name="materialId">E.g. <c>pine-1x3</c>.</param>
    public static string? Of(string materialId)
    {
        if (MaterialCatalogue.StoreMaterials.FirstOrDefault(one => one.Id == materialId) is not { } material)
            return null;
        if (material.SpeciesId is { } species)
            return species;
        return material.SheetGoodId is { } sheet && MaterialCatalogue.TryFindSheet(sheet, out var good) ? Of(good.Kind) : null;
    }

    /// <summary>The same for what people call a material or a wood; null where that is no name that is known.</summary>
    /// <param name="name">The id or the whole name of a store's material, or of a wood.</param>
    public static string? OfNamed(string name)
    {
        bool IsIt(string id, string called) =>
            string.Equals(id, name, StringComparison.OrdinalIgnoreCase)
            || string.Equals(called, name, StringComparison.OrdinalIgnoreCase);
        if (MaterialCatalogue.StoreMaterials.FirstOrDefault(one => IsIt(one.Id, one.Name)) is { } material)
            return Of(material.Id);
        return MaterialCatalogue.Species.FirstOrDefault(one => IsIt(one.Id, one.Name))?.Id;
    }

    private static string Of(SheetKind kind) =>
        kind switch
        {
            SheetKind.HardwoodPlywood => "plywood-hardwood-faced",
            SheetKind.SoftwoodPlywood => "plywood-douglas-fir",
            SheetKind.Mdf => "mdf",
            SheetKind.Particleboard => "particleboard",
            _ => "plywood",
        };
}
