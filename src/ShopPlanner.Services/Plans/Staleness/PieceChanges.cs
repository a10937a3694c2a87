using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Stored;

namespace ShopPlanner.Services.Plans.Staleness;

/// <summary>Tells what changed about the pieces of the rack and the bin that a plan cuts.</summary>
internal static class PieceChanges
{
    /// <param name="record">The plan.</param>
    /// <param name="now">The shop as it stands.</param>
    /// <param name="cutPieces">Pieces that this plan has cut up already: they are not missing.</param>
    public static IEnumerable<string> Find(PlanRecord record, Snapshot now, IReadOnlySet<Guid> cutPieces) =>
        record
            .Draft.PiecesOf(record.Plan)
            .Where(used => !cutPieces.Contains(used.PieceId))
            .Select(used => Compare(record, used.Stock, now.OnHand.GetValueOrDefault(used.PieceId)))
            .OfType<string>();

    private static string? Compare(PlanRecord record, CutStock was, Stock.PieceNow? piece)
    {
        var isOffcut = record.Draft.Basis.StockOrigins[was.Id] is StockOrigin.PieceOrigin { Place: StockPlace.Bin };
        var what = (isOffcut ? "offcut " : "rack piece ") + was.Id;
        if (piece is null)
            return $"{what} is gone";
        if (piece.Length != was.Length || piece.Width != was.Width)
            return $"{what} was measured again";
        if (!BadPlaces.Equals(piece.Condition.BadPlaces, was.BadPlaces))
            return $"{what} has other bad places now";
        if (piece.Condition.Untrimmed != (was.Untrimmed ?? StockEdges.None))
            return $"{what} is to be trimmed on other edges now";
        return piece.PromisedPlanId == record.Stored.Id ? null : $"{what} is no longer kept for this plan";
    }
}
