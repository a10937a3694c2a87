using ShopPlanner.Core.Measures;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>A layout in words, for those who cannot see the drawing.</summary>
internal static class LayoutWords
{
    private const int Named = 40;

    /// <summary>The stock and its pieces, along the length.</summary>
    public static string Describe(LayoutPicture picture)
    {
        var unit = picture.Unit;
        var stock = Figures.Of(new StockArea(Length.Zero, Length.Zero, picture.Length, picture.Width), turned: false, unit);
        var pieces = picture
            .Pieces.OrderBy(p => p.Area.X)
            .ThenBy(p => p.Area.Y)
            .Take(Named)
            .Select(p =>
                TurnedWords.After($"{p.Mark} {Figures.Short(p.Name)} {Figures.Of(p.Area, p.Turned, unit)}", p.Turned)
                + (p.Done ? ", cut" : "")
            );
        var more = picture.Pieces.Length > Named ? $"; and {picture.Pieces.Length - Named} more" : "";
        var keep = picture.Leftovers.Where(l => l.Keep).Select(l => Figures.Of(l.Area, turned: false, unit)).ToList();
        var kept = keep.Count > 0 ? $" To keep: {string.Join("; ", keep)}." : "";
        var cut = picture.Pieces.IsEmpty ? "" : $" Pieces: {string.Join("; ", pieces)}{more}.";
        return $"{stock} {Figures.UnitName(unit)}.{cut}{kept}{Bad(picture)}";
    }

    private static string Bad(LayoutPicture picture)
    {
        var places = picture.BadPlaces.Select(place =>
            $"{Figures.Of(place, turned: false, picture.Unit)}, {Figures.Of(place.X, picture.Unit)} from the left end, "
            + $"{Figures.Of(place.Y, picture.Unit)} from the top edge"
        );
        return picture.BadPlaces.IsEmpty ? "" : $" Bad: {string.Join("; ", places)}.";
    }
}
