using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Shapes;
using Box = ShopPlanner.Drawing.Shapes.Box;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>From where a piece is seen.</summary>
internal enum ViewFrom
{
    /// <summary>From the front.</summary>
    Front,

    /// <summary>From the right.</summary>
    Right,

    /// <summary>From above, the front at the foot of the drawing.</summary>
    Above,
}

/// <summary>A piece seen straight from one side, before it is scaled: millimetres to the right and downward, from the upper left
/// corner of its outline.</summary>
internal sealed class Sight
{
    /// <summary>Sees the parts.</summary>
    /// <param name="piece">What.</param>
    /// <param name="shown">Its parts.</param>
    /// <param name="side">From where.</param>
    public Sight(Piece piece, ImmutableArray<ShownPart> shown, ViewFrom side)
    {
        (Piece, Side) = (piece, side);
        var places = shown.OrderByDescending(Near).Select(part => (Part: part, Box: Of(part.Box))).ToList();
        Parts =
        [
            .. places.Select(
                (one, i) => new SeenPart(one.Part, one.Box, Uncovered.Of(one.Box, places.Skip(i + 1).Select(other => other.Box)))
            ),
        ];
        Bores = new(piece);
        Holes =
        [
            .. Bores
                .Of(Into)
                .Select(bore => (Bore: bore, At: Of(bore)))
                .Where(one => IsSeen(one.Bore, one.At))
                .DistinctBy(one => (one.Bore.Kind, one.At)),
        ];
    }

    public Piece Piece { get; }

    public ViewFrom Side { get; }

    /// <summary>The farthest part first.</summary>
    public ImmutableArray<SeenPart> Parts { get; }

    /// <summary>All holes of the piece.</summary>
    public Bores Bores { get; }

    /// <summary>The holes that are seen end on, or lie behind what is seen.</summary>
    public ImmutableArray<(Bore Bore, Spot At)> Holes { get; }

    /// <summary>The axis across the drawing.</summary>
    public Axis Across => Side == ViewFrom.Right ? Axis.Y : Axis.X;

    /// <summary>The axis up the drawing.</summary>
    public Axis Up => Side == ViewFrom.Above ? Axis.Y : Axis.Z;

    /// <summary>The axis that is looked along.</summary>
    public Axis Into =>
        Side switch
        {
            ViewFrom.Front => Axis.Y,
            ViewFrom.Right => Axis.X,
            _ => Axis.Z,
        };

    /// <summary>The outline's width.</summary>
    public double Wide => PieceScale.Mm(Piece.Outside.Extent(Across));

    /// <summary>The outline's height.</summary>
    public double High => PieceScale.Mm(Piece.Outside.Extent(Up));

    /// <summary>Where a box in space is seen.</summary>
    public Box Of(Solid box) =>
        new(
            PieceScale.Mm(box.Start(Across)),
            High - PieceScale.Mm(box.End(Up)),
            PieceScale.Mm(box.Extent(Across)),
            PieceScale.Mm(box.Extent(Up))
        );

    private Spot Of(Bore bore) => new(PieceScale.Mm(bore.At(Across)), High - PieceScale.Mm(bore.At(Up)));

    // Cups and pins are bored from within and dashed; a screw shows by its head, a dowel by the part that it holds.
    private bool IsSeen(Bore bore, Spot at) =>
        bore.Kind is BoreKind.Cup or BoreKind.Pin
        || Parts.Any(part => part.Mark == bore.Mark && part.Free.Any(free => free.Holds(at)));

    // Distance of a part's near face from the eye: the least is the nearest.
    private long Near(ShownPart part) =>
        Side switch
        {
            ViewFrom.Front => part.Box.Y.Ticks,
            ViewFrom.Right => -part.Box.EndX.Ticks,
            _ => -part.Box.EndZ.Ticks,
        };
}

/// <summary>A part as it is seen in a flat view.</summary>
/// <param name="Part">The part.</param>
/// <param name="Place">Where.</param>
/// <param name="Free">What of it is not covered by nearer parts.</param>
internal sealed record SeenPart(ShownPart Part, Box Place, IReadOnlyList<Box> Free)
{
    // What shows through a gap tells nothing of a part.
    private const double Slit = 4,
        Tell = 0.15;

    public string Mark => Part.Copy.Mark;

    /// <summary>Whether enough of it shows on the page to point at.</summary>
    public bool IsSeen =>
        Uncovered.Roomiest(Free) is { } free
        && (Math.Min(free.Width, free.Height) > Slit || free.Width * free.Height > Tell * Place.Width * Place.Height);
}
