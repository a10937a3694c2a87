using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Flow;

/// <summary>Fills pages from top to bottom with blocks in one or more columns. What follows goes on where the former ended, as
/// long as its beginning fits there.</summary>
internal sealed class PageFlow
{
    /// <summary>Kept free above the content for the running head.</summary>
    public const double HeadRoom = 20;

    /// <summary>Kept free below the content for the bar of known length and the foot line.</summary>
    public const double FootRoom = 36;

    /// <summary>Between two columns.</summary>
    public const double Gutter = 18;

    // Less than this at the foot of a page is left free rather than begun.
    private const double LeastRoom = 40;

    private const double HeadingGap = 12;

    private readonly List<Leaf> leaves = [];

    /// <summary>Starts the first page.</summary>
    public PageFlow(PaperSize paper)
    {
        (PageWidth, PageHeight) = Paper.Of(paper);
        Break();
    }

    /// <summary>Width of the paper.</summary>
    public double PageWidth { get; }

    /// <summary>Height of the paper.</summary>
    public double PageHeight { get; }

    /// <summary>Left edge of the content.</summary>
    public double Left { get; } = Paper.Margin;

    /// <summary>Width of the content.</summary>
    public double Width => PageWidth - (2 * Paper.Margin);

    /// <summary>Height of a page's content.</summary>
    public double Height => Bottom - Top;

    /// <summary>Where the next thing goes.</summary>
    public double Y { get; private set; }

    /// <summary>The pages.</summary>
    public IReadOnlyList<Leaf> Leaves => leaves;

    private const double Top = Paper.Margin + HeadRoom;

    private double Bottom => PageHeight - Paper.Margin - FootRoom;

    private bool AtTop => Y <= Top;

    private double Room => Bottom - Y;

    private Leaf Leaf => leaves[^1];

    /// <summary>Width of one of so many columns.</summary>
    public double ColumnWidth(int columns) => (Width - ((columns - 1) * Gutter)) / columns;

    /// <summary>Starts a page unless this one is empty.</summary>
    public void Break()
    {
        if (leaves.Count > 0 && AtTop)
            return;
        leaves.Add(new());
        Y = Top;
    }

    /// <summary>Leaves a gap, but not at the top of a page.</summary>
    public void Space(double height)
    {
        if (!AtTop)
            Y = Math.Min(Y + height, Bottom);
    }

    /// <summary>Puts blocks into the pages.</summary>
    /// <param name="blocks">In reading order, made for the width of a column.</param>
    /// <param name="columns">How many columns stand beside each other.</param>
    public void Add(IReadOnlyList<Block> blocks, int columns = 1)
    {
        var fill = new ColumnFill(blocks, columns);
        var next = 0;
        while (next < blocks.Count)
        {
            if (!AtTop && Room < Math.Max(LeastRoom, fill.Beginning(next)))
                Break();
            var filled = fill.Balanced(next, Room, AtTop) ?? fill.Fill(next, Room, AtTop);
            foreach (var placed in filled.Blocks)
                Put(placed, columns);
            (next, Y) = (filled.Next, Y + filled.Height);
            if (next < blocks.Count)
                Break();
        }
    }

    /// <summary>A heading with a rule under it, and what follows: its beginning stands on the same page.</summary>
    /// <param name="title">The heading, also in the outline.</param>
    /// <param name="blocks">What follows.</param>
    /// <param name="columns">In how many columns.</param>
    public void Section(string title, IReadOnlyList<Block> blocks, int columns = 1)
    {
        var heading = Heading(title);
        Space(HeadingGap);
        var beginning = blocks.Count == 0 ? 0 : new ColumnFill(blocks, columns).Beginning(0);
        if (!AtTop && Room < heading.Height + Math.Max(LeastRoom, beginning))
            Break();
        Add([heading]);
        Add(blocks, columns);
    }

    private Block Heading(string title)
    {
        const double size = 14,
            height = 25;
        var shown = TextFit.Shorten(title, Weight.Bold, size, Width);
        return new(
            height,
            at =>
                [
                    new Caption(at with { Y = at.Y + 8 }, shown, size, Weight: Weight.Bold),
                    new Line(Stroke.Outline, at with { Y = at.Y + 18 }, new(at.X + Width, at.Y + 18)),
                ]
        )
        {
            Bookmark = title,
            Role = PageRole.Heading,
        };
    }

    private void Put(Placed placed, int columns)
    {
        var (block, width) = (placed.Block, ColumnWidth(columns));
        var at = new Spot(Left + (placed.Column * (width + Gutter)), Y + placed.Y);
        Leaf.Add(block, at, width);
    }
}
