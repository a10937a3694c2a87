using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Sawing;

/// <summary>What to do for a cut, in sentences that page, bench and packet share.</summary>
public static class CutSentences
{
    /// <summary>Returns what to do: <c>Rip piece 2b on the table saw</c>.</summary>
    public static string Doing(CutStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        var piece = Piece(step.Cut);
        return step.Purpose switch
        {
            CutPurpose.SquareEnd => $"Square the end of {piece} {With(step.Tool)}",
            CutPurpose.TrimEdge => $"Trim the edge of {piece} {With(step.Tool)}"
                + (step.FromFarSide ? ", fence against the good side" : ""),
            _ when step.Tool == CutTool.Store => Doing(step.Cut),
            _ when IsRipByGauge(step) => $"Crosscut {piece} to width {With(step.Tool)}",
            _ => $"{Doing(step.Cut)} {With(step.Tool)}" + (step.FromFarSide ? ", fence on the far side" : ""),
        };
    }

    /// <summary>Returns what the store does: <c>Crosscut the board</c>, <c>Rip piece 2b</c>.</summary>
    public static string Doing(Cut cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        return cut.Kind == CutKind.Crosscut ? $"Crosscut {Piece(cut)}" : $"Rip {Piece(cut)}";
    }

    /// <summary>Returns what cuts at one setting have in common: <c>Rip, table saw</c>.</summary>
    public static string Way(CutStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        var tool = Name(step.Tool);
        return step.Purpose switch
        {
            CutPurpose.SquareEnd => $"Square the end, {tool}: take off",
            CutPurpose.TrimEdge => $"Trim the edge, {tool}: take off",
            _ when IsRipByGauge(step) => $"Crosscut to width, {tool}",
            _ => (step.Cut.Kind == CutKind.Crosscut ? "Crosscut, " : "Rip, ")
                + tool
                + (step.FromFarSide ? ", fence on the far side" : ""),
        };
    }

    /// <summary>Returns from where to where the setting is measured.</summary>
    public static string From(CutStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step switch
        {
            { Tool: CutTool.Store } => "ask for this size",
            { IsKerfOnly: true } => "just the width of the blade",
            { Purpose: CutPurpose.SquareEnd } => "off the end",
            { Purpose: CutPurpose.TrimEdge, FromFarSide: true } => "fence to blade; the strip falls away",
            { Purpose: CutPurpose.TrimEdge } => "off the edge",
            { FromFarSide: true } => "fence to blade, fence on the far side",
            { Tool: CutTool.Fence } => "fence to the near side of the blade",
            { Tool: CutTool.Gauge or CutTool.MiterSaw or CutTool.MiterSawOrGauge } => "stop to the near side of the blade",
            _ => "edge to the near side of the kerf",
        };
    }

    /// <summary>Returns the setting at the nearest mark of a ruler: <c>21 3/16″</c>; <c>kerf</c> where there is nothing to
    /// measure.</summary>
    public static string Setting(CutStep step, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.IsKerfOnly ? "kerf" : AtMark(step.Setting, unit);
    }

    /// <summary>Returns a length at the nearest mark of a ruler, since nothing finer can be set.</summary>
    public static string AtMark(Length length, LengthUnit unit) =>
        LengthFormat.Set(length, unit).Text + (unit == LengthUnit.Inch ? "″" : " mm");

    /// <summary>Returns what to look out for; empty for nothing beyond the usual care.</summary>
    /// <param name="step">The cut.</param>
    /// <param name="edge">Length of the cut, which is that of the edge on the fence.</param>
    /// <param name="unit">Of figures.</param>
    internal static string CautionOf(CutStep step, Length edge, LengthUnit unit)
    {
        if (step.Tool == CutTool.Fence && edge < Shortest(unit))
            return $"Only {LengthFormat.WithUnit(edge, unit)} on the fence: use a push block, and rip nothing shorter than your "
                + "saw's manual allows";
        return IsRipByGauge(step) || (step is { Purpose: CutPurpose.TrimEdge, Tool: CutTool.Gauge })
            ? "Too short for the fence: it would twist and kick back"
            : "";
    }

    // Common practice: a piece shorter than a foot brings the hands near the blade and is easily turned.
    private static Length Shortest(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Length.FromInches(12) : Length.FromMillimetres(300);

    private static bool IsRipByGauge(CutStep step) =>
        step is { Purpose: CutPurpose.Part, Cut.Kind: CutKind.Rip, Tool: CutTool.Gauge };

    private static string Name(CutTool tool) =>
        tool switch
        {
            CutTool.Fence => "table saw",
            CutTool.Gauge => "miter gauge or sled",
            CutTool.MiterSaw => "miter saw",
            CutTool.MiterSawOrGauge => "miter saw or miter gauge",
            CutTool.Straightedge => "circular or track saw along a straightedge",
            CutTool.HandSaw => "hand saw",
            _ => "store",
        };

    private static string With(CutTool tool) =>
        tool switch
        {
            CutTool.Fence => "on the table saw",
            CutTool.Gauge => "with the miter gauge or a sled",
            CutTool.MiterSaw => "on the miter saw",
            CutTool.MiterSawOrGauge => "on the miter saw or with the miter gauge",
            CutTool.Straightedge => "with a circular or track saw along a straightedge",
            CutTool.HandSaw => "with a hand saw",
            _ => "at the store",
        };

    private static string Piece(Cut cut) => cut.Piece is "board" or "sheet" ? "the " + cut.Piece : "piece " + cut.Piece;
}
