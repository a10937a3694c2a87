using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>The stock and what becomes of each part of it, without words.</summary>
internal static class StockSketch
{
    private const double GrainSpacing = 5,
        WasteSpacing = 5,
        TrimSpacing = 3,
        BadSpacing = 6;

    /// <summary>From the ground up: wood, grain, waste, bad places, kerfs, edges.</summary>
    /// <param name="picture">What is drawn.</param>
    /// <param name="view">Where it lies.</param>
    /// <param name="written">What words will cover: no grain runs through them.</param>
    public static IEnumerable<Shape> Draw(LayoutPicture picture, View view, IReadOnlyList<Box> written)
    {
        var whole = view.Whole(picture);
        return
        [
            new Patch(Fill.Wood, whole, picture.Tint),
            .. picture.HasGrain ? Grain(whole, written) : [],
            .. Freed(picture, view),
            .. picture.Trims.Select(t => new Hatch(Stroke.Waste, view.Of(t), TrimSpacing)),
            .. picture.Leftovers.Where(l => !l.Keep).Select(l => new Hatch(Stroke.Waste, view.Of(l.Area), WasteSpacing)),
            .. picture.BadPlaces.SelectMany(place => Bad(view.Of(place))),
            .. picture.Cuts.Select(c => new Patch(Fill.Kerf, view.Of(c.Kerf))),
            .. picture.Pieces.Select(p => new Frame(Stroke.Thin, view.Of(p.Area))),
            new Frame(Stroke.Outline, whole),
            .. picture.Leftovers.Where(l => l.Keep).Select(l => new Frame(Stroke.Keep, view.Of(l.Area).Inset(1.6))),
        ];
    }

    private static IEnumerable<Shape> Freed(LayoutPicture picture, View view) =>
        picture.IsLive
            ? picture
                .Pieces.Where(p => p.FreedBy is not null)
                .Select(p => new Marked($"freed-{p.FreedBy}", [new Patch(Fill.Done, view.Of(p.Area))]))
            : picture.Pieces.Where(p => p.Done).Select(p => new Patch(Fill.Done, view.Of(p.Area)));

    // On bare paper, so that it is not taken for scrap.
    private static Shape[] Bad(Box box) => [new Patch(Fill.Paper, box), new CrossHatch(Stroke.BadPlace, box, BadSpacing)];

    /// <summary>The chalk line of the next cut, drawn out beyond the piece in hand.</summary>
    public static IEnumerable<Shape> NextCut(LayoutPicture picture, View view) =>
        picture.IsLive
            ? picture.Cuts.Select(c => new Marked($"cut-{c.N}", [.. Veil(c, view.Whole(picture), view), Chalk(view.Of(c.Kerf))]))
            : picture.Cuts.Where(c => c.State == CutState.Next).Select(c => Chalk(view.Of(c.Kerf)));

    // Paper over all that is not in hand: above, below, before and behind it.
    private static IEnumerable<Patch> Veil(CutPicture cut, Box whole, View view)
    {
        if (cut.InHand is not { } area)
            return [];
        var hand = view.Of(area);
        Box[] around =
        [
            new(whole.X, whole.Y, whole.Width, hand.Y - whole.Y),
            new(whole.X, hand.Bottom, whole.Width, whole.Bottom - hand.Bottom),
            new(whole.X, hand.Y, hand.X - whole.X, hand.Height),
            new(hand.Right, hand.Y, whole.Right - hand.Right, hand.Height),
        ];
        return around.Where(box => box is { Width: > 0.5, Height: > 0.5 }).Select(box => new Patch(Fill.Paper, box));
    }

    private static Line Chalk(Box kerf)
    {
        const double beyond = 5;
        return kerf.Width < kerf.Height
            ? new(Stroke.NextCut, new(kerf.Centre.X, kerf.Y - beyond), new(kerf.Centre.X, kerf.Bottom + beyond))
            : new(Stroke.NextCut, new(kerf.X - beyond, kerf.Centre.Y), new(kerf.Right + beyond, kerf.Centre.Y));
    }

    private static IEnumerable<Line> Around(Spot start, double end, IReadOnlyList<Box> written)
    {
        const double clear = 2;
        foreach (
            var box in written.Where(b => b.Y < start.Y && start.Y < b.Bottom && b.Right > start.X && b.X < end).OrderBy(b => b.X)
        )
        {
            if (box.X - clear > start.X)
                yield return new(Stroke.Grain, start, start with { X = box.X - clear });
            start = start with { X = Math.Max(start.X, box.Right + clear) };
        }

        if (start.X < end)
            yield return new(Stroke.Grain, start, start with { X = end });
    }

    // Fine lines along the length, broken at uneven places so that they read as grain and not as ruled cuts.
    private static IEnumerable<Shape> Grain(Box whole, IReadOnlyList<Box> written)
    {
        var row = 0;
        for (var y = whole.Y + (GrainSpacing / 2); y < whole.Bottom; y += GrainSpacing, row++)
        for (var x = whole.X + ((row * 37) % 60); x < whole.Right - 4; x += 90 + ((row * 23) % 50))
            foreach (var line in Around(new(x, y), Math.Min(x + 55 + ((row * 31) % 40), whole.Right), written))
                yield return line;
    }
}
