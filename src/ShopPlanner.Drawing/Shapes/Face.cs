using System.Collections.Immutable;

namespace ShopPlanner.Drawing.Shapes;

/// <summary>A filled outline of any corners: a face of wood seen at a slant, a screw, a hollow.</summary>
/// <param name="Spots">Corners in order, three or more.</param>
/// <param name="Tint">Fill, <c>#RRGGBB</c>.</param>
/// <param name="Shade">From 0, as it is, to 1, black: how far the face is turned from the light.</param>
/// <param name="Edge">What its edge means.</param>
/// <param name="Fill">With what: with <see cref="Fill.Paper"/> it is a hollow, with <see cref="Fill.Clear"/> it has no edge
/// either, and the tint is not used.</param>
public sealed record Face(ImmutableArray<Spot> Spots, string Tint, double Shade, Stroke Edge, Fill Fill = Fill.Wood) : Shape
{
    /// <summary>The tint with the shade laid over it, <c>#RRGGBB</c>.</summary>
    public string Shaded
    {
        get
        {
            int Channel(int at) => (int)Math.Round(Convert.ToInt32(Tint.Substring(at, 2), 16) * (1 - Shade));
            return FormattableString.Invariant($"#{Channel(1):X2}{Channel(3):X2}{Channel(5):X2}");
        }
    }
}

/// <summary>Shapes that belong to one part, or to one bay: on a page they can be pointed at.</summary>
/// <param name="Mark">The part's mark, or the bay's path.</param>
/// <param name="Shapes">In drawing order.</param>
public sealed record Marked(string Mark, ImmutableArray<Shape> Shapes) : Shape
{
    /// <summary>Whether <see cref="Mark"/> is the path of a bay.</summary>
    public bool IsBay { get; init; }

    /// <summary>What is read aloud where the keyboard stops here; null where it does not.</summary>
    public string? Name { get; init; }

    /// <summary>Whether it is chosen.</summary>
    public bool IsChosen { get; init; }

    /// <summary>The shapes with every group in them opened.</summary>
    public IEnumerable<Shape> Leaves => Shapes.SelectMany(shape => shape is Marked inner ? inner.Leaves : [shape]);
}
