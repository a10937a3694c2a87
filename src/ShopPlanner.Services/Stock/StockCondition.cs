using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Services.Stock;

/// <summary>What a piece of stock is like, besides its size: which of its edges are still as bought, and where nothing may be
/// cut from. Places are measured as plans measure: along the piece from its left end, across it from its top edge.</summary>
/// <param name="Untrimmed">The edges that the saw's trim comes off before anything is cut there.</param>
/// <param name="BadPlaces">None beyond the piece.</param>
public sealed record StockCondition(StockEdges Untrimmed, BadPlaces BadPlaces)
{
    /// <summary>All edges true, and no bad place.</summary>
    public static StockCondition Sound { get; } = new(StockEdges.None, BadPlaces.None);

    /// <summary>Returns the condition of a new board or sheet, trimmed as a plan trims one from the store.</summary>
    public static StockCondition AsBought(StockForm form) => new(CutStock.EdgesAsBought(form), BadPlaces.None);

    /// <summary>Whether a plan for a new board or sheet can be cut from such a piece: it has no bad place, and no edge that the
    /// plan doesn't trim.</summary>
    public bool IsAsGoodAsNew(StockForm form) =>
        BadPlaces.IsEmpty && (Untrimmed & ~CutStock.EdgesAsBought(form)) == StockEdges.None;

    /// <summary>Returns what the condition is once the piece is measured again: what was bad up to an end or an edge is bad up to
    /// the new one, and what lies beyond it is gone.</summary>
    public StockCondition Resized(Length length, Length width, Length newLength, Length newWidth)
    {
        BadPlace? Fit(BadPlace place)
        {
            var (endX, endY) = (End(place.EndX, length, newLength), End(place.EndY, width, newWidth));
            return place.X < endX && place.Y < endY ? place with { Dx = endX - place.X, Dy = endY - place.Y } : null;
        }

        return (length, width) == (newLength, newWidth) ? this : this with { BadPlaces = Only(BadPlaces.Select(Fit)) };
    }

    /// <summary>Returns the condition of a part of the piece: bad places that reach into it, and edges as bought that it
    /// has.</summary>
    /// <param name="area">The part.</param>
    /// <param name="length">Of the piece.</param>
    /// <param name="width">Of the piece.</param>
    public StockCondition Of(StockArea area, Length length, Length width)
    {
        var mine =
            (area.X.IsPositive ? StockEdges.None : StockEdges.Near)
            | (area.X + area.Dx < length ? StockEdges.None : StockEdges.Far)
            | (area.Y.IsPositive ? StockEdges.None : StockEdges.Front)
            | (area.Y + area.Dy < width ? StockEdges.None : StockEdges.Back);
        return new(Untrimmed & mine, Only(BadPlaces.Select(place => Within(place, area))));
    }

    private static BadPlace? Within(BadPlace place, StockArea area)
    {
        if (!place.Touches(area.X, area.Y, area.Dx, area.Dy))
            return null;
        var (x, y) = (Length.Max(place.X, area.X), Length.Max(place.Y, area.Y));
        var (endX, endY) = (Length.Min(place.EndX, area.X + area.Dx), Length.Min(place.EndY, area.Y + area.Dy));
        return new(x - area.X, y - area.Y, endX - x, endY - y);
    }

    private static Length End(Length end, Length whole, Length now) => end == whole ? now : Length.Min(end, now);

    private static BadPlaces Only(IEnumerable<BadPlace?> places) => BadPlaces.Of([.. places.OfType<BadPlace>().Distinct()]);
}
