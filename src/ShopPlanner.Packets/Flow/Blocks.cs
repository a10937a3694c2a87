using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Flow;

/// <summary>The usual blocks: text, a heading within a section, a drawing.</summary>
internal static class Blocks
{
    /// <summary>The size of running text; nothing that is read on is smaller.</summary>
    public const double TextSize = 9;

    private const double Leading = 1.22;

    // What stands together must fit a column, whatever somebody typed.
    private const int MostTogether = 900;

    /// <summary>Text broken into lines, a block each, so that a long text goes over to the next column.</summary>
    public static IEnumerable<Block> Text(
        string text,
        double width,
        double size = TextSize,
        Weight weight = Weight.Regular,
        Tone tone = Tone.Ink
    ) =>
        TextFit
            .Wrap(TextFit.Clean(text, weight), weight, size, width)
            .Select(line => new Block(
                size * Leading,
                at => [new Caption(at with { Y = at.Y + (size * 0.62) }, line, size, Weight: weight, Tone: tone)]
            ));

    /// <summary>A text whose lines stand together, below a gap.</summary>
    public static Block Paragraph(
        string text,
        double width,
        double before = 0,
        double size = TextSize,
        Weight weight = Weight.Regular,
        Tone tone = Tone.Ink
    ) => Stack([.. Text(Capped(text), width, size, weight, tone)]) with { Before = before };

    /// <summary>Lines with a bullet before the first.</summary>
    public static Block Item(string text, double width)
    {
        const double indent = 10;
        var lines = Stack([.. Text(Capped(text), width - indent)]);
        return new(
            lines.Height + 2,
            at =>
                [
                    new Caption(at with { Y = at.Y + (TextSize * 0.62) }, "•", TextSize, Weight: Weight.Bold),
                    .. lines.Draw(at with { X = at.X + indent }),
                ]
        );
    }

    /// <summary>A heading within a section, kept with what follows.</summary>
    /// <param name="text">The heading.</param>
    /// <param name="width">Of the column.</param>
    /// <param name="bookmark">Its name in the outline; empty for no entry.</param>
    public static Block Subheading(string text, double width, string bookmark = "") =>
        Paragraph(text, width, 9, 10.5, Weight.Bold) with
        {
            Keep = true,
            Role = PageRole.Subheading,
            Bookmark = bookmark,
        };

    /// <summary>A drawing.</summary>
    public static Block Figure(LineDrawing drawing, bool toScale = false) =>
        new(drawing.Height, at => [PageFigure.Of(drawing, at)]) { ToScale = toScale };

    /// <summary>Blocks above each other as one.</summary>
    public static Block Stack(IReadOnlyList<Block> blocks) =>
        new(blocks.Sum(one => one.Height), at => blocks.Index().SelectMany(one => one.Item.Draw(Below(blocks, one.Index, at))));

    /// <summary>Blocks beside each other as one, their tops level.</summary>
    /// <param name="gutter">Between two of them.</param>
    /// <param name="cells">Each with its width.</param>
    public static Block Beside(double gutter, IReadOnlyList<(Block Block, double Width)> cells) =>
        new(
            cells.Max(one => one.Block.Height),
            at =>
                cells
                    .Index()
                    .SelectMany(one =>
                        one.Item.Block.Draw(at with { X = at.X + cells.Take(one.Index).Sum(cell => cell.Width + gutter) })
                    )
        )
        {
            ToScale = cells.Any(one => one.Block.ToScale),
        };

    private static string Capped(string text) => text.Length > MostTogether ? text[..MostTogether] + "…" : text;

    private static Spot Below(IReadOnlyList<Block> blocks, int index, Spot at) =>
        at with
        {
            Y = at.Y + blocks.Take(index).Sum(one => one.Height),
        };
}
