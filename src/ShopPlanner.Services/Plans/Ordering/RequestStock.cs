using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Together;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage.Rows;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>The stock of a request: what is free in the rack and the bin, then what the chosen stores have.</summary>
internal sealed class RequestStock
{
    private readonly PlanOrder order;
    private readonly Snapshot shop;
    private readonly LengthUnit unit;
    private readonly ImmutableSortedDictionary<string, PlanStockName>.Builder names = ImmutableSortedDictionary.CreateBuilder<
        string,
        PlanStockName
    >(StringComparer.Ordinal);
    private readonly ImmutableSortedDictionary<string, Guid>.Builder pieces = ImmutableSortedDictionary.CreateBuilder<
        string,
        Guid
    >(StringComparer.Ordinal);

    private readonly ImmutableSortedDictionary<string, DateOnly>.Builder seen = ImmutableSortedDictionary.CreateBuilder<
        string,
        DateOnly
    >(StringComparer.Ordinal);

    public RequestStock(PlanOrder order, Snapshot shop, IReadOnlyList<StoredMaterial> materials, Length kerf, LengthUnit unit)
    {
        (this.order, this.shop, this.unit) = (order, shop, unit);
        var wanted = materials.Select(material => material.Id).ToHashSet();
        foreach (var piece in OnHand(wanted).Where(piece => piece.Length > kerf && piece.Width > kerf))
            Add(piece);
        foreach (var price in ForSale(order, shop, wanted))
            Add(price);
    }

    /// <summary>The stock; a sliver that a cut would turn to sawdust whole is none.</summary>
    public List<CutStock> Stocks { get; } = [];

    public ImmutableSortedDictionary<string, PlanStockName> Names => names.ToImmutable();

    public ImmutableSortedDictionary<string, Guid> Pieces => pieces.ToImmutable();

    public ImmutableSortedDictionary<string, DateOnly> Seen => seen.ToImmutable();

    /// <summary>Prices of what the chosen stores have, shortest first.</summary>
    public static IEnumerable<StoredPrice> ForSale(PlanOrder order, Snapshot shop, IReadOnlySet<string> materials) =>
        shop
            .Prices.Values.Where(price =>
                order.Stores.Contains(price.StoreId) && price.InStock && materials.Contains(price.MaterialId)
            )
            .OrderBy(price => price.MaterialId, StringComparer.Ordinal)
            .ThenBy(price => price.Length)
            .ThenBy(price => price.Width)
            .ThenBy(price => price.Id);

    /// <summary>The first cuts that those of the stores make which make any; null where none does. What lies in the rack and the
    /// bin is at home: it is marked an offcut, and neither the store's saw nor the car has to do with it.</summary>
    public static StoreCuts? StoreCuts(PlanOrder order, Snapshot shop, IReadOnlySet<string> materials) =>
        StoreSaw.Of([.. ForSale(order, shop, materials).Select(price => price.StoreId).Distinct().Select(id => shop.Stores[id])]);

    /// <summary>The trips to the stores that sell something of a request, by name.</summary>
    public static ImmutableArray<StoreTrip> Trips(PlanOrder order, Snapshot shop, CutRequest request)
    {
        var wanted = request.Materials.Select(material => material.Id).ToHashSet();
        return
        [
            .. ForSale(order, shop, wanted)
                .GroupBy(price => shop.Stores[price.StoreId])
                .OrderBy(sold => sold.Key.NameKey, StringComparer.Ordinal)
                .Select(sold => new StoreTrip(
                    sold.Key.Name,
                    [.. sold.Select(price => price.Id.ToString())],
                    sold.Key.TripCost,
                    sold.Key.TripMinutes
                )),
        ];
    }

    /// <summary>What a line of a price list is called.</summary>
    public static PlanStockName NameOf(StoredPrice price, Snapshot shop, LengthUnit unit)
    {
        var material = shop.Materials[price.MaterialId];
        var name = $"{material.Name}, {StockWords.Size(price.Length, material.Width ?? price.Width, material.Width, unit)}";
        return new PlanStockName(price.Id.ToString(), name, null, shop.Stores[price.StoreId].Name, material.Tint);
    }

    private IEnumerable<PieceNow> OnHand(HashSet<string> materials) =>
        shop
            .OnHand.Values.Where(piece => piece.Piece.Place == StockPlace.Bin ? order.UseBin : order.UseRack)
            .Where(piece => materials.Contains(piece.Piece.MaterialId))
            .Where(piece => piece.PromisedPlanId is not { } plan || order.Replaces.Contains(plan))
            .OrderBy(piece => piece.Piece.Place)
            .ThenBy(piece => piece.Piece.Tag.Length)
            .ThenBy(piece => piece.Piece.Tag, StringComparer.Ordinal);

    /// <summary>Returns a piece on hand as stock. The format calls all that is on hand an offcut: nothing is paid for it, and
    /// nothing trimmed from it but the edges that are still as bought.</summary>
    public static CutStock StockOf(PieceNow piece) =>
        new(piece.Piece.Tag, piece.Piece.MaterialId, piece.Length, piece.Width, Money.Zero, 1, Offcut: true)
        {
            Untrimmed = piece.Condition.Untrimmed is StockEdges.None ? null : piece.Condition.Untrimmed,
            BadPlaces = piece.Condition.BadPlaces,
        };

    private void Add(PieceNow piece)
    {
        var (tag, material) = (piece.Piece.Tag, shop.Materials[piece.Piece.MaterialId]);
        Stocks.Add(StockOf(piece));
        var name = $"{material.Name}, {StockWords.Size(piece.Length, piece.Width, material.Width, unit)}";
        names.Add(tag, new PlanStockName(tag, name, tag, null, material.Tint) { Note = piece.Note });
        pieces.Add(tag, piece.Piece.Id);
    }

    private void Add(StoredPrice price)
    {
        var (name, material) = (NameOf(price, shop, unit), shop.Materials[price.MaterialId]);
        Stocks.Add(
            new CutStock(name.StockId, material.Id, price.Length, material.Width ?? price.Width, price.Price, null, Offcut: false)
            {
                SoldUncut = shop.Stores[price.StoreId].FirstCuts == 0,
            }
        );
        names.Add(name.StockId, name);
        seen.Add(name.StockId, price.Seen);
    }
}
