using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Problems;

/// <summary>
/// One-dimensional cutting stock: items cut from stocks of several lengths and prices, some limited. All figures are whole
/// numbers; the kerf has been added to every item and every stock already (n pieces in a row need Σa + (n−1)k ≤ S exactly when
/// Σ(a+k) ≤ S+k), and sizes divided by their greatest common measure.
/// </summary>
/// <param name="Stocks">What can be cut.</param>
/// <param name="Items">What is wanted; every item fits at least one stock.</param>
public sealed record BoardProblem(ImmutableArray<BoardStock> Stocks, ImmutableArray<BoardItem> Items)
{
    /// <summary>Patterns to begin with, of a plan made before an edit; empty for none. What does not fit any more is left out,
    /// what is missing put in.</summary>
    public ImmutableArray<BoardPattern> Seed { get; init; } = [];
}

/// <summary>One length of stock.</summary>
/// <param name="Capacity">Usable length plus kerf, more than zero.</param>
/// <param name="Cost">Of one, zero or more.</param>
/// <param name="Available">How many; null for as many as wanted.</param>
/// <param name="FromBin">True for an offcut: among plans of equal cost, using these is preferred.</param>
/// <param name="KeepAtLeast">Least remaining capacity that is worth keeping as a leftover; null where none is.</param>
public sealed record BoardStock(long Capacity, long Cost, int? Available, bool FromBin, long? KeepAtLeast);

/// <summary>One size wanted.</summary>
/// <param name="Size">Length plus kerf, more than zero.</param>
/// <param name="Demand">Pieces, one or more.</param>
public sealed record BoardItem(long Size, int Demand);

/// <summary>How one stock, or several alike, is cut.</summary>
/// <param name="Stock">Index into <see cref="BoardProblem.Stocks"/>.</param>
/// <param name="Times">How many are cut like this.</param>
/// <param name="Counts">Pieces of each item, in the order of <see cref="BoardProblem.Items"/>.</param>
public sealed record BoardPattern(int Stock, int Times, ImmutableArray<int> Counts);

/// <summary>A solution.</summary>
/// <param name="Patterns">What to cut; every demand is met exactly when <see cref="Unmet"/> is all zero.</param>
/// <param name="Unmet">Pieces of each item that limited stock has no room for.</param>
/// <param name="Cost">Of all stock cut.</param>
/// <param name="Bound">No solution with the same or fewer unmet pieces costs less.</param>
/// <param name="Complete">True when nothing is unmet. False with <see cref="Proven"/> true means it is proven that not every
/// piece can be placed.</param>
/// <param name="Proven">True when the cost equals the bound and the search shows it.</param>
public sealed record BoardSolution(
    ImmutableArray<BoardPattern> Patterns,
    ImmutableArray<int> Unmet,
    long Cost,
    long Bound,
    bool Complete,
    bool Proven
);
