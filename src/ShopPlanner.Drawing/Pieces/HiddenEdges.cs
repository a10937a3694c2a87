using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Edges of what cannot be seen: parts behind others, tongues and tenons in their grooves and mortises.</summary>
internal static class HiddenEdges
{
    private const double Same = 0.6;
    private const int Most = 220,
        MostOnPhone = 110;

    /// <summary>Dashed lines, none on an outline and none twice; tongues are left out first, then everything, where they are too
    /// many to be read.</summary>
    public static IEnumerable<Shape> Of(
        IReadOnlyCollection<SeenPart> parts,
        IEnumerable<(string Mark, Box Box)> tongues,
        bool isNarrow
    )
    {
        var most = isNarrow ? MostOnPhone : Most;
        var outlines = parts.Where(part => part.Free.Count > 0).SelectMany(part => Edges(part.Mark, part.Place)).ToList();
        var covered = parts.Where(part => part.Free.Count == 0).SelectMany(part => Edges(part.Mark, part.Place));
        var edges = Distinct(covered, outlines);
        var all = Distinct(edges.Concat(tongues.SelectMany(one => Edges(one.Mark, one.Box))), outlines);
        var shown =
            all.Count <= most ? all
            : edges.Count <= most ? edges
            : [];
        return shown
            .GroupBy(edge => edge.Mark)
            .Select(group => new Marked(group.Key, [.. group.Select(edge => new Line(Stroke.Hidden, edge.From, edge.To))]));
    }

    private static List<Edge> Distinct(IEnumerable<Edge> edges, List<Edge> outlines)
    {
        var kept = new List<Edge>();
        foreach (var edge in edges.Where(edge => edge.Length > 2))
            if (!outlines.Exists(edge.LiesOn) && !kept.Exists(edge.LiesOn))
                kept.Add(edge);
        return kept;
    }

    private static IEnumerable<Edge> Edges(string mark, Box box) =>
        [
            new(mark, new(box.X, box.Y), new(box.Right, box.Y)),
            new(mark, new(box.X, box.Bottom), new(box.Right, box.Bottom)),
            new(mark, new(box.X, box.Y), new(box.X, box.Bottom)),
            new(mark, new(box.Right, box.Y), new(box.Right, box.Bottom)),
        ];

    private sealed record Edge(string Mark, Spot From, Spot To)
    {
        public double Length => To.X - From.X + To.Y - From.Y;

        public bool LiesOn(Edge other) =>
            Math.Abs(From.X - To.X) < Same == Math.Abs(other.From.X - other.To.X) < Same
            && From.X >= other.From.X - Same
            && To.X <= other.To.X + Same
            && From.Y >= other.From.Y - Same
            && To.Y <= other.To.Y + Same;
    }
}
