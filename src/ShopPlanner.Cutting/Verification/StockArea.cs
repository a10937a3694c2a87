using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>A stock as the saw sees it.</summary>
/// <param name="Stock">As requested.</param>
/// <param name="Material">Its material.</param>
/// <param name="Whole">As bought.</param>
/// <param name="Usable">Without the margins of a new sheet. A new board's squared end may be either.</param>
/// <param name="EndTrim">What squaring takes off one end, in ticks.</param>
/// <param name="EdgeTrim">The margin along all edges, in ticks.</param>
/// <param name="Kerf">Of every cut, in ticks.</param>
internal sealed record StockArea(
    CutStock Stock, CutMaterial Material, Rect Whole, Rect Usable, long EndTrim, long EdgeTrim, long Kerf)
{
    public bool IsSheet => Material.Form == StockForm.Sheet;

    public static StockArea Of(CutRequest request, CutStock stock, CutMaterial material)
    {
        var whole = Rect.Of(Length.Zero, Length.Zero, stock.Length, stock.Width);
        var sheet = material.Form == StockForm.Sheet;
        var edge = !stock.Offcut && sheet ? request.Saw.SheetEdgeTrim.Ticks : 0;
        var end = !stock.Offcut && !sheet ? request.Saw.BoardEndTrim.Ticks : 0;
        var usable = new Rect(whole.Left + edge, whole.Bottom + edge, whole.Right - edge, whole.Top - edge);
        return new(stock, material, whole, usable, end, edge, request.Saw.Kerf.Ticks);
    }
}
