namespace ShopPlanner.Cutting.Sequence;

/// <summary>How far the saw at home reaches, in ticks; null where nothing bounds it.</summary>
/// <param name="WidestRip">One side of a rip, the narrower one, is no wider than this.</param>
/// <param name="LongestCrosscut">A crosscut is no longer than this, measured along the blade's way.</param>
internal sealed record SawReach(long? WidestRip, long? LongestCrosscut)
{
    public static SawReach Of(SawSettings saw) => new(saw.WidestRip?.Ticks, saw.LongestCrosscut?.Ticks);

    /// <summary>Whether the saw can make the cut in the piece in hand.</summary>
    public bool Allows(PieceInHand piece, Step step, long kerf)
    {
        var across = piece.EndY - piece.Y;
        if (step.Kind == CutKind.Crosscut)
            return LongestCrosscut is not { } longest || across <= longest;
        return WidestRip is not { } widest || Math.Min(step.At, across - step.At - kerf) <= widest;
    }
}
