using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>The marks of a slanted view: on the part where a ring has room on what is seen of it, else at the nearer side with a
/// leader. A part of which nothing is seen has none.</summary>
internal sealed class SlantMarks
{
    // More rings than this hide the drawing: then each kind has one.
    private const int MostCopies = 36;
    private static readonly double[] Steps = [0.5, 0.3, 0.7, 0.12, 0.88];

    private readonly ImmutableArray<Placed> solids;
    private readonly double size;
    private readonly double scale;
    private readonly Func<Spot, Spot> put;
    private readonly Box page;
    private readonly List<Box> taken = [];
    private readonly List<Shape> rings = [];
    private readonly List<Callout> left = [];
    private readonly List<Callout> right = [];

    /// <summary>Finds a place for each mark.</summary>
    /// <param name="solids">The parts as they are painted.</param>
    /// <param name="size">Of the letters.</param>
    /// <param name="scale">Page units for a millimetre.</param>
    /// <param name="put">From millimetres to the page.</param>
    /// <param name="page">The drawing with the columns of rings at both sides.</param>
    /// <param name="isMarked">Which parts carry their marks.</param>
    public SlantMarks(
        ImmutableArray<Placed> solids,
        double size,
        double scale,
        Func<Spot, Spot> put,
        Box page,
        Func<ShownPart, bool> isMarked
    )
    {
        (this.solids, this.size, this.scale, this.put, this.page) = (solids, size, scale, put, page);
        var marked = Enumerable.Range(0, solids.Length).Where(i => isMarked(solids[i].Part)).ToList();
        var byKind = marked.Count > MostCopies;
        var without = new List<(string Words, List<int> Copies)>();
        foreach (var group in marked.GroupBy(i => byKind ? solids[i].Part.Part.Id : solids[i].Part.Copy.Mark))
        {
            if (group.Select(i => On(i, group.Key)).FirstOrDefault(ring => ring is not null) is { } ring)
                rings.Add(ring);
            else
                without.Add((group.Key, [.. group.Reverse()]));
        }

        Missing = without.Count(one => !one.Copies.Exists(i => Beside(i, one.Words)));
    }

    /// <summary>How many marks have no place, since nothing is seen of their parts.</summary>
    public int Missing { get; }

    /// <summary>Rings and leaders.</summary>
    public IEnumerable<Shape> Draw()
    {
        var half = Callouts.Column(size) / 2;
        return
        [
            .. Callouts.Down(left, page.X + half, page.Y, page.Bottom, size),
            .. Callouts.Down(right, page.Right - half, page.Y, page.Bottom, size),
            .. rings,
        ];
    }

    private Marked? On(int i, string words)
    {
        var half = new Spot(RingMark.WidthOf(words, size) / 2 / scale, RingMark.HeightOf(size) / 2 / scale);
        foreach (var spot in Samples(solids[i]).Where(spot => Fits(i, spot, half)))
        {
            var ring = new RingMark(put(spot), words, size);
            if (taken.Exists(ring.Extent.Overlaps))
                continue;
            taken.Add(ring.Extent);
            return new(solids[i].Part.Copy.Mark, [ring]);
        }

        return null;
    }

    // A leader keeps clear of other rings where it can.
    private bool Beside(int i, string words)
    {
        var seen = Samples(solids[i]).Where(spot => IsSeen(i, spot)).Select(put).ToList();
        if (seen.Count == 0)
            return false;
        var at = seen.FirstOrDefault(IsClear, seen[0]);
        (IsLeft(at) ? left : right).Add(new(solids[i].Part.Copy.Mark, words, at));
        return true;
    }

    private bool IsLeft(Spot at) => at.X < page.Centre.X;

    private bool IsClear(Spot at)
    {
        var path = IsLeft(at) ? new Box(page.X, at.Y - 1, at.X - page.X, 2) : new Box(at.X, at.Y - 1, page.Right - at.X, 2);
        return !taken.Exists(path.Overlaps);
    }

    private bool Fits(int i, Spot spot, Spot half) =>
        IsSeen(i, spot)
        && IsSeen(i, new(spot.X - half.X, spot.Y))
        && IsSeen(i, new(spot.X + half.X, spot.Y))
        && IsSeen(i, new(spot.X, spot.Y - half.Y))
        && IsSeen(i, new(spot.X, spot.Y + half.Y));

    private bool IsSeen(int i, Spot spot)
    {
        if (!solids[i].Covers(spot))
            return false;
        for (var k = i + 1; k < solids.Length; k++)
            if (solids[k].Covers(spot))
                return false;
        return true;
    }

    // The middle of the largest face first.
    private static IEnumerable<Spot> Samples(Placed one)
    {
        foreach (var face in one.Faces.OrderByDescending(Area))
        foreach (var u in Steps)
        foreach (var v in Steps)
            yield return new(
                face[0].X + (u * (face[1].X - face[0].X)) + (v * (face[3].X - face[0].X)),
                face[0].Y + (u * (face[1].Y - face[0].Y)) + (v * (face[3].Y - face[0].Y))
            );
    }

    private static double Area(ImmutableArray<Spot> face) =>
        Math.Abs(((face[1].X - face[0].X) * (face[3].Y - face[0].Y)) - ((face[1].Y - face[0].Y) * (face[3].X - face[0].X)));
}
