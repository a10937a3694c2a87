using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Stock;

/// <summary>Pieces of the ledger as the services tell them.</summary>
internal static class StockViews
{
    public static StockPiece Of(PieceNow now, MaterialIndex materials)
    {
        var material = materials[now.Piece.MaterialId];
        return new StockPiece(
            now.Piece.Id,
            now.Piece.Tag,
            now.Piece.Place,
            material.Id,
            material.Name,
            material.Form,
            now.Length,
            now.Width,
            now.Note,
            now.PromisedPlanId,
            now.PromisedTo,
            now.Piece.Version
        )
        {
            Condition = now.Condition,
        };
    }
}
