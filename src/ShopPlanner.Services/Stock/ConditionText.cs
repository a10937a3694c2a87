using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Stock;

/// <summary>A piece's condition in cells of a table.</summary>
internal static class ConditionText
{
    private const string None = "none",
        At = " at ",
        By = " x ";

    private static readonly (StockEdges Edge, string Name)[] Names =
    [
        (StockEdges.Near, "left"),
        (StockEdges.Far, "right"),
        (StockEdges.Front, "top"),
        (StockEdges.Back, "bottom"),
    ];

    /// <summary>Returns edges as words: <c>left right</c>, <c>none</c>.</summary>
    public static string Edges(StockEdges edges)
    {
        var words = string.Join(' ', Names.Where(one => edges.HasFlag(one.Edge)).Select(one => one.Name));
        return words.Length == 0 ? None : words;
    }

    /// <summary>Reads such words.</summary>
    public static (StockEdges Edges, Fault? Fault) ReadEdges(string text)
    {
        var edges = StockEdges.None;
        foreach (var word in text.ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
            if (Names.FirstOrDefault(one => one.Name == word).Name is not null)
                edges |= Names.Single(one => one.Name == word).Edge;
            else if (word != None)
                return (edges, Fault.Of("edges as bought", text, "isn't left, right, top, bottom or none"));
        return (edges, null);
    }

    /// <summary>Returns places as sizes and corners: <c>2 x 3 1/2 at 94 x 0; …</c>: along, then across; from the left end, from
    /// the top edge.</summary>
    public static string Places(BadPlaces places, LengthUnit unit)
    {
        string Say(Length length) => LengthFormat.Exact(length, unit);
        return string.Join("; ", places.Select(one => Say(one.Dx) + By + Say(one.Dy) + At + Say(one.X) + By + Say(one.Y)));
    }

    /// <summary>Reads such places on a piece.</summary>
    public static (BadPlaces Places, Fault? Fault) ReadPlaces(string text, Length length, Length width, LengthUnit unit)
    {
        var places = new List<BadPlace>();
        foreach (var one in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            if (ReadPlace(one, unit) is not { } place)
                return (BadPlaces.None, Wrong(one, "isn't a bad place: write length x width at from-left x from-top"));
            else if (place.EndX > length || place.EndY > width)
                return (BadPlaces.None, Wrong(one, "is outside the piece"));
            else
                places.Add(place);
        var all = BadPlaces.Of([.. places.Distinct()]);
        return all.Count > CutStock.MostBadPlaces
                ? (BadPlaces.None, Wrong(text, $"has more than {CutStock.MostBadPlaces} places"))
            : all.Cover(length, width) ? (BadPlaces.None, Wrong(text, "would be bad all over: leave the piece out"))
            : (all, null);
    }

    private static Fault Wrong(string text, string message) => Fault.Of("bad places", text, message);

    private static BadPlace? ReadPlace(string text, LengthUnit unit)
    {
        if (text.Split(At) is not [var size, var corner] || size.Split(By) is not [var dx, var dy])
            return null;
        if (corner.Split(By) is not [var x, var y])
            return null;
        var sides = new[] { dx, dy }.Select(one => LengthText.ParsePositive(one, unit)).ToList();
        var from = new[] { x, y }.Select(one => LengthText.Parse(one, unit)).ToList();
        return sides.Concat(from).All(one => one.Ok) && from.All(one => one.Value >= Length.Zero)
            ? new BadPlace(from[0].Value, from[1].Value, sides[0].Value, sides[1].Value)
            : null;
    }
}
