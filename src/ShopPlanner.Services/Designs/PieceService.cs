using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Designs;

internal sealed class PieceService(ShopWork work, ICutPlanner planner) : IPieceService
{
    public async Task<ShopReach> ReachAsync(CancellationToken cancel = default)
    {
        var shop = await work.ReadAsync(db => Snapshot.OfStockAsync(db, cancel), cancel);
        var sold = shop.Prices.Values.Where(price => price.InStock).ToList();
        // A longer board on hand is as good as one that is sold; an offcut alone is no limit, since a store sells longer ones.
        var known = sold.Select(price => price.MaterialId).ToHashSet(StringComparer.Ordinal);
        var onHand = shop.OnHand.Values.Where(piece => known.Contains(piece.Piece.MaterialId));
        var sizes = sold.Select(price => (price.MaterialId, price.Length, Width: Width(shop, price)))
            .Concat(onHand.Select(piece => (piece.Piece.MaterialId, piece.Length, piece.Width)));
        return new(
            sizes
                .GroupBy(one => one.MaterialId)
                .ToImmutableDictionary(
                    one => one.Key,
                    one => new LargestStock(one.Max(size => size.Length), one.Max(size => size.Width))
                ),
            Least(shop, sold, StockForm.Board, price => price.Length.ToMillimetres() / 1000),
            Least(shop, sold, StockForm.Sheet, price => Area.Of(price.Length, price.Width).ToSquareMetres())
        );
    }

    public async Task<RoleMaterial?> MaterialAsync(string role, string materialId, CancellationToken cancel = default)
    {
        var row = await work.ReadAsync(async db => await db.Materials.FindAsync([materialId], cancel), cancel);
        return row is null
            ? null
            : new(
                role,
                row.Id,
                row.Name,
                row.Form == StockForm.Sheet ? MaterialForm.Sheet : MaterialForm.Board,
                row.Thickness,
                row.Width,
                Properties.Of(row.Id)
            );
    }

    public async Task<Outcome<BinAllows>> AsManyAsBinAllowsAsync(
        Idea idea,
        DimensionRange count,
        CancellationToken cancel = default
    )
    {
        var shop = await work.ReadAsync(db => Snapshot.OfStockAsync(db, cancel), cancel);
        return await Task.Run(() => new BinTrial(shop, planner, idea, count, cancel).Run(), cancel);
    }

    private static ImmutableDictionary<string, decimal> Least(
        Snapshot shop,
        IEnumerable<StoredPrice> sold,
        StockForm form,
        Func<StoredPrice, decimal> amount
    ) =>
        sold.Where(price => shop.Materials[price.MaterialId].Form == form && amount(price) > 0)
            .GroupBy(price => price.MaterialId)
            .ToImmutableDictionary(one => one.Key, one => one.Min(price => price.Price.Amount / amount(price)));

    private static Length Width(Snapshot shop, StoredPrice price) => shop.Materials[price.MaterialId].Width ?? price.Width;
}

/// <summary>Where a material's properties are looked up.</summary>
internal static class Properties
{
    /// <summary>The wood, or the kind of sheet, of a material that comes with the program; null for the user's own.</summary>
    public static string? Of(string materialId)
    {
        if (MaterialCatalogue.StoreMaterials.FirstOrDefault(one => one.Id == materialId) is not { } material)
            return null;
        if (material.SpeciesId is { } species)
            return species;
        return material.SheetGoodId is { } sheet && MaterialCatalogue.TryFindSheet(sheet, out var good) ? Of(good.Kind) : null;
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
