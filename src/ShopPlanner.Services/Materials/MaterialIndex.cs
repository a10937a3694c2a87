using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
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
    private readonly IReadOnlyList<StoredMaterial> byName;
    private readonly Dictionary<string, IReadOnlyList<StoredMaterial>> matches = [];

    public MaterialIndex(IReadOnlyCollection<StoredMaterial> materials)
    {
        byId = materials.ToDictionary(material => material.Id);
        byName = [.. materials.OrderBy(material => material.Form).ThenBy(material => material.NameKey, StringComparer.Ordinal)];
        foreach (var material in materials)
            byKey[TextRules.Key(material.Id)] = material;
        foreach (var material in materials)
            byKey[material.NameKey] = material;
    }

    public static async Task<MaterialIndex> LoadAsync(ShopContext db, CancellationToken cancel) =>
        new(await db.Materials.AsNoTracking().ToListAsync(cancel));

    public StoredMaterial this[string id] => byId[id];

    /// <summary>All materials, boards first, by name.</summary>
    public IReadOnlyList<StoredMaterial> All => byName;

    public bool TryFind(string id, out StoredMaterial? material) => byId.TryGetValue(id, out material);

    /// <summary>The only material of that form and true size; null where none or several are.</summary>
    public StoredMaterial? FindSized(StockForm form, Length? thickness, Length? width)
    {
        var alike = byId.Values.Where(one => (one.Form, one.Thickness, one.Width) == (form, thickness, width)).Take(2).ToList();
        return alike.Count == 1 ? alike[0] : null;
    }

    /// <summary>Returns the material that is meant by its id, its name, or words of it that fit no other; null where none or
    /// several are.</summary>
    public StoredMaterial? FindTyped(string text) =>
        FindNamed(text) is { } named ? named
        : Matches(text) is [var only] ? only
        : null;

    /// <summary>Returns all materials that those words fit; all of them where there are no words.</summary>
    public IReadOnlyList<StoredMaterial> FindAll(string text) => text.Trim().Length == 0 ? byName : Matches(text);

    /// <summary>Returns the material with exactly that id or name; null when there is none.</summary>
    public StoredMaterial? FindNamed(string text) => byKey.GetValueOrDefault(TextRules.Key(text));

    /// <summary>Returns what is wrong with a text that <see cref="FindTyped"/> does not find.</summary>
    public Fault FaultOf(string field, string text)
    {
        if (text.Trim().Length == 0)
            return Fault.Of(field, text, "is empty: choose a material");
        var offered = Matches(text).Select(material => material.Name).Take(MaterialMatch.MostOffered + 1).ToList();
        return Fault.Of(
            field,
            text,
            offered.Count is 0 or > MaterialMatch.MostOffered
                ? "isn't in your materials list: choose one from the list, or add your own"
                : $"could be {WordList.AsGiven(offered, "or")}: choose one"
        );
    }

    private IReadOnlyList<StoredMaterial> Matches(string text)
    {
        var key = TextRules.Key(text);
        return matches.TryGetValue(key, out var known)
            ? known
            : matches[key] = MaterialMatch.Find(text, byName, material => material.Name);
    }
}
