using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Flow;

/// <summary>What one place of a table shows.</summary>
internal abstract record Cell
{
    /// <summary>Nothing.</summary>
    public static Cell Empty { get; } = new TextCell("");

    /// <summary>Whether it is empty.</summary>
    public virtual bool IsEmpty => false;

    /// <summary>The height it needs at a width.</summary>
    public abstract double Height(double width);

    /// <summary>Height of its first line; the first lines of a row stand on one middle.</summary>
    public abstract double FirstLine(double width);

    /// <summary>What it looks like.</summary>
    /// <param name="box">Where.</param>
    /// <param name="anchor">To which side it leans.</param>
    public abstract IEnumerable<Shape> Draw(Box box, Anchor anchor);
}

/// <summary>Text that wraps; beyond a number of lines it is cut off with …, so that a row always fits a page.</summary>
internal sealed record TextCell(string Text, double Size = Blocks.TextSize, Weight Weight = Weight.Regular, Tone Tone = Tone.Ink)
    : Cell
{
    private const int MostLines = 8,
        MostCharacters = 2000;

    private double LineHeight => Size * 1.22;

    /// <inheritdoc />
    public override bool IsEmpty => Text.Length == 0;

    /// <inheritdoc />
    public override double FirstLine(double width) => LineHeight;

    /// <inheritdoc />
    public override double Height(double width) => Lines(width).Count * LineHeight;

    /// <inheritdoc />
    public override IEnumerable<Shape> Draw(Box box, Anchor anchor)
    {
        var x = anchor switch
        {
            Anchor.Start => box.X,
            Anchor.Middle => box.Centre.X,
            _ => box.Right,
        };
        return Lines(box.Width)
            .Select((line, i) => new Caption(new(x, box.Y + ((i + 0.5) * LineHeight)), line, Size, anchor, Weight, Tone));
    }

    private string Words => TextFit.Clean(Text.Length > MostCharacters ? Text[..MostCharacters] : Text, Weight);

    private IReadOnlyList<string> Lines(double width) => TextFit.Wrap(Words, Weight, Size, width, MostLines);
}

/// <summary>A box to tick with a pencil.</summary>
internal sealed record TickCell : Cell
{
    private const double Side = 8.5;

    /// <inheritdoc />
    public override double Height(double width) => Side + 1.5;

    /// <inheritdoc />
    public override double FirstLine(double width) => Side + 1.5;

    /// <inheritdoc />
    public override IEnumerable<Shape> Draw(Box box, Anchor anchor) =>
        [new Frame(Stroke.Ring, new(box.X, box.Y + 1, Side, Side), 1)];
}

/// <summary>A mark in its ring; one too wide for a ring in its column is set as text.</summary>
internal sealed record MarkCell(string Mark) : Cell
{
    private const double Size = 8;

    private TextCell Plain => new(Mark, Size, Weight.Bold);

    /// <inheritdoc />
    public override double Height(double width) => HasRing(width) ? RingMark.HeightOf(Size) : Plain.Height(width);

    /// <inheritdoc />
    public override IEnumerable<Shape> Draw(Box box, Anchor anchor) =>
        HasRing(box.Width)
            ? new RingMark(
                new(box.X + (RingMark.WidthOf(Mark, Size) / 2), box.Y + (RingMark.HeightOf(Size) / 2)),
                Mark,
                Size
            ).Parts
            : Plain.Draw(box, anchor);

    /// <inheritdoc />
    public override double FirstLine(double width) => HasRing(width) ? RingMark.HeightOf(Size) : Plain.FirstLine(width);

    private bool HasRing(double width) => RingMark.WidthOf(Mark, Size) <= width;
}
