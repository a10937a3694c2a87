using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>What of a rectangle is left to see behind others.</summary>
internal static class Uncovered
{
    // Millimetres: what is narrower is no place to look at.
    private const double Sliver = 1.2;
    private const int Most = 48;

    /// <summary>The largest rectangles that are free; they may share area. None where it is covered whole.</summary>
    public static IReadOnlyList<Box> Of(Box box, IEnumerable<Box> covers)
    {
        List<Box> free = [box];
        foreach (var cover in covers)
        {
            if (!cover.Overlaps(box))
                continue;
            free = [.. free.SelectMany(one => one.Overlaps(cover) ? Around(one, cover) : [one])];
            if (free.Count > Most)
                free = [.. free.OrderByDescending(one => one.Width * one.Height).Take(Most)];
        }

        return free;
    }

    /// <summary>The one that offers most room to letters; null where there is none.</summary>
    public static Box? Roomiest(IReadOnlyList<Box> free) =>
        free.Count == 0
            ? null
            : free.OrderByDescending(one => Math.Round(Math.Min(one.Width, one.Height)))
                .ThenByDescending(one => one.Width * one.Height)
                .First();

    private static IEnumerable<Box> Around(Box box, Box cover) =>
        new[]
        {
            box with
            {
                Width = cover.X - box.X,
            },
            new Box(cover.Right, box.Y, box.Right - cover.Right, box.Height),
            box with
            {
                Height = cover.Y - box.Y,
            },
            new Box(box.X, cover.Bottom, box.Width, box.Bottom - cover.Bottom),
        }.Where(one => one.Width > Sliver && one.Height > Sliver);
}
