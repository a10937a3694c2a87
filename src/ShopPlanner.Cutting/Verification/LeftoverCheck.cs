using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>What a layout leaves: on the stock, apart from pieces and each other, and kept only when it is worth it.</summary>
internal static class LeftoverCheck
{
    public static void Run(Layout layout, string at, StockArea area, KeepRule keep, Findings findings)
    {
        for (var i = 0; i < layout.Leftovers.Length; i++)
            CheckOne(layout.Leftovers[i], Findings.At(at + ".leftovers", i), area, keep, findings);
        var all = layout.Pieces.Select(Rect.Of).Concat(layout.Leftovers.Where(left => left.Keep).Select(Rect.Of)).ToList();
        if (all.Count > layout.Pieces.Length && !Separation.IsPossible(all, area.Kerf))
            findings.Add(at + ".leftovers", layout.Stock, "has a leftover to keep that overlaps a piece or cannot be cut free");
    }

    private static void CheckOne(Leftover leftover, string where, StockArea area, KeepRule keep, Findings findings)
    {
        var rect = Rect.Of(leftover);
        if (!area.Whole.Contains(rect)) findings.Add(where, rect.ToString(), "lies outside the stock");
        if (leftover.Keep && !IsWorthKeeping(leftover, area, keep))
            findings.Add(where + ".keep", $"{leftover.Dx} x {leftover.Dy}", "is smaller than what is worth keeping");
    }

    private static bool IsWorthKeeping(Leftover leftover, StockArea area, KeepRule keep)
    {
        if (!area.IsSheet) return leftover.Dx >= keep.BoardLength;
        var (longer, shorter) = (Length.Max(leftover.Dx, leftover.Dy), Length.Min(leftover.Dx, leftover.Dy));
        return longer >= keep.SheetLength && shorter >= keep.SheetWidth;
    }
}
