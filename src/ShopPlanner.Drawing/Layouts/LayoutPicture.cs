using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>
/// What is to be seen of one board or sheet and how it is cut. Places count from one corner of the stock as bought: x along its
/// length, y across.
/// </summary>
/// <param name="Title">What it is: <c>Pine 1x3, 8 ft, board 2 of 5</c>.</param>
/// <param name="Unit">Of every figure in the drawing.</param>
/// <param name="Length">Of the stock, along the grain, more than zero.</param>
/// <param name="Width">Of the stock, across the grain, more than zero.</param>
/// <param name="Thickness">Of the stock; null where it is not known.</param>
/// <param name="Tint">The material's pale fill, <c>#RRGGBB</c>.</param>
/// <param name="HasGrain">Whether the face shows grain.</param>
/// <param name="Pieces">Finished pieces.</param>
/// <param name="Leftovers">What remains.</param>
/// <param name="Trims">Squared off before anything is measured.</param>
/// <param name="Cuts">In order.</param>
public sealed record LayoutPicture(
    string Title,
    LengthUnit Unit,
    Length Length,
    Length Width,
    Length? Thickness,
    string Tint,
    bool HasGrain,
    ImmutableArray<PiecePicture> Pieces,
    ImmutableArray<LeftoverPicture> Leftovers,
    ImmutableArray<StockArea> Trims,
    ImmutableArray<CutPicture> Cuts
)
{
    /// <summary>Where nothing may be cut from.</summary>
    public ImmutableArray<StockArea> BadPlaces { get; init; } = [];

    /// <summary>Whether a page shows by itself how far the cuts have come: everything that may be shown then is drawn, each in a
    /// group of its own, by the cut's number: <c>cut-3</c>, <c>number-3</c>, <c>freed-3</c>.</summary>
    public bool IsLive { get; init; }
}

/// <summary>A rectangle of the stock.</summary>
/// <param name="X">Of the corner nearest the origin, along the stock's length.</param>
/// <param name="Y">Of that corner, across.</param>
/// <param name="Dx">Extent along the stock's length.</param>
/// <param name="Dy">Extent across.</param>
public readonly record struct StockArea(Length X, Length Y, Length Dx, Length Dy);

/// <summary>One finished piece.</summary>
/// <param name="Mark">Its mark: <c>C1</c>.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Area">Where it lies.</param>
/// <param name="Turned">Whether its own length lies across the stock.</param>
/// <param name="Done">True once it has been cut.</param>
public sealed record PiecePicture(string Mark, string Name, StockArea Area, bool Turned, bool Done = false)
{
    /// <summary>The mark without the piece's number, for a drawing too small for more; empty for none.</summary>
    public string Letters { get; init; } = "";

    /// <summary>The number of the cut that finishes it; null where none does.</summary>
    public int? FreedBy { get; init; }
}

/// <summary>What remains of the stock.</summary>
/// <param name="Area">Where it lies.</param>
/// <param name="Keep">Whether it goes to the bin; otherwise it is scrap.</param>
/// <param name="Tag">What it is to be marked with; null for none.</param>
public sealed record LeftoverPicture(StockArea Area, bool Keep, string? Tag);

/// <summary>How far a cut has come.</summary>
public enum CutState
{
    /// <summary>Still to be made.</summary>
    Planned,

    /// <summary>The one to be made now.</summary>
    Next,

    /// <summary>Made.</summary>
    Done,
}

/// <summary>One cut, as the sawdust it makes.</summary>
/// <param name="N">Its place in the order, from 1.</param>
/// <param name="Kerf">The strip turned to sawdust: from edge to edge of the piece in hand, as wide as the kerf. A cut that runs
/// off the end may be narrower.</param>
/// <param name="State">How far it has come.</param>
/// <param name="ByStore">Whether the store makes it.</param>
public sealed record CutPicture(int N, StockArea Kerf, CutState State = CutState.Planned, bool ByStore = false)
{
    /// <summary>The piece in hand that is cut; null where it is not shown.</summary>
    public StockArea? InHand { get; init; }
}
