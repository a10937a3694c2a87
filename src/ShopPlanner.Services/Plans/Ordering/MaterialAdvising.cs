using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>Finds the materials of an order that its stores do not sell, and those that may be bought for less.</summary>
internal sealed class MaterialAdvising
{
    // Less than this is within what the estimate leaves out (our rule).
    private const decimal WorthSaying = 0.10m;

    private readonly PlanOrder order;
    private readonly Snapshot shop;
    private readonly PurchaseEstimate estimate;
    private readonly ILookup<string, StoredPrice> prices;
    private readonly Dictionary<string, string> families;

    private MaterialAdvising(PlanOrder order, Snapshot shop)
    {
        (this.order, this.shop) = (order, shop);
        estimate = new PurchaseEstimate(SawReader.Read(shop.Shop, []).Saw.Kerf);
        families = shop.Materials.All.ToDictionary(material => material.Id, material => MaterialFamily.Of(material.Name));
        prices = RequestStock.ForSale(order, shop, families.Keys.ToHashSet()).ToLookup(price => price.MaterialId);
    }

    public static MaterialAdvice Of(PlanOrder order, Snapshot shop)
    {
        var advising = new MaterialAdvising(order, shop);
        var needs = advising.Needs();
        return new MaterialAdvice(
            [.. needs.Where(need => !advising.prices[need.Material.Id].Any()).Select(advising.Unsold)],
            [.. needs.Select(advising.Cheaper).OfType<CheaperMaterial>()]
        );
    }

    private List<MaterialNeed> Needs()
    {
        var wanted = order.Parts is { } ids ? ids.ToHashSet() : null;
        var parts =
            from id in order.Projects.Distinct()
            where shop.Projects.ContainsKey(id)
            from row in shop.Rows(shop.Projects[id])
            where row.Part is not null && (wanted is null || wanted.Contains(row.Texts.Id))
            select (Project: id, Part: row.Part!);
        return
        [
            .. parts
                .GroupBy(one => one.Part.Material)
                .Select(one => new MaterialNeed(
                    shop.Materials[one.Key],
                    [.. one.Select(pair => pair.Part)],
                    [.. one.Select(pair => pair.Project).Distinct()]
                ))
                .OrderBy(need => need.Material.Name, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private UnsoldMaterial Unsold(MaterialNeed need)
    {
        var price = shop.Prices.Values.FirstOrDefault(price => price.InStock && price.MaterialId == need.Material.Id);
        var seller = price is null ? null : shop.Stores[price.StoreId];
        return new UnsoldMaterial(
            need.Material.Name,
            need.Parts.Sum(part => part.Quantity),
            shop.OnHand.Values.Any(piece => IsUsed(piece.Piece) && piece.Piece.MaterialId == need.Material.Id),
            seller?.Name,
            seller?.Id,
            need.Projects
        );
    }

    private bool IsUsed(StoredPiece piece) => piece.Place == Common.StockPlace.Rack ? order.UseRack : order.UseBin;

    private CheaperMaterial? Cheaper(MaterialNeed need)
    {
        if (estimate.Of(need, need.Material, prices[need.Material.Id]) is not { } now || now.Cost == Money.Zero)
            return null;
        var best = shop
            .Materials.All.Where(other => other.Id != need.Material.Id && IsAlike(need.Material, other))
            .Select(other => (Other: other, Bought: estimate.Of(need, other, prices[other.Id])))
            .Where(one => one.Bought is { } bought && bought.Cost.Amount <= now.Cost.Amount * (1 - WorthSaying))
            .OrderBy(one => one.Bought!.Cost)
            .ThenBy(one => one.Other.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return best.Bought is null
            ? null
            : new CheaperMaterial(
                need.Material.Name,
                now.Cost,
                best.Other.Name,
                best.Bought.Cost,
                best.Bought.Strips,
                need.Projects
            );
    }

    // The same wood, as thick: another section of it, or a sheet that begins with its name.
    private bool IsAlike(StoredMaterial material, StoredMaterial other)
    {
        var (family, of) = (families[material.Id], families[other.Id]);
        return (material.Form, other.Form) switch
        {
            (StockForm.Board, StockForm.Board) => family == of && material.Thickness == other.Thickness,
            (StockForm.Board, StockForm.Sheet) => of.StartsWith(family + " ", StringComparison.Ordinal)
                && MaterialFamily.IsAsThick(material.Thickness, other.Thickness),
            (StockForm.Sheet, StockForm.Sheet) => family == of && MaterialFamily.IsAsThick(material.Thickness, other.Thickness),
            _ => false,
        };
    }
}
