using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Flow;

/// <summary>What a piece of a page is to somebody who hears it read.</summary>
public enum PageRole
{
    /// <summary>Text to read on.</summary>
    Text,

    /// <summary>The heading of a section.</summary>
    Heading,

    /// <summary>A heading within a section.</summary>
    Subheading,

    /// <summary>On every page, and no part of what is read on.</summary>
    Frame,
}

/// <summary>Something of one height that is put on a page whole.</summary>
/// <param name="Height">That it takes.</param>
/// <param name="Draw">Its shapes, made for the page place of its upper left corner.</param>
internal sealed record Block(double Height, Func<Spot, IEnumerable<Shape>> Draw)
{
    /// <summary>A gap above it, but not at the top of a column.</summary>
    public double Before { get; init; }

    /// <summary>Whether it stands in one column with the block that follows.</summary>
    public bool Keep { get; init; }

    /// <summary>Whether it is drawn to scale, so that the page wants the bar of known length.</summary>
    public bool ToScale { get; init; }

    /// <summary>What is drawn once more above it where a column begins with it: the head of its table.</summary>
    public Block? Head { get; init; }

    /// <summary>Under which name the outline has it; empty for no entry.</summary>
    public string Bookmark { get; init; } = "";

    /// <summary>What it is to somebody who hears it read.</summary>
    public PageRole Role { get; init; }

    /// <summary>The bookmark that a press on it leads to; empty for none.</summary>
    public string Target { get; init; } = "";

    /// <summary>Further shapes that tell on which page a bookmark stands; known when all pages are filled.</summary>
    public Func<Spot, IReadOnlyDictionary<string, int>, IEnumerable<Shape>>? Later { get; init; }

    /// <summary>An empty space.</summary>
    public static Block Gap(double height) => new(height, _ => []);
}
