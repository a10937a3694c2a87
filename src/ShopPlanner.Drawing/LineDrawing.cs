using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing;

/// <summary>A drawing, ready for any writer: shapes in page units from the top left corner.</summary>
/// <param name="Title">What it shows, in a few words; read aloud to those who cannot see it.</param>
/// <param name="Description">What can be seen, in full.</param>
/// <param name="Width">Page units: 1/72 in on paper.</param>
/// <param name="Height">Page units.</param>
/// <param name="Shapes">In drawing order, later ones on top.</param>
public sealed record LineDrawing(string Title, string Description, double Width, double Height, ImmutableArray<Shape> Shapes)
{
    /// <summary>The shapes with every composite taken apart.</summary>
    public IEnumerable<Shape> Primitives() => Shapes.SelectMany(Flatten);

    /// <summary>The primitives with those of a part taken out of their group, for a writer that has no use for marks.</summary>
    public IEnumerable<Shape> Leaves() => Primitives().SelectMany(shape => shape is Marked marked ? marked.Leaves : [shape]);

    private static IEnumerable<Shape> Flatten(Shape shape) =>
        shape switch
        {
            Composite composite => composite.Parts.SelectMany(Flatten),
            Marked marked => [marked with { Shapes = [.. marked.Shapes.SelectMany(Flatten)] }],
            _ => [shape],
        };
}
