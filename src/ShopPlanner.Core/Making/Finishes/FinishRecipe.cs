using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What a layer of a finish is for.</summary>
internal enum LayerRole
{
    /// <summary>Color in the wood.</summary>
    Stain,

    /// <summary>A thin coat that keeps what is below and what is above apart.</summary>
    Seal,

    /// <summary>The ground for paint.</summary>
    Prime,

    /// <summary>The finish itself.</summary>
    Coat,
}

/// <summary>One product of a finish.</summary>
/// <param name="Product">The product.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Coats">How many.</param>
internal sealed record FinishLayer(FinishProduct Product, LayerRole Role, int Coats);

/// <summary>A finish from the wood outward.</summary>
/// <param name="Id">As chosen: products joined by a plus sign, <c>stain+clear</c>.</param>
/// <param name="Layers">From the wood outward; empty where it stays bare.</param>
internal sealed record FinishRecipe(string Id, ImmutableArray<FinishLayer> Layers)
{
    public static readonly FinishRecipe Bare = new(FinishChoices.None, []);

    public bool IsBare => Layers.IsEmpty;

    public bool HidesWood => Layers.Any(layer => layer.Product.HidesWood);

    public bool HasStain => Layers.Any(layer => layer.Role == LayerRole.Stain);

    /// <summary>Whether it is a clear film, under which open pores show as dimples.</summary>
    public bool HasClearFilm => !HidesWood && Coats.FirstOrDefault() is { Product.IsFilm: true };

    /// <summary>Layers of the finish itself.</summary>
    public IEnumerable<FinishLayer> Coats => Layers.Where(layer => layer.Role == LayerRole.Coat);

    /// <summary>Whether water is the first thing to wet the bare wood, and the wood stays in sight.</summary>
    public bool WetsBareWood => !HidesWood && Layers is [{ Product.Base: FinishBase.Water }, ..];

    /// <summary>The same for a piece: sealed where grain filler lies below a film, and without shellac outdoors, where it turns
    /// white.</summary>
    public FinishRecipe For(bool isOutdoors, bool hasOpenPores)
    {
        if (isOutdoors)
            return this with { Layers = Layers.RemoveAll(layer => layer.Role == LayerRole.Seal) };
        var first = Coats.FirstOrDefault();
        var needsSeal = hasOpenPores && HasClearFilm && first!.Product.Id != "shellac";
        return needsSeal && Layers.All(layer => layer.Role != LayerRole.Seal)
            ? this with
            {
                Layers = Layers.Insert(Layers.IndexOf(first!), Seal),
            }
            : this;
    }

    private static FinishLayer Seal => new(Finishing.Coats.Product("shellac"), LayerRole.Seal, 1);

    /// <summary>Builds it from products that hold on each other: a primer under paint, a seal between stain and film.</summary>
    /// <param name="id">As chosen.</param>
    /// <param name="products">From the wood outward.</param>
    /// <param name="coats">Of the finish itself; null for the usual number.</param>
    public static FinishRecipe Of(string id, ImmutableArray<FinishProduct> products, int? coats)
    {
        var layers = new List<FinishLayer>();
        var counted = Counted(products);
        foreach (var product in products)
        {
            var below = layers.LastOrDefault();
            if (product is { HidesWood: true, OnlyPrepares: false } && layers.TrueForAll(layer => !layer.Product.HidesWood))
                layers.Add(new(Finishing.Coats.Product("primer"), LayerRole.Prime, 1));
            else if (below is { Role: LayerRole.Stain } && product is { IsFilm: true, HidesWood: false, Id: not "shellac" })
                layers.Add(Seal);
            var usual = product.OnlyPrepares || product.Id == "stain" ? 1 : product.Coats;
            layers.Add(new(product, Role(product), product == counted ? coats ?? usual : usual));
        }

        return new(id, [.. layers]);
    }

    // A number of coats is of the film, or of what is last.
    private static FinishProduct? Counted(ImmutableArray<FinishProduct> products) =>
        products.LastOrDefault(product => product is { IsFilm: true, OnlyPrepares: false }) ?? products.LastOrDefault();

    private static LayerRole Role(FinishProduct product) =>
        product switch
        {
            { Id: "stain" } => LayerRole.Stain,
            { OnlyPrepares: true } => LayerRole.Prime,
            _ => LayerRole.Coat,
        };
}
