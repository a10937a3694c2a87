using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Flow;

/// <summary>What has been put on a page so far.</summary>
internal sealed class Leaf
{
    /// <summary>In drawing order.</summary>
    public List<Shape> Shapes { get; } = [];

    /// <summary>Headings that begin here.</summary>
    public List<string> Bookmarks { get; } = [];

    /// <summary>Whether something drawn to scale is on it, so that it needs the bar of known length.</summary>
    public bool HasDrawing { get; set; }
}

/// <summary>Fills pages from top to bottom; what is added is never split.</summary>
internal sealed class PageFlow
{
    /// <summary>Kept free above the content for the running head.</summary>
    public const double HeadRoom = 20;

    /// <summary>Kept free below the content for the bar of known length and the foot line.</summary>
    public const double FootRoom = 44;

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

    private Leaf Leaf => leaves[^1];

    /// <summary>Whether so much still fits on this page.</summary>
    public bool Fits(double height) => Y + height <= Bottom + 0.01;

    /// <summary>Starts a page unless this one is empty.</summary>
    public void Break()
    {
        if (leaves.Count > 0 && AtTop)
            return;
        leaves.Add(new());
        Y = Top;
    }

    /// <summary>Starts a page unless so much fits on this one.</summary>
    public void Need(double height)
    {
        if (!Fits(height))
            Break();
    }

    /// <summary>Leaves a gap, but not at the top of a page.</summary>
    public void Space(double height)
    {
        if (!AtTop)
            Y = Math.Min(Y + height, Bottom);
    }

    /// <summary>Puts shapes here and moves on below them.</summary>
    /// <param name="height">That they take.</param>
    /// <param name="shapes">Made for the page y of their top edge.</param>
    public void Add(double height, Func<double, IEnumerable<Shape>> shapes)
    {
        Need(height);
        Leaf.Shapes.AddRange(shapes(Y));
        Y += height;
    }

    /// <summary>Puts a drawing here.</summary>
    public void Add(LineDrawing drawing)
    {
        Add(drawing.Height, y => drawing.Primitives().Select(s => s.Moved(Left, y)));
        Leaf.HasDrawing = true;
    }

    /// <summary>A heading with a rule under it, kept with what follows.</summary>
    /// <param name="text">The heading.</param>
    /// <param name="following">Height that must fit below it.</param>
    public void Heading(string text, double following)
    {
        const double size = 15,
            height = 27;
        Space(14);
        Need(height + Math.Min(following, Height - height));
        Leaf.Bookmarks.Add(text);
        Add(
            height,
            y =>
                [
                    new Caption(new(Left, y + 9), text, size, Weight: Weight.Bold),
                    new Line(Stroke.Outline, new(Left, y + 19), new(Left + Width, y + 19)),
                ]
        );
    }

    /// <summary>Text over the full width, broken into lines; lines may go over to the next page.</summary>
    public void Paragraph(string text, double size = 9.5, Weight weight = Weight.Regular, Tone tone = Tone.Ink)
    {
        foreach (var line in TextFit.Wrap(text, weight, size, Width))
            Add(size * 1.35, y => [new Caption(new(Left, y + (size * 0.65)), line, size, Weight: weight, Tone: tone)]);
    }
}
