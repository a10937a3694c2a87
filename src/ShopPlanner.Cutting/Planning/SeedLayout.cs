using System.Collections.Immutable;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Finds the edge-to-edge cuts between pieces that lie in a layout.</summary>
internal static class SeedLayout
{
    /// <summary>The tree of cuts; null where the pieces cannot be freed by such cuts.</summary>
    public static LayoutNode? Of(ImmutableArray<KeptPiece> pieces)
    {
        if (pieces.Length == 1)
            return LayoutNode.Piece(pieces[0].Part, pieces[0].Turned, 0, 0, 0, 0);
        return Split(pieces, true) ?? Split(pieces, false);
    }

    private static LayoutNode? Split(ImmutableArray<KeptPiece> pieces, bool alongX)
    {
        var groups = Groups(pieces, alongX);
        if (groups.Count < 2)
            return null;
        var children = ImmutableArray.CreateBuilder<LayoutNode>(groups.Count);
        foreach (var group in groups)
        {
            if (Of(group) is not { } child)
                return null;
            children.Add(child);
        }

        return new(0, 0, 0, 0, null, false, alongX, children.MoveToImmutable());
    }

    // Pieces in order along the axis; where none reaches beyond the next one's start, a cut runs through.
    private static List<ImmutableArray<KeptPiece>> Groups(ImmutableArray<KeptPiece> pieces, bool alongX)
    {
        var groups = new List<ImmutableArray<KeptPiece>>();
        var group = ImmutableArray.CreateBuilder<KeptPiece>();
        var end = long.MinValue;
        foreach (var piece in pieces.OrderBy(one => alongX ? one.X : one.Y))
        {
            if (group.Count > 0 && (alongX ? piece.X : piece.Y) >= end)
            {
                groups.Add(group.ToImmutable());
                group.Clear();
            }

            group.Add(piece);
            end = Math.Max(end, alongX ? piece.EndX : piece.EndY);
        }

        groups.Add(group.ToImmutable());
        return groups;
    }
}
