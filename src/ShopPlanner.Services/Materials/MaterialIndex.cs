using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Materials;

/// <summary>Finds a material by its id or by what people call it.</summary>
internal sealed class MaterialIndex
{
    private readonly Dictionary<string, StoredMaterial> byKey = [];
    private readonly Dictionary<string, StoredMaterial> byId;

    public MaterialIndex(IReadOnlyCollection<StoredMaterial> materials)
    {
        byId = materials.ToDictionary(material => material.Id);
        foreach (var material in materials)
            byKey[TextRules.Key(material.Id)] = material;
        foreach (var material in materials)
            byKey[material.NameKey] = material;
    }

    public static async Task<MaterialIndex> LoadAsync(ShopContext db, CancellationToken cancel) =>
        new(await db.Materials.AsNoTracking().ToListAsync(cancel));

    public StoredMaterial this[string id] => byId[id];

    public bool TryFind(string id, out StoredMaterial? material) => byId.TryGetValue(id, out material);

    /// <summary>The only material of that form and true size; null where none or several are.</summary>
    public StoredMaterial? FindSized(StockForm form, Length? thickness, Length? width)
    {
        var alike = byId.Values.Where(one => (one.Form, one.Thickness, one.Width) == (form, thickness, width)).Take(2).ToList();
        return alike.Count == 1 ? alike[0] : null;
    }

    /// <summary>Null when nothing is called so.</summary>
    public StoredMaterial? FindTyped(string text) => byKey.GetValueOrDefault(TextRules.Key(text));
}
