using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>One layout: every piece of its size, on usable wood, free to be cut.</summary>
internal static class LayoutCheck
{
    public static IEnumerable<Fault> Of(
        CutRequest request,
        IReadOnlyDictionary<string, CutPart> parts,
        CutStock stock,
        Layout layout,
        string where
    )
    {
        var material = request.Materials.First(one => one.Id == stock.Material);
        var sheet = material.Form == StockForm.Sheet;
        var places = new PlaceCheck(request, stock, sheet);
        if (layout.Copies < 1)
            yield return Fault.Of(where + ".copies", $"{layout.Copies}", "must be one or more");
        foreach (
            var fault in layout.Pieces.SelectMany(
                (piece, i) => Piece(parts.GetValueOrDefault(piece.Part), stock, sheet, piece, $"{where}.pieces[{i}]")
            )
        )
            yield return fault;
        foreach (var fault in places.Of(layout, where))
            yield return fault;
        foreach (var fault in Whole(request, stock, sheet, layout, where))
            yield return fault;
        foreach (var fault in Kept(request.Keep, material, layout, places, where))
            yield return fault;
        foreach (var fault in CutReplay.Of(request, stock, sheet, layout, places, where))
            yield return fault;
    }

    private static IEnumerable<Fault> Piece(CutPart? part, CutStock stock, bool sheet, PlacedPiece piece, string where)
    {
        if (part is null)
        {
            yield return Fault.Of(where, piece.Part, "isn't a part in the request");
            yield break;
        }

        if (part.Material != stock.Material)
            yield return Fault.Of(where, part.Material, $"is another material than {stock.Material}");
        if (piece.Turned && (!sheet || part.Grain != Grain.Any))
            yield return Fault.Of(where, piece.Part, "is turned across the grain");
        var (dx, dy) = piece.Turned ? (part.Width, part.Length) : (part.Length, part.Width);
        if (piece.Dx != dx || piece.Dy != dy)
            yield return Fault.Of(where, $"{piece.Dx} × {piece.Dy}", $"is not the size wanted, {dx} × {dy}");
    }

    private static IEnumerable<Fault> Whole(CutRequest request, CutStock stock, bool sheet, Layout layout, string where)
    {
        var kerf = request.Saw.Kerf.Ticks;
        var boxes = layout.Pieces.Select(Box.Of).ToList();
        var kept = layout.Leftovers.Where(left => left.Keep).Select(Box.Of).ToList();
        if (boxes.Count == 0)
            yield return Fault.Of(where, layout.Stock, "is cut for no part");
        if (!sheet && stock is { Offcut: false, Untrimmed: null } && boxes.Count > 0 && !HasSquareEnd(request, stock, boxes))
            yield return Fault.Of(where, layout.Stock, "has no end squared by the trim");
        if (!Box.CanBeCutFree(boxes, kerf))
            yield return Fault.Of(
                where,
                layout.Stock,
                "has pieces that overlap, stand closer than the kerf, or cannot be freed by straight cuts"
            );
        else if (!Box.CanBeCutFree([.. boxes, .. kept], kerf))
            yield return Fault.Of(where, layout.Stock, "has a leftover to keep that overlaps a piece or cannot be cut free");
        var all = new Box(0, 0, stock.Length.Ticks, stock.Width.Ticks);
        if (layout.Leftovers.Any(left => !all.Contains(Box.Of(left)) || !left.Dx.IsPositive || !left.Dy.IsPositive))
            yield return Fault.Of(where, layout.Stock, "has a leftover outside the stock");
    }

    // Wood with a bad place in it is waste, however large.
    private static IEnumerable<Fault> Kept(KeepRule keep, CutMaterial material, Layout layout, PlaceCheck places, string where)
    {
        foreach (var left in layout.Leftovers)
        {
            var isWorth = IsWorthKeeping(keep, material, left);
            if (left.Keep && !isWorth)
                yield return Kept(left, where, "is a leftover to keep that is smaller than what is worth keeping");
            if (!left.Keep && isWorth && !places.IsBad(Box.Of(left)))
                yield return Kept(left, where, "is a leftover marked as waste that is worth keeping");
        }
    }

    private static Fault Kept(Leftover left, string where, string message) => Fault.Of(where, $"{left.Dx} × {left.Dy}", message);

    // The rule as its words have it, worked out here once more: the planner's own answer is what is checked.
    private static bool IsWorthKeeping(KeepRule keep, CutMaterial material, Leftover left)
    {
        var (along, across) = (left.Dx.Ticks, left.Dy.Ticks);
        if (material.Form == StockForm.Board)
            return keep.BoardLength is { } length && along >= length.Ticks && 2 * across >= (material.Width?.Ticks ?? 0);
        if (keep.SheetLength is not { } one || keep.SheetWidth is not { } other)
            return false;
        return (along >= one.Ticks && across >= other.Ticks) || (along >= other.Ticks && across >= one.Ticks);
    }

    private static bool HasSquareEnd(CutRequest request, CutStock stock, List<Box> boxes) =>
        Math.Max(boxes.Min(box => box.Left), stock.Length.Ticks - boxes.Max(box => box.Right)) >= request.Saw.BoardEndTrim.Ticks;
}
