using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Shapes;

/// <summary>A shape made of simpler ones.</summary>
public abstract record Composite : Shape
{
    /// <summary>The simpler shapes, in drawing order.</summary>
    public abstract ImmutableArray<Shape> Parts { get; }
}

/// <summary>Lines at 45° that fill a box.</summary>
/// <param name="Stroke">What they mean.</param>
/// <param name="Box">Where.</param>
/// <param name="Spacing">Between lines, measured along an edge, more than zero.</param>
public sealed record Hatch(Stroke Stroke, Box Box, double Spacing) : Composite
{
    /// <inheritdoc />
    public override ImmutableArray<Shape> Parts
    {
        get
        {
            var lines = ImmutableArray.CreateBuilder<Shape>();
            for (var along = Spacing / 2; along < Box.Width + Box.Height; along += Spacing)
                lines.Add(new Line(Stroke, Lower(along), Upper(along)));
            return lines.ToImmutable();
        }
    }

    // A line starts on the left edge or the bottom and ends on the top or the right edge.
    private Spot Lower(double along) =>
        along <= Box.Height ? new(Box.X, Box.Y + along) : new(Box.X + along - Box.Height, Box.Bottom);

    private Spot Upper(double along) =>
        along <= Box.Width ? new(Box.X + along, Box.Y) : new(Box.Right, Box.Y + along - Box.Width);
}

/// <summary>Lines at 45° both ways that fill a box, and its edge: what is barred, told from scrap without colour.</summary>
/// <param name="Stroke">What they mean.</param>
/// <param name="Box">Where.</param>
/// <param name="Spacing">Between lines, measured along an edge, more than zero.</param>
public sealed record CrossHatch(Stroke Stroke, Box Box, double Spacing) : Composite
{
    /// <inheritdoc />
    public override ImmutableArray<Shape> Parts
    {
        get
        {
            var lines = new Hatch(Stroke, Box, Spacing).Parts.Cast<Line>().ToList();
            return
            [
                new Frame(Stroke, Box),
                .. lines,
                .. lines.Select(line => new Line(Stroke, Mirrored(line.From), Mirrored(line.To))),
            ];
        }
    }

    private Spot Mirrored(Spot spot) => spot with { X = Box.X + Box.Right - spot.X };
}

/// <summary>Which way a dimension runs.</summary>
public enum Run
{
    /// <summary>From left to right, read from the bottom.</summary>
    Across,

    /// <summary>From bottom to top, read from the right.</summary>
    Up,
}

/// <summary>
/// A dimension: a thin line with a slanting tick at each end and extension lines that leave a small gap to the outline
/// (conventions of ISO 129-1 and ASME Y14.5, from memory). The text stands on the line's far side unless it is told where.
/// </summary>
/// <param name="Run">Which way.</param>
/// <param name="From">Start: x of <see cref="Run.Across"/>, y of <see cref="Run.Up"/>.</param>
/// <param name="To">End.</param>
/// <param name="At">Where the line lies: y of <see cref="Run.Across"/>, x of <see cref="Run.Up"/>.</param>
/// <param name="Edge">Where the outline lies from which the extension lines start, on the same axis as <paramref
/// name="At"/>.</param>
/// <param name="Words">The figure; empty for ticks alone.</param>
/// <param name="Size">Of the type.</param>
public sealed record Dimension(Run Run, double From, double To, double At, double Edge, string Words, double Size) : Composite
{
    private const double Tick = 2.2,
        Gap = 1.5,
        Beyond = 2;

    /// <summary>Whether the figure stands above the line, between it and the outline; of <see cref="Run.Across"/> only.</summary>
    public bool IsAbove { get; init; }

    /// <summary>From the line to the figure, which is too long to stand on it and lies level at <see cref="FigureAt"/>; empty
    /// where it stands on the line.</summary>
    public ImmutableArray<Spot> Leader { get; init; } = [];

    /// <summary>The middle of a figure that a leader points to.</summary>
    public Spot FigureAt { get; init; }

    /// <inheritdoc />
    public override ImmutableArray<Shape> Parts
    {
        get
        {
            var lines = ImmutableArray.Create<Shape>(
                Straight(From, At, To, At),
                Extension(From),
                Extension(To),
                Slant(From),
                Slant(To)
            );
            if (Words.Length == 0)
                return lines;
            return Leader.IsEmpty
                ? lines.Add(Figure())
                : lines.Add(new Polyline(Stroke.Leader, Leader, Closed: false)).Add(Level());
        }
    }

    private Caption Level() => new(FigureAt, Words, Size, Anchor.Middle, Weight.Medium);

    private Caption Figure()
    {
        var middle = (From + To) / 2;
        return Run == Run.Across
            ? new(new(middle, At + (Size * (IsAbove ? -0.72 : 0.78))), Words, Size, Anchor.Middle, Weight.Medium)
            : new(new(At - (Size * 0.72), middle), Words, Size, Anchor.Middle, Weight.Medium, Upward: true);
    }

    private Line Extension(double along)
    {
        var away = Math.Sign(At - Edge);
        return Straight(along, Edge + (away * Gap), along, At + (away * Beyond));
    }

    private Line Slant(double along) => new(Stroke.Thin, Place(along - Tick, At + Tick), Place(along + Tick, At - Tick));

    private Line Straight(double a1, double b1, double a2, double b2) => new(Stroke.Dimension, Place(a1, b1), Place(a2, b2));

    private Spot Place(double along, double at) => Run == Run.Across ? new(along, at) : new(at, along);
}

/// <summary>A part's mark in a ring; the ring is drawn out where the mark is long.</summary>
/// <param name="At">The ring's middle.</param>
/// <param name="Mark">The mark.</param>
/// <param name="Size">Of the type.</param>
/// <param name="Upward">Whether it reads from the right.</param>
public sealed record RingMark(Spot At, string Mark, double Size, bool Upward = false) : Composite
{
    private const double HeightPerSize = 1.6;

    /// <inheritdoc />
    public override ImmutableArray<Shape> Parts =>
        [
            new Patch(Fill.Paper, Extent, Radius: Size * HeightPerSize / 2),
            new Frame(Stroke.Ring, Extent, Size * HeightPerSize / 2),
            new Caption(At, Mark, Size, Anchor.Middle, Weight.Bold, Upward: Upward),
        ];

    /// <summary>What it covers.</summary>
    public Box Extent
    {
        get
        {
            var (long_, high) = (WidthOf(Mark, Size), HeightOf(Size));
            var (width, height) = Upward ? (high, long_) : (long_, high);
            return new(At.X - (width / 2), At.Y - (height / 2), width, height);
        }
    }

    /// <summary>How wide the ring of a mark is.</summary>
    public static double WidthOf(string mark, double size) =>
        Math.Max(HeightOf(size), Typeface.Width(mark, Weight.Bold, size) + (size * 0.8));

    /// <summary>How high a ring is.</summary>
    public static double HeightOf(double size) => size * HeightPerSize;
}
