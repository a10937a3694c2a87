using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Templates;

/// <summary>What a template is for.</summary>
public enum TemplateKind
{
    /// <summary>A row of holes for shelf pins.</summary>
    Pins,

    /// <summary>Cups of hinges.</summary>
    Cups,

    /// <summary>Holes that the design asks for.</summary>
    Holes,

    /// <summary>Holes of a pull or knob in the middle of a drawer front.</summary>
    Pull,

    /// <summary>An outline: an arc, a taper, a notch, a rounded corner.</summary>
    Shape,
}

/// <summary>A place on a face, from the left end and from the top edge as one looks at it.</summary>
/// <param name="X">From the left end.</param>
/// <param name="Y">From the top edge.</param>
public readonly record struct FacePoint(Length X, Length Y);

/// <summary>A hole of a template.</summary>
/// <param name="At">Its center.</param>
/// <param name="Diameter">Of the bit.</param>
/// <param name="Depth">From the face; null for a hole right through.</param>
public sealed record TemplateHole(FacePoint At, Length Diameter, Length? Depth);

/// <summary>A piece of a face.</summary>
/// <param name="X">Where it begins from the left end.</param>
/// <param name="Y">Where it begins from the top edge.</param>
/// <param name="EndX">Where it ends.</param>
/// <param name="EndY">Where it ends.</param>
public readonly record struct FaceWindow(Length X, Length Y, Length EndX, Length EndY)
{
    /// <summary>Its width.</summary>
    public Length Wide => EndX - X;

    /// <summary>Its height.</summary>
    public Length High => EndY - Y;

    /// <summary>Whether a place lies in it.</summary>
    public bool Holds(FacePoint point) => point.X >= X && point.X <= EndX && point.Y >= Y && point.Y <= EndY;
}

/// <summary>How the printed sheet lies on a part.</summary>
public enum SheetTurn
{
    /// <summary>Print side up, as it is printed.</summary>
    AsPrinted,

    /// <summary>Print side up, turned by half a turn.</summary>
    HalfTurn,

    /// <summary>Print side down, turned over like the page of a book: left and right change.</summary>
    OverSideways,

    /// <summary>Print side down, turned over toward oneself: top and bottom change.</summary>
    OverUpward,
}

/// <summary>One place where a template is laid on.</summary>
/// <param name="Mark">The copy's mark.</param>
/// <param name="Face">The face in words.</param>
/// <param name="Turn">How the sheet lies.</param>
/// <param name="Along">What its references along the part lie on: <c>lower end</c>, or the distance from an end.</param>
/// <param name="Across">What its references across the part lie on: <c>front edge</c>.</param>
public sealed record TemplateUse(string Mark, string Face, SheetTurn Turn, string Along, string Across);

/// <summary>
/// A template at full size: a piece of a part's face with what is drilled in it or cut out of it. Copies that take the same
/// template, as it is or turned over, share it.
/// </summary>
/// <param name="Id">Tells it from the others of its piece.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Title">A few words: <c>Shelf pin holes, front row</c>.</param>
/// <param name="Part">Name of the part.</param>
/// <param name="Uses">Where it is laid on, the copy that is drawn first.</param>
/// <param name="Window">The piece of the face that is drawn, of the first use.</param>
/// <param name="Wide">The whole face's width.</param>
/// <param name="High">The whole face's height.</param>
/// <param name="Holes">The holes in it.</param>
/// <param name="Outline">The part's outline, closed, in millimeters from the left end and the top edge; a curve is drawn in
/// chords that leave it by 0.02 mm at most.</param>
/// <param name="Sides">Words of the face's four sides: left, right, top, bottom.</param>
/// <param name="Notes">What else to know, a sentence each.</param>
public sealed record PartTemplate(
    string Id,
    TemplateKind Kind,
    string Title,
    string Part,
    ImmutableArray<TemplateUse> Uses,
    FaceWindow Window,
    Length Wide,
    Length High,
    ImmutableArray<TemplateHole> Holes,
    ImmutableArray<(double X, double Y)> Outline,
    (string Left, string Right, string Top, string Bottom) Sides,
    ImmutableArray<string> Notes
);
