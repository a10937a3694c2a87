using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// The next cut of a piece in hand where fence and blade reach only so far. Whatever can be done is done in the usual order; a cut
/// out of reach waits until other cuts have made the piece small enough: an end is squared after the rips, the last child is
/// peeled off before the first, a rough edge is ripped off before the crosscut. No cut that is made takes another one away, since
/// it only makes pieces smaller, so the first that is within reach is always right.
/// </summary>
internal sealed class WithinReach(SawReach reach, long kerf)
{
    /// <summary>Null for a finished part, for waste, and where no cut that is left is within reach.</summary>
    public Step? Next(PieceInHand piece) =>
        Ways(piece).FirstOrDefault(step => piece.Slab.ByStore || reach.Allows(piece, step, kerf));

    /// <summary>True when every part in a piece can be cut free.</summary>
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
        var slab = piece.Slab;
        if (slab.ByStore)
            return [Split(piece, 1)];
        return Square(piece).Concat(slab.Part is null ? Divide(piece) : Trim(piece));
    }

    private IEnumerable<Step> Square(PieceInHand piece)
    {
        var slab = piece.Slab;
        if (slab.Y > piece.Y)
            yield return new(CutKind.Rip, Math.Max(0, slab.Y - kerf - piece.Y), null, piece with { Y = slab.Y });
        if (slab.X > piece.X)
            yield return new(CutKind.Crosscut, Math.Max(0, slab.X - kerf - piece.X), null, piece with { X = slab.X });
    }

    private static IEnumerable<Step> Trim(PieceInHand piece)
    {
        var slab = piece.Slab;
        if (piece.EndX > slab.EndX)
            yield return new(CutKind.Crosscut, slab.EndX - piece.X, piece with { EndX = slab.EndX }, null);
        if (piece.EndY > slab.EndY)
            yield return new(CutKind.Rip, slab.EndY - piece.Y, piece with { EndY = slab.EndY }, null);
    }

    private IEnumerable<Step> Divide(PieceInHand piece)
    {
        var slab = piece.Slab;
        var count = slab.Children.Length;
        if (count > 1)
            yield return Split(piece, 1);
        if (count > 2 && !slab.AlongX)
            yield return Split(piece, count - 1);
        var end = slab.AlongX || count == 0 ? slab.EndY : slab.Children[^1].EndY;
        if (piece.EndY > end)
            yield return new(CutKind.Rip, end - piece.Y, piece with { EndY = end }, null);
        for (var k = 2; k < count - 1 && !slab.AlongX; k++)
            yield return Split(piece, k);
    }

    // The first so many children from the others.
    private Step Split(PieceInHand piece, int count)
    {
        var slab = piece.Slab;
        var last = slab.Children[count - 1];
        var first = slab with { Dx = last.EndX - slab.X, Dy = last.EndY - slab.Y, Children = slab.Children[..count] };
        var rest = Rest(slab, slab.Children[count..]);
        return slab.AlongX
            ? new(
                CutKind.Crosscut,
                last.EndX - piece.X,
                piece with
                {
                    Slab = first,
                    EndX = last.EndX,
                },
                piece with
                {
                    Slab = rest,
                    X = last.EndX + kerf,
                }
            )
            : new(
                CutKind.Rip,
                last.EndY - piece.Y,
                piece with
                {
                    Slab = first,
                    EndY = last.EndY,
                },
                piece with
                {
                    Slab = rest,
                    Y = last.EndY + kerf,
                }
            );
    }

    private static Slab Rest(Slab slab, ImmutableArray<Slab> children)
    {
        var (x, y) = (children[0].X, children[0].Y);
        return slab with { X = x, Y = y, Dx = slab.EndX - x, Dy = slab.EndY - y, Children = children };
    }
}
