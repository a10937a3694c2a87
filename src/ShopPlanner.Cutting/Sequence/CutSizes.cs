namespace ShopPlanner.Cutting.Sequence;

/// <summary>A cut with the wood that it is made in, sizes in ticks: along the grain or the long edge, and across it.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Along">Of the piece in hand.</param>
/// <param name="Across">Of the piece in hand.</param>
/// <param name="First">What the first piece is then.</param>
/// <param name="Second">What the piece beyond the kerf is then; null where there is none.</param>
internal sealed record SizedCut(Cut Cut, long Along, long Across, (long Along, long Across) First, (long, long)? Second)
{
    /// <summary>Whether it is a rip of a piece whose edge is short for a fence.</summary>
    public bool IsShortRip => Cut.Kind == CutKind.Rip && FenceEdge.IsShort(Along, Cut.At.Ticks);
}

/// <summary>Follows the sizes of pieces through the cuts of a layout.</summary>
internal static class CutSizes
{
    /// <summary>Returns the cuts in order.</summary>
    /// <param name="kerf">The saw's, in ticks.</param>
    /// <param name="stock">What the layout is cut from.</param>
    /// <param name="layout">The layout.</param>
    public static IEnumerable<SizedCut> Of(long kerf, CutStock stock, Layout layout)
    {
        var sizes = new Dictionary<string, (long Along, long Across)>();
        foreach (var cut in layout.Cuts)
        {
            var (along, across) = sizes.GetValueOrDefault(cut.Piece, (stock.Length.Ticks, stock.Width.Ticks));
            var (at, isRip) = (cut.At.Ticks, cut.Kind == CutKind.Rip);
            var first = isRip ? (along, at) : (at, across);
            var second = isRip ? (along, across - at - kerf) : (along - at - kerf, across);
            sizes[cut.First] = first;
            if (cut.Second is { } name)
                sizes[name] = second;
            yield return new(cut, along, across, first, cut.Second is null ? null : second);
        }
    }
}
