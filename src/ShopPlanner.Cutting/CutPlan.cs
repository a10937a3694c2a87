using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>What to buy and how to cut it: the answer to a <see cref="CutRequest"/>. Immutable.</summary>
/// <param name="Unit">The request's unit.</param>
/// <param name="Status">How good the plan is known to be.</param>
/// <param name="Cost">Price of all stock cut, offcuts at their keeping value.</param>
/// <param name="CostLowerBound">No plan that places the same pieces costs less; derived, never guessed.</param>
/// <param name="Seconds">Time spent.</param>
/// <param name="Buy">What to buy: new stock only.</param>
/// <param name="Layouts">Every board and sheet that is cut; equal ones are counted in one.</param>
/// <param name="Unplaced">Parts that could not be placed, each with its reason.</param>
public sealed record CutPlan(
    LengthUnit Unit,
    PlanStatus Status,
    Money Cost,
    Money CostLowerBound,
    double Seconds,
    ImmutableArray<Purchase> Buy,
    ImmutableArray<Layout> Layouts,
    ImmutableArray<UnplacedPart> Unplaced
);

/// <summary>How good a plan is known to be.</summary>
public enum PlanStatus
{
    /// <summary>No cheaper way to buy exists: the cost equals its lower bound.</summary>
    Proven,

    /// <summary>A cheaper one is not ruled out; the lower bound says how far.</summary>
    BestFound,

    /// <summary>Some part is not placed.</summary>
    Incomplete,
}

/// <summary>New stock to buy.</summary>
/// <param name="Stock">The stock's id.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Cost">Price of all of them.</param>
public sealed record Purchase(string Stock, int Quantity, Money Cost);

/// <summary>
/// How one board or sheet, or several alike, is cut. x runs along the stock's length and y across it, from one corner of the
/// stock as bought, trims included. Straight cuts from edge to edge of the piece in hand free every piece.
/// </summary>
/// <param name="Stock">The stock's id.</param>
/// <param name="Copies">How many are cut like this, one or more.</param>
/// <param name="Pieces">The parts' pieces.</param>
/// <param name="Leftovers">What is left and is not sawdust; <see cref="Leftover.Keep"/> tells what to keep from scrap.</param>
/// <param name="Cuts">In the order to make them.</param>
public sealed record Layout(
    string Stock,
    int Copies,
    ImmutableArray<PlacedPiece> Pieces,
    ImmutableArray<Leftover> Leftovers,
    ImmutableArray<Cut> Cuts
);

/// <summary>One piece of a part.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="X">Of the corner nearest the origin, along the stock's length.</param>
/// <param name="Y">Of that corner, across.</param>
/// <param name="Dx">Extent along the stock's length.</param>
/// <param name="Dy">Extent across.</param>
/// <param name="Turned">Whether the part's length lies along y.</param>
public sealed record PlacedPiece(string Part, Length X, Length Y, Length Dx, Length Dy, bool Turned);

/// <summary>What a layout leaves.</summary>
/// <param name="X">Of the corner nearest the origin, along the stock's length.</param>
/// <param name="Y">Of that corner, across.</param>
/// <param name="Dx">Extent along the stock's length.</param>
/// <param name="Dy">Extent across.</param>
/// <param name="Keep">Whether it is worth keeping.</param>
public sealed record Leftover(Length X, Length Y, Length Dx, Length Dy, bool Keep);

/// <summary>Which way a cut runs.</summary>
public enum CutKind
{
    /// <summary>Across the stock's length: parts in x.</summary>
    Crosscut,

    /// <summary>Along the stock's length: parts in y.</summary>
    Rip,
}

/// <summary>One straight cut from edge to edge of the piece in hand.</summary>
/// <param name="N">Its place in the order, from 1.</param>
/// <param name="Piece">The piece in hand: <c>board</c> or <c>sheet</c> at first, later a name given by an earlier cut.</param>
/// <param name="Kind">Crosscut or rip.</param>
/// <param name="At">The fence or stop setting: from the edge of the piece in hand nearest the origin to the near side of the
/// saw's kerf, so the size of the first piece given. Zero for a squaring cut that takes less than a kerf: the blade hangs over
/// the edge.</param>
/// <param name="First">Name of the piece nearest the origin: the cut's number and <c>a</c>.</param>
/// <param name="Second">Name of the piece beyond the kerf: the cut's number and <c>b</c>; null where the kerf runs off the end
/// and nothing remains.</param>
/// <param name="FirstPart">The part's id when the first piece is finished by this cut.</param>
/// <param name="SecondPart">The part's id when the second piece is finished by this cut.</param>
public sealed record Cut(
    int N,
    string Piece,
    CutKind Kind,
    Length At,
    string First,
    string? Second,
    string? FirstPart,
    string? SecondPart
)
{
    /// <summary>True for a cut that the store makes.</summary>
    public bool ByStore { get; init; }
}

/// <summary>Pieces of a part that could not be placed.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Quantity">How many pieces.</param>
/// <param name="Reason">Why, in a plain phrase: <c>longer than any stock of this material</c>.</param>
public sealed record UnplacedPart(string Part, int Quantity, string Reason);
