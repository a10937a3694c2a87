using System.Collections.Immutable;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// A piece in hand: what is to become of it, and how far the wood reaches. The wood may reach beyond the node, by the margin of a
/// new sheet or a sliver narrower than the kerf.
/// </summary>
/// <param name="Name">As cuts name it.</param>
/// <param name="Node">What is to become of it.</param>
/// <param name="X">Where the wood begins.</param>
/// <param name="Y">Where the wood begins.</param>
/// <param name="EndX">Where the wood ends.</param>
/// <param name="EndY">Where the wood ends.</param>
internal sealed record PieceInHand(string Name, LayoutNode Node, long X, long Y, long EndX, long EndY)
{
    /// <summary>True for a part with every edge cut, and for a leftover that had to be cut free like one.</summary>
    public bool IsFinished => IsToBeFreed && X == Node.X && Y == Node.Y && EndX == Node.EndX && EndY == Node.EndY;

    /// <summary>Whether more cuts are wanted: a part lies in it, a leftover that bad wood lies beside, or panels that have to be
    /// carried home.</summary>
    public bool IsWanted => (Node.HasWanted && !IsFinished) || Node.ByStore;

    /// <summary>Whether all of it is a part, or a leftover that is cut free like one.</summary>
    public bool IsToBeFreed => Node.Item is not null || Node.Freed;

    public double Area => (double)(EndX - X) * (EndY - Y);

    /// <summary>The next cut that this piece needs; null when it is a finished part or a remnant.</summary>
    public Step? Next(long kerf) => Square(kerf) ?? EdgeOff() ?? Part() ?? Divide(kerf);

    /// <summary>The rip that takes wood off the far edge while the piece is long: before a row is crosscut into pieces that would
    /// all be ripped to the same width, and before a part is crosscut to a length too short for a fence. Null where neither is
    /// so.</summary>
    public Step? EdgeOff() =>
        EndY > Node.EndY && (Node.Item is null ? IsRowOfOneWidth : IsShortAlongFence)
            ? new(CutKind.Rip, Node.EndY - Y, this with { EndY = Node.EndY }, null)
            : null;

    private bool IsShortAlongFence => EndX > Node.EndX && FenceEdge.IsShort(Node.Dx, Node.Dy);

    private bool IsRowOfOneWidth =>
        Node.AlongX
        && Node.Children.Any(child =>
            (this with { Node = child }).Unwrap().Node is { Item: not null } one && one.EndY == Node.EndY
        );

    /// <summary>A node with one child is that child: no cut lies between.</summary>
    public PieceInHand Unwrap() => Node.Children.Length == 1 ? (this with { Node = Node.Children[0] }).Unwrap() : this;

    // An edge that is not square yet: the margin of new stock comes off first, the long edge before the end.
    private Step? Square(long kerf)
    {
        if (Node.Y > Y)
            return new(CutKind.Rip, Math.Max(0, Node.Y - kerf - Y), null, this with { Y = Node.Y });
        if (Node.X > X)
            return new(CutKind.Crosscut, Math.Max(0, Node.X - kerf - X), null, this with { X = Node.X });
        return null;
    }

    private Step? Part()
    {
        if (!IsToBeFreed)
            return null;
        if (EndX > Node.EndX)
            return new(CutKind.Crosscut, Node.Dx, this with { EndX = Node.EndX }, null);
        return EndY > Node.EndY ? new(CutKind.Rip, Node.Dy, this with { EndY = Node.EndY }, null) : null;
    }

    private Step? Divide(long kerf)
    {
        if (Node.Children.Length < 2)
            return null;
        var first = Node.Children[0];
        var rest = Node.Children.RemoveAt(0);
        return Node.AlongX
            ? new(
                CutKind.Crosscut,
                first.Dx,
                this with
                {
                    Node = first,
                    EndX = first.EndX,
                },
                Rest(rest, first.EndX + kerf, Node.Y)
            )
            : new(CutKind.Rip, first.Dy, this with { Node = first, EndY = first.EndY }, Rest(rest, Node.X, first.EndY + kerf));
    }

    // The next child may begin farther on than the wood, where bad wood between the two has become sawdust.
    private PieceInHand Rest(ImmutableArray<LayoutNode> children, long x, long y)
    {
        var (fromX, fromY) = Node.AlongX ? (children[0].X, y) : (x, children[0].Y);
        return this with
        {
            Node = Node with { X = fromX, Y = fromY, Dx = Node.EndX - fromX, Dy = Node.EndY - fromY, Children = children },
            X = x,
            Y = y,
        };
    }
}

/// <summary>A cut that a piece in hand needs next.</summary>
/// <param name="Kind">Which way it runs.</param>
/// <param name="At">From the edge of the wood nearest the origin to the near side of the kerf.</param>
/// <param name="First">The piece nearest the origin; null when it is a strip of waste.</param>
/// <param name="Second">The piece beyond the kerf; null when it is waste or sawdust.</param>
internal sealed record Step(CutKind Kind, long At, PieceInHand? First, PieceInHand? Second);
