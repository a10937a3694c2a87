using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Storage.Rows;

internal sealed class StoredMaterial : IVersioned
{
    public required string Id { get; init; }

    public required string Name { get; set; }

    /// <summary>The name folded for comparing; no two materials share one.</summary>
    public required string NameKey { get; set; }

    public StockForm Form { get; set; }

    public Length Thickness { get; set; }

    public Length? Width { get; set; }

    public required string Tint { get; set; }

    public required string Source { get; set; }

    public bool Own { get; init; }

    public int Version { get; set; }
}
