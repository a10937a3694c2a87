using System.Collections.Immutable;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// The next cut of a piece in hand where fence and blade reach only so far. Whatever can be done is done in the usual order; a
/// cut out of reach waits until other cuts have made the piece small enough: an end is squared after the rips, the last child is
/// peeled off before the first, a rough edge is ripped off before the crosscut. No cut that is made takes another one away, since
/// it only makes pieces smaller, so the first that is within reach is always right.
/// </summary>
internal sealed class WithinReach(SawReach reach, long kerf)
{
    /// <summary>Null for a finished part, for waste, and where no cut that is left is within reach.</summary>
    public Step? Next(PieceInHand piece) =>
        Ways(piece).FirstOrDefault(step => piece.Node.ByStore || reach.Allows(piece, step, kerf));

    /// <summary>Whether every part in a piece can be cut free.</summary>
    public bool CanFree(PieceInHand whole)
    {
        var waiting = new Stack<PieceInHand>();
        waiting.Push(whole.Unwrap());
        while (waiting.TryPop(out var piece))
        {
            if (!piece.IsWanted)
                continue;
            if (Next(piece) is not { } step)
                return false;
            if (step.First is { } first)
                waiting.Push(first.Unwrap());
            if (step.Second is { } second)
                waiting.Push(second.Unwrap());
        }

        return true;
    }

    private IEnumerable<Step> Ways(PieceInHand piece)
    {
        var node = piece.Node;
        if (node.ByStore)
            return [Split(piece, 1)];
        var edge = piece.EdgeOff() is { } step ? [step] : Enumerable.Empty<Step>();
        return Square(piece).Concat(edge).Concat(piece.IsToBeFreed ? Trim(piece) : Divide(piece));
    }

    private IEnumerable<Step> Square(PieceInHand piece)
    {
        var node = piece.Node;
        if (node.Y > piece.Y)
            yield return new(CutKind.Rip, Math.Max(0, node.Y - kerf - piece.Y), null, piece with { Y = node.Y });
        if (node.X > piece.X)
            yield return new(CutKind.Crosscut, Math.Max(0, node.X - kerf - piece.X), null, piece with { X = node.X });
    }

    private static IEnumerable<Step> Trim(PieceInHand piece)
    {
        var node = piece.Node;
        if (piece.EndX > node.EndX)
            yield return new(CutKind.Crosscut, node.EndX - piece.X, piece with { EndX = node.EndX }, null);
        if (piece.EndY > node.EndY)
            yield return new(CutKind.Rip, node.EndY - piece.Y, piece with { EndY = node.EndY }, null);
    }

    private IEnumerable<Step> Divide(PieceInHand piece)
    {
        var node = piece.Node;
        var count = node.Children.Length;
        if (count > 1)
            yield return Split(piece, 1);
        if (count > 2 && !node.AlongX)
            yield return Split(piece, count - 1);
        var end = node.AlongX || count == 0 ? node.EndY : node.Children[^1].EndY;
        if (piece.EndY > end)
            yield return new(CutKind.Rip, end - piece.Y, piece with { EndY = end }, null);
        for (var k = 2; k < count - 1 && !node.AlongX; k++)
            yield return Split(piece, k);
    }

    // The first so many children from the others.
    private Step Split(PieceInHand piece, int count)
    {
        var node = piece.Node;
        var last = node.Children[count - 1];
        var first = node with { Dx = last.EndX - node.X, Dy = last.EndY - node.Y, Children = node.Children[..count] };
        var rest = Rest(node, node.Children[count..]);
        return node.AlongX
            ? new(
                CutKind.Crosscut,
                last.EndX - piece.X,
                piece with
                {
                    Node = first,
                    EndX = last.EndX,
                },
                piece with
                {
                    Node = rest,
                    X = last.EndX + kerf,
                }
            )
            : new(
                CutKind.Rip,
                last.EndY - piece.Y,
                piece with
                {
                    Node = first,
                    EndY = last.EndY,
                },
                piece with
                {
                    Node = rest,
                    Y = last.EndY + kerf,
                }
            );
    }

    private static LayoutNode Rest(LayoutNode node, ImmutableArray<LayoutNode> children)
    {
        var (x, y) = (children[0].X, children[0].Y);
        return node with { X = x, Y = y, Dx = node.EndX - x, Dy = node.EndY - y, Children = children };
    }
}
