using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>The largest stock of a material that can be had.</summary>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across it; of a board its width.</param>
public sealed record LargestStock(Length Length, Length Width);

/// <summary>Judges a whole piece: whether its shelves bend, its top may move, it stands with its doors open, and its parts can be
/// cut from what is sold. Estimates; the makers' instructions and local rules come before them.</summary>
public static class PieceJudge
{
    private static readonly IReadOnlyDictionary<string, LargestStock> UsualStock = new Dictionary<string, LargestStock>();

    /// <summary>All findings on a piece, the most severe first, as far as the usual sizes of stores tell: what the parts file and
    /// the packet say.</summary>
    public static ImmutableArray<PieceWarning> Of(Piece piece) => Of(piece, UsualStock);

    /// <summary>The same with the sizes of the shop's own stores.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="stock">Largest stock that is sold, by the shop's material; what is missing here is looked up in the usual
    /// sizes of stores.</param>
    public static ImmutableArray<PieceWarning> Of(Piece piece, IReadOnlyDictionary<string, LargestStock> stock)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(stock);
        return
        [
            .. piece
                .Warnings.Concat(JointJudging.Of(piece))
                .Concat(StockJudging.Of(piece, stock))
                .Concat(TippingJudging.Of(piece))
                .Concat(ShelfJudging.Of(piece))
                .Concat(BottomJudging.Of(piece))
                .Concat(PeopleJudging.Of(piece))
                .Concat(TopJudging.Of(piece))
                .Concat(TopBending.Of(piece))
                // What two bays bring alike is said once.
                .DistinctBy(one => (one.Severity, one.Text, one.Part))
                .OrderByDescending(one => one.Severity),
        ];
    }
}
