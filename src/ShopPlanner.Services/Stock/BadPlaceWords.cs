using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Stock;

/// <summary>Bad places and edges in words. A piece lies as it is drawn: its tag at the left end, its top edge
/// away from the reader.</summary>
public static class BadPlaceWords
{
    /// <summary>Returns where a place is and how big: <c>Left end, 6 in</c>, <c>Bottom right corner, 3 in × 2 in</c>,
    /// <c>2 in × 2 in, 30 in from the left end, 1 in from the top edge</c>.</summary>
    /// <param name="place">The place.</param>
    /// <param name="length">Of the piece.</param>
    /// <param name="width">Of the piece.</param>
    /// <param name="unit">Of the figures.</param>
    public static string Of(BadPlace place, Length length, Length width, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(place);
        string Say(Length one) => LengthFormat.WithUnit(one, LengthFormat.MadeIn(unit, one));
        var touched = Touched(place, length, width);
        var size = $"{Say(place.Dx)} × {Say(place.Dy)}";
        var (isWide, isLong) = (touched.HasFlag(StockEdges.Front | StockEdges.Back), touched.HasFlag(StockEdges.Ends));
        if (isWide && isLong)
            return "All of the piece";
        if (isWide && (touched & StockEdges.Ends) is not StockEdges.None and var end)
            return $"{Name(end)}, {Say(place.Dx)}";
        if (isWide)
            return $"{Say(place.Dx)} of the length, {Say(place.X)} from the left end";
        if (isLong && (touched & ~StockEdges.Ends) is not StockEdges.None and var edge)
            return $"{Name(edge)}, {Say(place.Dy)}";
        if (!isLong && (touched & StockEdges.Ends) != 0 && (touched & ~StockEdges.Ends) != 0)
            return $"{Name(touched)}, {size}";
        return $"{size}, {Say(place.X)} from the left end, {Say(place.Y)} from the top edge";
    }

    /// <summary>Returns what an end, an edge or a corner is called.</summary>
    public static string Name(StockEdges where) =>
        where switch
        {
            StockEdges.Near => "Left end",
            StockEdges.Far => "Right end",
            StockEdges.Front => "Top edge",
            StockEdges.Back => "Bottom edge",
            StockEdges.Near | StockEdges.Front => "Top left corner",
            StockEdges.Far | StockEdges.Front => "Top right corner",
            StockEdges.Near | StockEdges.Back => "Bottom left corner",
            StockEdges.Far | StockEdges.Back => "Bottom right corner",
            _ => throw new ArgumentOutOfRangeException(nameof(where), where, "is no end, edge or corner"),
        };

    /// <summary>Returns the edges of a piece to choose from: <c>left end or right end</c>.</summary>
    public static string Choice(IEnumerable<StockEdges> edges) =>
        string.Join(" or ", edges.Select(edge => Name(edge).ToLowerInvariant()));

    /// <summary>Returns the edges one by one.</summary>
    public static IEnumerable<StockEdges> Each(StockEdges edges)
    {
        foreach (var edge in (StockEdges[])[StockEdges.Near, StockEdges.Far, StockEdges.Front, StockEdges.Back])
            if (edges.HasFlag(edge))
                yield return edge;
    }

    private static StockEdges Touched(BadPlace place, Length length, Length width) =>
        (place.X == Length.Zero ? StockEdges.Near : StockEdges.None)
        | (place.EndX == length ? StockEdges.Far : StockEdges.None)
        | (place.Y == Length.Zero ? StockEdges.Front : StockEdges.None)
        | (place.EndY == width ? StockEdges.Back : StockEdges.None);
}
