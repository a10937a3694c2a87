using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Totals;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Materials;

/// <summary>The shop's materials as parts are counted by them.</summary>
internal static class CountedMaterials
{
    /// <summary>Returns a material as it is counted.</summary>
    /// <param name="material">The material.</param>
    /// <param name="species">What a design says of its wood; null for what its table says.</param>
    public static CountedMaterial Counted(this StoredMaterial material, string? species = null) =>
        new(material.Name, species ?? StoreProperties.Of(material.Id), material.Form == StockForm.Board, material.Width);
}
