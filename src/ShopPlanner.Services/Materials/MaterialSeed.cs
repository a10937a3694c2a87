using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Materials;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Materials;

/// <summary>Fills the list of materials with what stores stock. What is there already stays as it is.</summary>
internal static class MaterialSeed
{
    public static async Task AddMissingAsync(ShopContext db, CancellationToken cancel)
    {
        var known = await db.Materials.Select(material => new { material.Id, material.NameKey }).ToListAsync(cancel);
        var ids = known.Select(material => material.Id).ToHashSet();
        var names = known.Select(material => material.NameKey).ToHashSet();
        var missing = MaterialCatalogue.StoreMaterials.Select(Row).Where(row => !ids.Contains(row.Id) && names.Add(row.NameKey));
        db.Materials.AddRange(missing);
        await db.SaveChangesAsync(cancel);
    }

    private static StoredMaterial Row(StockMaterial material) =>
        new()
        {
            Id = material.Id,
            Name = material.Name,
            NameKey = TextRules.Key(material.Name),
            Form = material.Form == MaterialForm.Sheet ? StockForm.Sheet : StockForm.Board,
            Thickness = material.Thickness,
            Width = material.Width,
            Tint = material.Tint,
            Source = material.Source.Text,
            Own = false,
        };
}
