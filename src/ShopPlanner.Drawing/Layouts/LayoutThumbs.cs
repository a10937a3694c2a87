using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>A layout to be drawn small.</summary>
/// <param name="Picture">What is drawn.</param>
/// <param name="IsBoard">True for a board, false for a sheet.</param>
public sealed record ThumbPicture(LayoutPicture Picture, bool IsBoard);

/// <summary>
/// Draws boards and sheets small and all to one scale, so that a whole plan is seen at one look: pieces, scrap and offcuts, and
/// marks where they can be read. Narrow boards are all drawn wider by the same factor.
/// </summary>
public sealed class LayoutThumbs
{
    // A mark in its ring, and a little wood above and below it.
    private const double LeastBoard = 18;
    private const int MostStretch = 8;
    private const double Edge = 1;

    private readonly IReadOnlyList<ThumbPicture> pictures;
    private readonly DrawingRoom room;
    private readonly double perInch;

    /// <summary>Chooses the scale.</summary>
    /// <param name="pictures">All that are compared, one or more.</param>
    /// <param name="width">Of the longest of them, in page units.</param>
    public LayoutThumbs(IReadOnlyList<ThumbPicture> pictures, double width)
    {
        ArgumentNullException.ThrowIfNull(pictures);
        this.pictures = pictures;
        room = new DrawingRoom(width, width, LeastText: 8, LargestText: 12, WholeScale: false);
        perInch = (width - (2 * Edge)) / pictures.Max(one => Inches(one.Picture.Length));
        Stretch = StretchOf([.. pictures.Where(one => one.IsBoard).Select(one => Inches(one.Picture.Width))]);
    }

    /// <summary>How many times wider boards are drawn than they are, beside their length; 1 for true.</summary>
    public int Stretch { get; }

    /// <summary>The drawings, in the order given; each as wide and high as it is to be shown.</summary>
    public ImmutableArray<LineDrawing> Draw() => [.. pictures.Select(Draw)];

    private LineDrawing Draw(ThumbPicture one)
    {
        // Grain would be all that is seen at this size.
        var picture = one.Picture with
        {
            HasGrain = false,
        };
        var view = new View(Edge, Edge, perInch, one.IsBoard ? Stretch : 1, Scale: null);
        var whole = view.Whole(picture);
        return new(
            picture.Title,
            LayoutWords.Describe(picture),
            whole.Right + Edge,
            whole.Bottom + Edge,
            [.. StockSketch.Draw(picture, view, []), .. picture.Pieces.SelectMany(piece => Mark(piece, view.Of(piece.Area)))]
        );
    }

    private ImmutableArray<Shape> Mark(PiecePicture piece, Box box)
    {
        string[] marks = [MarkRange.Short(piece.Mark), MarkRange.Short(piece.Letters)];
        return marks
                .Where(mark => mark.Length > 0)
                .Select(mark => PieceLabel.Fit(TurnedWords.Mark(mark, piece), "", "", box, room)?.Shapes)
                .FirstOrDefault(shapes => shapes is not null)
            ?? [];
    }

    private int StretchOf(double[] widths) =>
        widths.Length == 0 ? 1 : Math.Clamp((int)Math.Ceiling(LeastBoard / (widths.Min() * perInch)), 1, MostStretch);

    private static double Inches(Length length) => (double)length.ToInches();
}
