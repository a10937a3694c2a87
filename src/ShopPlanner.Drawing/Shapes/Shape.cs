using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Shapes;

/// <summary>One thing drawn. Those of this file are drawn by every writer; the others are made of them.</summary>
public abstract record Shape;

/// <summary>A straight line.</summary>
/// <param name="Stroke">What it means.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
public sealed record Line(Stroke Stroke, Spot From, Spot To) : Shape;

/// <summary>A line through several points.</summary>
/// <param name="Stroke">What it means.</param>
/// <param name="Spots">Two or more.</param>
/// <param name="Closed">Whether the last is joined to the first.</param>
public sealed record Polyline(Stroke Stroke, ImmutableArray<Spot> Spots, bool Closed) : Shape;

/// <summary>A rectangle's edge.</summary>
/// <param name="Stroke">What it means.</param>
/// <param name="Box">Where.</param>
/// <param name="Radius">Of its corners.</param>
public sealed record Frame(Stroke Stroke, Box Box, double Radius = 0) : Shape;

/// <summary>What fills a rectangle.</summary>
public enum Fill
{
    /// <summary>The material's tint.</summary>
    Wood,

    /// <summary>Sawdust: the kerf.</summary>
    Kerf,

    /// <summary>The page, under text that must be read.</summary>
    Paper,

    /// <summary>A piece that has been cut.</summary>
    Done,

    /// <summary>With nothing: not seen, but it can be pressed on a page.</summary>
    Clear,
}

/// <summary>A filled rectangle without an edge.</summary>
/// <param name="Fill">With what.</param>
/// <param name="Box">Where.</param>
/// <param name="Tint">The material's tint <c>#RRGGBB</c>, for <see cref="Fill.Wood"/>.</param>
/// <param name="Radius">Of its corners.</param>
public sealed record Patch(Fill Fill, Box Box, string Tint = "", double Radius = 0) : Shape;

/// <summary>Which point of the text stands at its place.</summary>
public enum Anchor
{
    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}

/// <summary>One line of text.</summary>
/// <param name="At">On the line's middle height, that of a figure.</param>
/// <param name="Words">The text; never broken.</param>
/// <param name="Size">Of the type, in page units.</param>
/// <param name="Anchor">Which end stands at <paramref name="At"/>.</param>
/// <param name="Weight">How heavy.</param>
/// <param name="Tone">Its colour.</param>
/// <param name="Upward">Whether it reads from the right: turned a quarter to the left.</param>
public sealed record Caption(
    Spot At,
    string Words,
    double Size,
    Anchor Anchor = Anchor.Start,
    Weight Weight = Weight.Regular,
    Tone Tone = Tone.Ink,
    bool Upward = false
) : Shape
{
    /// <summary>How wide it runs.</summary>
    public double Length => Typeface.Width(Words, Weight, Size);

    /// <summary>From the middle of a figure down to the base line.</summary>
    public double Drop => Typeface.Of(Weight).CapHeight * Size / 2;

    /// <summary>What it covers: its length by the height from descender to ascender.</summary>
    public Box Extent
    {
        get
        {
            var before = Anchor switch
            {
                Anchor.Start => 0,
                Anchor.Middle => Length / 2,
                _ => Length,
            };
            var (up, down) = (Size * 0.55, Size * 0.50);
            return Upward
                ? new(At.X - up, At.Y - Length + before, up + down, Length)
                : new(At.X - before, At.Y - up, Length, up + down);
        }
    }
}
