using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>A node of a layout to begin with, in the search's measure and as small as its parts allow.</summary>
/// <param name="Type">Of a part; less than zero for a cut.</param>
/// <param name="W">Least extent along x.</param>
/// <param name="H">Least extent along y.</param>
/// <param name="AlongX">True when the children lie side by side along x.</param>
/// <param name="Children">None for a part, else two or more; none of them a cut of the same direction.</param>
internal sealed record SeedBranch(int Type, long W, long H, bool AlongX, IReadOnlyList<SeedBranch> Children)
{
    private bool IsPart => Type >= 0;

    public static SeedBranch Part(int type, long w, long h) => new(type, w, h, false, []);

    /// <summary>A cut with these children, drawn together as far as possible; null without any.</summary>
    public static SeedBranch? Join(bool alongX, IEnumerable<SeedBranch?> children)
    {
        List<SeedBranch> flat =
        [
            .. children
                .OfType<SeedBranch>()
                .SelectMany(child => !child.IsPart && child.AlongX == alongX ? child.Children : [child]),
        ];
        if (flat.Count < 2)
            return flat.FirstOrDefault();
        return alongX
            ? new(CutNode.Cut, flat.Sum(c => c.W), flat.Max(c => c.H), true, flat)
            : new(CutNode.Cut, flat.Max(c => c.W), flat.Sum(c => c.H), false, flat);
    }

    /// <summary>The same without parts that the sheet has no room for; null when nothing is left.</summary>
    public SeedBranch? Within(int w, int h)
    {
        var tree = this;
        while (tree is not null && (tree.W > w || tree.H > h))
            tree = tree.W > w ? tree.Less(true, tree.W - w) : tree.Less(false, tree.H - h);
        return tree;
    }

    /// <summary>The nodes in the order that a <see cref="CutTree"/> takes them.</summary>
    public IEnumerable<CutNode> Preorder(int depth = 0) =>
        Children
            .SelectMany(c => c.Preorder(depth + 1))
            .Prepend(
                new CutNode
                {
                    Depth = depth,
                    Item = Type,
                    W = (int)W,
                    H = (int)H,
                }
            );

    /// <summary>Without one part of those that make it so long: the smallest that is long enough, else the longest.</summary>
    private SeedBranch? Less(bool alongX, long excess)
    {
        if (IsPart)
            return null;
        var longest = Children.MaxBy(c => c.Along(alongX))!;
        var chosen =
            AlongX != alongX ? longest : Children.Where(c => c.Along(alongX) >= excess).MinBy(c => c.Along(alongX)) ?? longest;
        return Join(AlongX, Children.Select(c => ReferenceEquals(c, chosen) ? c.Less(alongX, excess) : c));
    }

    private long Along(bool alongX) => alongX ? W : H;
}
