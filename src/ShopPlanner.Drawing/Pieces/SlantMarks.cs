using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>The marks of a slanted view: on the part where a ring has room on what is seen of it, else at a side with a leader
/// that crosses neither a ring nor another leader. A part of which nothing is seen has none.</summary>
internal sealed class SlantMarks
{
    // More rings than this hide the drawing: then each kind has one.
    private const int MostCopies = 36,
        MostOnPhone = 18;
    private static readonly double[] Steps = [0.5, 0.3, 0.7, 0.12, 0.88];

    private readonly ImmutableArray<Placed> solids;
    private readonly double size;
    private readonly double scale;
    private readonly Func<Spot, Spot> put;
    private readonly Box page;
    private readonly Taken taken = new();
    private readonly List<Shape> rings = [];
    private readonly List<Callout> left = [];
    private readonly List<Callout> right = [];

    /// <summary>Finds a place for each mark.</summary>
    /// <param name="solids">The parts as they are painted.</param>
    /// <param name="room">Says how large the letters are.</param>
    /// <param name="scale">Page units for a millimetre.</param>
    /// <param name="put">From millimetres to the page.</param>
    /// <param name="page">The drawing with the columns of rings at both sides.</param>
    /// <param name="isMarked">Which parts carry their marks.</param>
    public SlantMarks(
        ImmutableArray<Placed> solids,
        PieceRoom room,
        double scale,
        Func<Spot, Spot> put,
        Box page,
        Func<ShownPart, bool> isMarked
    )
    {
        (this.solids, size, this.scale, this.put, this.page) = (solids, room.RingType, scale, put, page);
        var marked = Enumerable.Range(0, solids.Length).Where(i => isMarked(solids[i].Part)).ToList();
        var byKind = marked.Count > (room.IsNarrow ? MostOnPhone : MostCopies);
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

    /// <summary>How many marks have no place, since nothing is seen of their parts or no leader reaches them.</summary>
    public int Missing { get; }

    /// <summary>Rings and leaders.</summary>
    public IEnumerable<Shape> Draw() =>
        [
            .. Callouts.Down(left, Edge(isLeft: true), -1, page.Y, page.Bottom, size),
            .. Callouts.Down(right, Edge(isLeft: false), 1, page.Y, page.Bottom, size),
            .. rings,
        ];

    private Marked? On(int i, string words)
    {
        var half = new Spot(RingMark.WidthOf(words, size) / 2 / scale, RingMark.HeightOf(size) / 2 / scale);
        foreach (var spot in Samples(solids[i]).Where(spot => Fits(i, spot, half)))
        {
            var ring = new RingMark(put(spot), words, size);
            if (!taken.IsFree(ring.Extent))
                continue;
            taken.Add(ring.Extent);
            return new(solids[i].Part.Copy.Mark, [ring]);
        }

        return null;
    }

    // To the nearer side first.
    private bool Beside(int i, string words)
    {
        var seen = Samples(solids[i]).Where(spot => IsSeen(i, spot)).Select(put).ToList();
        var mark = solids[i].Part.Copy.Mark;
        foreach (var isNear in new[] { true, false })
        foreach (var at in seen)
            if (IsLed(new(mark, words, at), isNear == at.X < page.Centre.X))
                return true;
        return false;
    }

    private bool IsLed(Callout callout, bool isLeft)
    {
        var column = isLeft ? left : right;
        var turn = new Spot(Edge(isLeft) + (isLeft ? -Callouts.Straight : Callouts.Straight), callout.At.Y);
        if (column.Count >= Callouts.Most(page.Y, page.Bottom, size) || !taken.TryTake(callout.At, turn))
            return false;
        column.Add(callout);
        return true;
    }

    // The drawing's own edge, within the columns.
    private double Edge(bool isLeft) => isLeft ? page.X + Callouts.Column(size) : page.Right - Callouts.Column(size);

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
