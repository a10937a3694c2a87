using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using Box = ShopPlanner.Drawing.Shapes.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>The rows of dimensions at one edge of a view: chains, and beyond them the outside size.</summary>
internal sealed class DimensionRows
{
    // An inner chain's extension lines are short, in sizes of its type, since the figures of the row before stand in their way.
    private const double Stub = 0.6;

    private readonly Piece piece;
    private readonly Run run;
    private readonly Axis axis;
    private readonly PieceRoom room;
    private readonly ImmutableArray<ImmutableArray<Span>> chains;

    /// <summary>Rows at the left (<see cref="Run.Up"/>) or below (<see cref="Run.Across"/>).</summary>
    /// <param name="piece">What is dimensioned.</param>
    /// <param name="run">Which way.</param>
    /// <param name="axis">Along which axis.</param>
    /// <param name="room">Says how large the type is.</param>
    /// <param name="chains">The nearest to the outline first; in each, what matters most first.</param>
    public DimensionRows(Piece piece, Run run, Axis axis, PieceRoom room, IEnumerable<ImmutableArray<Span>> chains)
    {
        (this.piece, this.run, this.axis, this.room) = (piece, run, axis, room);
        this.chains = [.. chains.Where(chain => Links(chain).Length > 1)];
    }

    /// <summary>Whether a figure of these rows is rounded.</summary>
    public bool IsRounded =>
        !IsExact(End) || chains.SelectMany(chain => chain).Any(one => !IsExact(one.From) || !IsExact(one.To));

    /// <summary>The most room that the rows can take at any scale.</summary>
    public double Most =>
        chains.Sum(chain => ChainRow.Most(run, Links(chain).Select(one => one.Words), room.ChainType))
        + ChainRow.Most(run, Links([]).Select(one => one.Words), room.Type);

    /// <summary>The same rows less what finds no room at this scale: the least telling first.</summary>
    /// <param name="perMm">Page units for a millimetre.</param>
    public DimensionRows Settled(double perMm) => new(piece, run, axis, room, chains.Select(chain => Settled(chain, perMm)));

    /// <summary>How much room the rows take at a scale.</summary>
    /// <param name="perMm">Page units for a millimetre.</param>
    public double Depth(double perMm) => Rows(default, perMm).Sum(row => row.Depth);

    /// <summary>The dimensions.</summary>
    /// <param name="outline">Of the piece on the page.</param>
    /// <param name="perMm">Page units for a millimetre.</param>
    public IEnumerable<Shape> Draw(Box outline, double perMm)
    {
        var rows = Rows(outline, perMm).ToList();
        var edge = run == Run.Across ? outline.Bottom : outline.X;
        var (begin, away) = (edge, run == Run.Across ? 1 : -1);
        for (var i = 0; i < rows.Count; i++)
        {
            var isBetween = i > 0 && i < rows.Count - 1;
            var stub = begin + (away * (ChainRow.LineAt(run, room.ChainType) - (room.ChainType * Stub)));
            foreach (var shape in rows[i].Draw(begin, isBetween ? stub : edge))
                yield return shape;
            begin += away * rows[i].Depth;
        }
    }

    private Length End => piece.Outside.Extent(axis);

    private ImmutableArray<ChainLink> Links(ImmutableArray<Span> chain) => DimensionChain.Of(chain, End, piece.Unit);

    private ImmutableArray<Span> Settled(ImmutableArray<Span> chain, double perMm)
    {
        while (chain.Length > 0 && !Row(chain, default, perMm, room.ChainType).HasRoom)
            chain = chain.RemoveAt(chain.Length - 1);
        return chain;
    }

    private IEnumerable<ChainRow> Rows(Box outline, double perMm) =>
        chains.Select(chain => Row(chain, outline, perMm, room.ChainType)).Append(Row([], outline, perMm, room.Type));

    private ChainRow Row(ImmutableArray<Span> chain, Box outline, double perMm, double size) =>
        new(run, Links(chain).Select(one => Placed(one, outline, perMm)), size);

    private RowLink Placed(ChainLink link, Box outline, double perMm)
    {
        var (from, to) = (PieceScale.Mm(link.From) * perMm, PieceScale.Mm(link.To) * perMm);
        return run == Run.Across
            ? new(outline.X + from, outline.X + to, link.Words)
            : new(outline.Bottom - to, outline.Bottom - from, link.Words);
    }

    private bool IsExact(Length length) => DimensionChain.IsExact(length, piece.Unit);
}
