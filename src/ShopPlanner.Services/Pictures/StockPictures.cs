using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Pictures;

/// <summary>Makes the picture of a piece on hand as it is: its bad places, and what is trimmed off it.</summary>
public static class StockPictures
{
    /// <summary>Returns a piece as it lies in the rack or the bin.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="material">Its material.</param>
    /// <param name="shop">Says how much is trimmed; an edge whose trim cannot be read is drawn without.</param>
    public static LayoutPicture Of(StockPiece piece, MaterialView material, ShopSettings shop)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(material);
        ArgumentNullException.ThrowIfNull(shop);
        var stock = new CutStock(piece.Tag, material.Id, piece.Length, piece.Width, Money.Zero, 1, Offcut: true)
        {
            Untrimmed = piece.Condition.Untrimmed,
        };
        return new LayoutPicture(
            $"{piece.Tag}: {material.Name}",
            shop.Unit,
            piece.Length,
            piece.Width,
            material.Thickness,
            material.Tint,
            HasGrain(material.Id, material.Form),
            [],
            [],
            Trims(stock, material.Form, SawReader.Read(shop, []).Saw),
            []
        )
        {
            BadPlaces = Areas(piece.Condition.BadPlaces),
        };
    }

    internal static ImmutableArray<StockArea> Areas(BadPlaces places) =>
        [.. places.Select(place => new StockArea(place.X, place.Y, place.Dx, place.Dy))];

    internal static ImmutableArray<StockArea> Trims(CutStock stock, StockForm form, SawSettings saw)
    {
        var trim = form == StockForm.Board ? saw.BoardEndTrim : saw.SheetEdgeTrim;
        if (!trim.IsPositive || trim * 2 > stock.Length || (form == StockForm.Sheet && trim * 2 > stock.Width))
            return [];
        var edges = stock.EdgesToTrim(form);
        var (front, back) = (Off(StockEdges.Front), Off(StockEdges.Back));
        StockArea?[] trims =
        [
            Whole(StockEdges.Front, Length.Zero),
            Whole(StockEdges.Back, stock.Width - trim),
            Between(StockEdges.Near, Length.Zero),
            Between(StockEdges.Far, stock.Length - trim),
        ];
        return [.. trims.OfType<StockArea>()];

        Length Off(StockEdges edge) => edges.HasFlag(edge) ? trim : Length.Zero;
        StockArea? Whole(StockEdges edge, Length y) => edges.HasFlag(edge) ? new(Length.Zero, y, stock.Length, trim) : null;
        StockArea? Between(StockEdges edge, Length x) =>
            edges.HasFlag(edge) ? new(x, front, trim, stock.Width - front - back) : null;
    }

    internal static bool HasGrain(string material, StockForm form) =>
        form == StockForm.Board || !MaterialCatalogue.TryFindSheet(material, out var sheet) || sheet.HasGrain;
}
