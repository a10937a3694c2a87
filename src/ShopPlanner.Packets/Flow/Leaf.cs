using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Flow;

/// <summary>What has been put on a page so far.</summary>
internal sealed class Leaf
{
    private readonly List<PageGroup> groups = [];
    private readonly List<(int Place, Spot At, Block Block)> later = [];

    /// <summary>Headings that begin here.</summary>
    public List<PageMark> Bookmarks { get; } = [];

    /// <summary>Whether something drawn to scale is on it, so that it needs the bar of known length.</summary>
    public bool HasDrawing { get; private set; }

    /// <summary>Puts a block on the page.</summary>
    /// <param name="block">The block.</param>
    /// <param name="at">Its upper left corner.</param>
    /// <param name="width">Of its column.</param>
    public void Add(Block block, Spot at, double width)
    {
        if (block.Later is not null)
            later.Add((groups.Count, at, block));
        groups.Add(
            new(block.Role, [.. block.Draw(at)])
            {
                Link = block.Target.Length > 0 ? new(new(at.X, at.Y, width, block.Height), block.Target) : null,
            }
        );
        if (block.Bookmark.Length > 0)
            Bookmarks.Add(new(block.Bookmark, at.Y, block.Role == PageRole.Subheading));
        HasDrawing |= block.ToScale;
    }

    /// <summary>All groups, with what only the finished pages can tell.</summary>
    /// <param name="pages">The page of each bookmark, from 1.</param>
    public IReadOnlyList<PageGroup> Groups(IReadOnlyDictionary<string, int> pages)
    {
        var all = groups.ToList();
        foreach (var (place, at, block) in later)
            all[place] = all[place] with { Shapes = [.. all[place].Shapes, .. block.Later!(at, pages)] };
        return
        [
            .. all.Select(group =>
                group.Link is { } link && !pages.ContainsKey(link.Target) ? group with { Link = null } : group
            ),
        ];
    }
}
