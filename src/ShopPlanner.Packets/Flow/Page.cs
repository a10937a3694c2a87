using System.Collections.Immutable;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Flow;

/// <summary>A finished page.</summary>
/// <param name="Width">Of the paper; one unit is a point of 1/72 in.</param>
/// <param name="Height">Of the paper.</param>
/// <param name="Groups">All that is on it, in reading order.</param>
/// <param name="Bookmarks">Headings that begin on it, for the file's outline.</param>
public sealed record Page(double Width, double Height, ImmutableArray<PageGroup> Groups, ImmutableArray<PageMark> Bookmarks)
{
    /// <summary>Places that lead to a bookmark.</summary>
    public IEnumerable<PageLink> Links => Groups.Select(group => group.Link).OfType<PageLink>();

    /// <summary>The page as one drawing.</summary>
    public LineDrawing Drawing => new("", "", Width, Height, [.. Groups.SelectMany(group => group.Shapes)]);
}

/// <summary>Shapes that are read as one.</summary>
/// <param name="Role">What they are.</param>
/// <param name="Shapes">In drawing order.</param>
public sealed record PageGroup(PageRole Role, ImmutableArray<Shape> Shapes)
{
    /// <summary>Where a press on it leads; null for nowhere.</summary>
    public PageLink? Link { get; init; }
}

/// <summary>An entry of the outline.</summary>
/// <param name="Title">Its words; the first of several equal ones is the one that links lead to.</param>
/// <param name="Y">Where it stands on the page.</param>
/// <param name="IsWithin">Whether it belongs to the entry before it that does not.</param>
public sealed record PageMark(string Title, double Y, bool IsWithin);

/// <summary>A place that leads to a bookmark.</summary>
/// <param name="Area">Where it can be pressed.</param>
/// <param name="Target">The bookmark.</param>
public sealed record PageLink(Box Area, string Target);

/// <summary>A drawing on a page, with what it shows in words.</summary>
/// <param name="Words">For somebody who cannot see it.</param>
/// <param name="Area">That it covers.</param>
/// <param name="Parts">Its shapes.</param>
public sealed record PageFigure(string Words, Box Area, ImmutableArray<Shape> Parts) : Composite
{
    /// <inheritdoc />
    public override ImmutableArray<Shape> Parts { get; } = Parts;

    /// <summary>A drawing at a place of the page.</summary>
    internal static PageFigure Of(LineDrawing drawing, Spot at)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return new(
            drawing.Description.Length > 0 ? drawing.Description : drawing.Title,
            new(at.X, at.Y, drawing.Width, drawing.Height),
            [.. drawing.Primitives().Select(shape => shape.Moved(at.X, at.Y))]
        );
    }
}
