using System.Collections.Immutable;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Problems;

/// <summary>
/// Two-dimensional guillotine cutting: rectangles cut by straight edge-to-edge cuts, any number of stages, from stocks of
/// several sizes and prices, some limited. All figures are whole numbers; the kerf has been added to both sides of every item
/// and every stock already (usable side plus kerf), so no kerf appears here. Also used for boards that are ripped: a narrow
/// sheet with no turning.
/// </summary>
/// <param name="Stocks">What can be cut.</param>
/// <param name="Items">What is wanted; every item fits at least one stock.</param>
public sealed record SheetProblem(ImmutableArray<SheetStock> Stocks, ImmutableArray<SheetItem> Items)
{
    /// <summary>Layouts to begin with, of a plan made before an edit; empty for none. What does not fit any more is left
    /// out.</summary>
    public ImmutableArray<SheetSeed> Seed { get; init; } = [];

    /// <summary>Which layouts can be cut; null for all of them.</summary>
    internal ILayoutRule? Rule { get; init; }
}

/// <summary>A layout to begin with.</summary>
/// <param name="Stock">Index into <see cref="SheetProblem.Stocks"/>.</param>
/// <param name="Times">How many alike.</param>
/// <param name="Root">How its pieces are cut; directions alternate from level to level, and sizes are not looked at: they are
/// those of the items now.</param>
public sealed record SheetSeed(int Stock, int Times, LayoutNode Root);

/// <summary>One size of sheet.</summary>
/// <param name="Dx">Usable length plus kerf, more than zero.</param>
/// <param name="Dy">Usable width plus kerf, more than zero.</param>
/// <param name="Cost">Of one, zero or more.</param>
/// <param name="Available">How many; null for as many as wanted.</param>
/// <param name="FromBin">True for an offcut: among plans of equal cost, using these is preferred.</param>
public sealed record SheetStock(long Dx, long Dy, long Cost, int? Available, bool FromBin)
{
    /// <summary>A free rectangle is worth keeping when it is at least as large, both ways, as one of these; empty where none is
    /// kept.</summary>
    public ImmutableArray<LeastSides> Keep { get; init; } = [];

    /// <summary>Returns whether a free rectangle is worth keeping.</summary>
    public bool Keeps(long dx, long dy)
    {
        foreach (var least in Keep)
            if (dx >= least.Dx && dy >= least.Dy)
                return true;
        return false;
    }
}

/// <summary>Sides that a free rectangle must reach to be worth keeping.</summary>
/// <param name="Dx">The least extent along the stock's length, kerf included, more than zero.</param>
/// <param name="Dy">The least extent across, kerf included, more than zero.</param>
public readonly record struct LeastSides(long Dx, long Dy);

/// <summary>One size wanted.</summary>
/// <param name="Dx">Along the stock's length, plus kerf.</param>
/// <param name="Dy">Across, plus kerf.</param>
/// <param name="CanTurn">True when the two sides may be exchanged.</param>
/// <param name="Demand">Pieces, one or more.</param>
public sealed record SheetItem(long Dx, long Dy, bool CanTurn, int Demand);

/// <summary>How one sheet, or several alike, is cut.</summary>
/// <param name="Stock">Index into <see cref="SheetProblem.Stocks"/>.</param>
/// <param name="Times">How many are cut like this.</param>
/// <param name="Root">The whole usable area, in the problem's measure: a kerf is included in both sides of every node, and
/// children lie without gaps and fill their cut, except where the store makes it.</param>
public sealed record SheetLayout(int Stock, int Times, LayoutNode Root);

/// <summary>A solution.</summary>
/// <param name="Layouts">What to cut.</param>
/// <param name="Unmet">Pieces of each item that were not placed.</param>
/// <param name="Cost">Of all stock cut.</param>
/// <param name="Bound">No solution that places the same pieces costs less.</param>
/// <param name="Complete">True when nothing is unmet.</param>
/// <param name="Proven">True when cost equals bound.</param>
public sealed record SheetSolution(
    ImmutableArray<SheetLayout> Layouts,
    ImmutableArray<int> Unmet,
    long Cost,
    long Bound,
    bool Complete,
    bool Proven
);
