using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>A wrong cut, read.</summary>
/// <param name="At">The board or sheet.</param>
/// <param name="Cut">The cut.</param>
/// <param name="Reason">Why it is wrong.</param>
/// <param name="Start">What could be said about it.</param>
/// <param name="Pieces">The wrong pieces, by index into the layout, with what is left of each; null for scrap.</param>
/// <param name="Rests">Measured sizes of what the cut gave to be cut further, by its planned place.</param>
internal sealed record ReadWrongCut(
    BenchPlace At,
    Cut Cut,
    WrongReason Reason,
    WrongCutStart Start,
    IReadOnlyList<(GivenPiece Piece, KeptLeftover? Left)> Pieces,
    IReadOnlyDictionary<StockArea, (Length Length, Length Width)> Rests
);
