using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// A piece in hand: what is to become of it, and how far the wood reaches. The wood may reach beyond the slab, by the margin of a
/// new sheet or a sliver narrower than the kerf.
/// </summary>
/// <param name="Name">As cuts name it.</param>
/// <param name="Slab">What is to become of it.</param>
/// <param name="X">Where the wood begins.</param>
/// <param name="Y">Where the wood begins.</param>
/// <param name="EndX">Where the wood ends.</param>
/// <param name="EndY">Where the wood ends.</param>
internal sealed record PieceInHand(string Name, Slab Slab, long X, long Y, long EndX, long EndY)
{
    /// <summary>True for a part with every edge cut.</summary>
    public bool IsFinished => Slab.Part is not null && X == Slab.X && Y == Slab.Y && EndX == Slab.EndX && EndY == Slab.EndY;

    /// <summary>True where more cuts are wanted: a part lies in it, or panels that have to be carried home.</summary>
    public bool IsWanted => (Slab.HasPart && !IsFinished) || Slab.ByStore;

    public double Area => (double)(EndX - X) * (EndY - Y);

    /// <summary>The next cut that this piece needs; null when it is a finished part or a remnant.</summary>
    public Step? Next(long kerf) => Square(kerf) ?? Part() ?? Divide(kerf);

    /// <summary>A slab with one child is that child: no cut lies between.</summary>
    public PieceInHand Unwrap() => Slab.Children.Length == 1 ? (this with { Slab = Slab.Children[0] }).Unwrap() : this;

    // An edge that is not square yet: the margin of new stock comes off first, the long edge before the end.
    private Step? Square(long kerf)
    {
        if (Slab.Y > Y)
            return new(CutKind.Rip, Math.Max(0, Slab.Y - kerf - Y), null, this with { Y = Slab.Y });
        if (Slab.X > X)
            return new(CutKind.Crosscut, Math.Max(0, Slab.X - kerf - X), null, this with { X = Slab.X });
        return null;
    }

    private Step? Part()
    {
        if (Slab.Part is null)
            return null;
        if (EndX > Slab.EndX)
            return new(CutKind.Crosscut, Slab.Dx, this with { EndX = Slab.EndX }, null);
        return EndY > Slab.EndY ? new(CutKind.Rip, Slab.Dy, this with { EndY = Slab.EndY }, null) : null;
    }

    private Step? Divide(long kerf)
    {
        if (Slab.Children.Length < 2)
            return null;
        var first = Slab.Children[0];
        var rest = Slab.Children.RemoveAt(0);
        return Slab.AlongX
            ? new(
                CutKind.Crosscut,
                first.Dx,
                this with
                {
                    Slab = first,
                    EndX = first.EndX,
                },
                Rest(rest, first.EndX + kerf, Slab.Y)
            )
            : new(CutKind.Rip, first.Dy, this with { Slab = first, EndY = first.EndY }, Rest(rest, Slab.X, first.EndY + kerf));
    }

    private PieceInHand Rest(ImmutableArray<Slab> children, long x, long y) =>
        this with
        {
            Slab = Slab with { X = x, Y = y, Dx = Slab.EndX - x, Dy = Slab.EndY - y, Children = children },
            X = x,
            Y = y,
        };
}

/// <summary>A cut that a piece in hand needs next.</summary>
/// <param name="Kind">Which way it runs.</param>
/// <param name="At">From the edge of the wood nearest the origin to the near side of the kerf.</param>
/// <param name="First">The piece nearest the origin; null when it is a strip of waste.</param>
/// <param name="Second">The piece beyond the kerf; null when it is waste or sawdust.</param>
internal sealed record Step(CutKind Kind, long At, PieceInHand? First, PieceInHand? Second);
