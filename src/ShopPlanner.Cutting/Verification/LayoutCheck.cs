using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>The pieces of one layout: right parts, right sizes, on usable wood, and to be freed by straight cuts.</summary>
internal static class LayoutCheck
{
    public static void Run(Layout layout, string at, StockArea area, Dictionary<string, CutPart> parts, Findings findings)
    {
        if (layout.Pieces.IsEmpty) findings.Add(at + ".pieces", 0, "pieces: a stock is cut for nothing");
        for (var i = 0; i < layout.Pieces.Length; i++)
        {
            var where = Findings.At(at + ".pieces", i);
            if (parts.TryGetValue(layout.Pieces[i].Part, out var part))
                CheckPiece(layout.Pieces[i], where, area, part, findings);
            else
                findings.Add(where + ".part", layout.Pieces[i].Part, "is no part of the request");
        }

        var rects = layout.Pieces.Select(Rect.Of).ToList();
        CheckSquaredEnd(rects, at, area, findings);
        if (!Separation.IsPossible(rects, area.Kerf))
            findings.Add(at, layout.Stock, "has pieces that overlap, stand closer than the kerf, or cannot be freed by straight cuts");
    }

    private static void CheckPiece(PlacedPiece piece, string where, StockArea area, CutPart part, Findings findings)
    {
        if (part.Material != area.Stock.Material) findings.Add(where, piece.Part, "is not of this material");
        if (piece.Turned && (part.Grain != Grain.Any || !area.IsSheet))
            findings.Add(where + ".turned", piece.Part, "may not be turned across the grain");
        var (along, across) = piece.Turned ? (part.Width, part.Length) : (part.Length, part.Width);
        if (piece.Dx != along) findings.Add(where + ".dx", piece.Dx.ToString(), $"is the wrong size: {along} is wanted");
        if (piece.Dy != across) findings.Add(where + ".dy", piece.Dy.ToString(), $"is the wrong size: {across} is wanted");
        if (!area.Usable.Contains(Rect.Of(piece))) findings.Add(where, piece.Part, "leaves the usable area");
    }

    private static void CheckSquaredEnd(List<Rect> rects, string at, StockArea area, Findings findings)
    {
        if (area.EndTrim == 0 || rects.Count == 0) return;
        var head = rects.Min(rect => rect.Left) - area.Whole.Left;
        var tail = area.Whole.Right - rects.Max(rect => rect.Right);
        if (Math.Max(head, tail) < area.EndTrim)
            findings.Add(at, Length.FromTicks(Math.Max(head, tail)).ToString(),
                $"is too little to square an end of this new board: {Length.FromTicks(area.EndTrim)} is wanted");
    }
}
