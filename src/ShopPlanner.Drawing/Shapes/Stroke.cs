using System.Collections.Immutable;

namespace ShopPlanner.Drawing.Shapes;

/// <summary>Colours by their part in the drawing; the page's theme says what they look like.</summary>
public enum Tone
{
    /// <summary>Outlines and figures.</summary>
    Ink,

    /// <summary>Dimension lines, notes.</summary>
    Faded,

    /// <summary>Grain and rules.</summary>
    Hairline,

    /// <summary>The next cut.</summary>
    Chalk,

    /// <summary>Waste.</summary>
    Pencil,

    /// <summary>What is done.</summary>
    Done,

    /// <summary>The page itself.</summary>
    Paper,
}

/// <summary>What a line means. Drafting convention as in ISO 128 (from memory): visible edges thick, the rest half as
/// thick.</summary>
public enum Stroke
{
    /// <summary>A visible edge: thick.</summary>
    Outline,

    /// <summary>A lesser edge: thin.</summary>
    Thin,

    /// <summary>An edge that cannot be seen: thin, dashed.</summary>
    Hidden,

    /// <summary>A centre line: thin, long and short.</summary>
    Centre,

    /// <summary>Dimension lines and ticks.</summary>
    Dimension,

    /// <summary>From a note to what it is about.</summary>
    Leader,

    /// <summary>Hatching of waste.</summary>
    Waste,

    /// <summary>Hatching and edge of a bad place.</summary>
    BadPlace,

    /// <summary>Hatching of end grain.</summary>
    EndGrain,

    /// <summary>Edge of a leftover that is kept: dotted.</summary>
    Keep,

    /// <summary>Fine lines of face grain.</summary>
    Grain,

    /// <summary>The ring around a mark.</summary>
    Ring,

    /// <summary>A chalk line: the next cut.</summary>
    NextCut,
}

/// <summary>How a line looks.</summary>
/// <param name="Style">The name of its style class.</param>
/// <param name="Width">In page units.</param>
/// <param name="Tone">Its colour.</param>
/// <param name="Dashes">Lengths of dash and gap in page units; empty for a full line.</param>
public sealed record Pen(string Style, double Width, Tone Tone, ImmutableArray<double> Dashes)
{
    /// <summary>Style classes by what a line means.</summary>
    public static Pen Of(Stroke stroke) => Pens[stroke];

    /// <summary>All of them, for a style sheet.</summary>
    public static IEnumerable<Pen> All => Pens.Values;

    private static readonly Dictionary<Stroke, Pen> Pens = new()
    {
        [Stroke.Outline] = new("outline", 1.2, Tone.Ink, []),
        [Stroke.Thin] = new("thin", 0.6, Tone.Ink, []),
        [Stroke.Hidden] = new("hidden", 0.6, Tone.Ink, [4, 2]),
        [Stroke.Centre] = new("center", 0.6, Tone.Faded, [9, 2, 2, 2]),
        [Stroke.Dimension] = new("dimension", 0.5, Tone.Faded, []),
        [Stroke.Leader] = new("leader", 0.5, Tone.Faded, []),
        [Stroke.Waste] = new("waste", 0.9, Tone.Pencil, []),
        [Stroke.BadPlace] = new("bad-place", 1, Tone.Pencil, []),
        [Stroke.EndGrain] = new("end-grain", 0.4, Tone.Ink, []),
        [Stroke.Keep] = new("keep", 1.4, Tone.Done, [1.4, 2.2]),
        [Stroke.Grain] = new("grain", 0.35, Tone.Hairline, []),
        [Stroke.Ring] = new("ring", 0.9, Tone.Ink, []),
        [Stroke.NextCut] = new("next-cut", 2.4, Tone.Chalk, []),
    };
}
