using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>The largest stock of a material that can be had.</summary>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across it; of a board its width.</param>
public sealed record LargestStock(Length Length, Length Width);

/// <summary>Judges a whole piece: whether its shelves bend, its top may move, it stands with its doors open, and its parts can be
/// cut from what is sold. Estimates; the makers' instructions and local rules come before them.</summary>
public static class PieceJudge
{
    /// <summary>The piece's own warnings and the judge's, the most severe first.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="stock">Largest stock by the shop's material; what is missing here is looked up in the usual sizes of
    /// stores.</param>
    public static ImmutableArray<PieceWarning> Of(Piece piece, IReadOnlyDictionary<string, LargestStock> stock)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(stock);
        return MostSevereFirst(piece.Warnings.Concat(StockJudging.Of(piece, stock)).Concat(InUse(piece)));
    }

    /// <summary>What is to be minded of a piece whatever stores sell, the most severe first; what holds is left out.</summary>
    public static ImmutableArray<PieceWarning> ToMind(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return MostSevereFirst(piece.Warnings.Concat(InUse(piece)).Where(one => one.Severity != Severity.Fine));
    }

    private static IEnumerable<PieceWarning> InUse(Piece piece) =>
        TippingJudging.Of(piece).Concat(ShelfJudging.Of(piece)).Concat(TopJudging.Of(piece));

    private static ImmutableArray<PieceWarning> MostSevereFirst(IEnumerable<PieceWarning> warnings) =>
        [.. warnings.OrderByDescending(one => one.Severity)];
}
