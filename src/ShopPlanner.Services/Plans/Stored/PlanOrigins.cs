using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>Where a stock of a request comes from: <see cref="PriceOrigin"/>, <see cref="PieceOrigin"/>, or neither.</summary>
internal abstract record StockOrigin
{
    private StockOrigin() { }

    /// <summary>A line of a store's price list.</summary>
    /// <param name="Price">Id of the price.</param>
    internal sealed record PriceOrigin(Guid Price) : StockOrigin;

    /// <summary>A piece of the rack or the bin.</summary>
    /// <param name="Piece">Id of the piece.</param>
    /// <param name="Place">Where it was entered.</param>
    internal sealed record PieceOrigin(Guid Piece, StockPlace Place) : StockOrigin;

    /// <summary>Nothing that the shop knows.</summary>
    internal sealed record OtherOrigin : StockOrigin;

    /// <summary>The origin of a stock id: the only place that reads one.</summary>
    /// <param name="id">In the request: a piece's tag or a price's id.</param>
    /// <param name="pieces">Ids of pieces, by stock id.</param>
    public static StockOrigin Of(string id, IReadOnlyDictionary<string, Guid> pieces) =>
        pieces.TryGetValue(id, out var piece) ? new PieceOrigin(piece, StockTags.PlaceOf(id))
        : Guid.TryParse(id, out var price) ? new PriceOrigin(price)
        : new OtherOrigin();
}

/// <summary>Where a part of a request comes from.</summary>
/// <param name="Row">Id of the row of the parts list.</param>
/// <param name="Mark">The row's mark when the request was made.</param>
internal sealed record PartOrigin(Guid Row, string Mark)
{
    /// <summary>The origin of a part id: the only place that reads one.</summary>
    /// <param name="id">In the request.</param>
    /// <param name="row">Id of its row.</param>
    public static PartOrigin Of(string id, Guid row) => new(row, PartIds.MarkOf(id));
}
