using System.Collections.Immutable;
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
            CutPurpose.SquareEnd => $"Square the end, {tool}: width of the strip",
            CutPurpose.TrimEdge when step.FromFarSide => $"Trim the edge, {tool}, fence against the good side",
            CutPurpose.TrimEdge => $"Trim the edge, {tool}: width of the strip",
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

    /// <summary>Returns the setting as a fence or a stop is set to it; null where there is nothing to set: the blade's own width
    /// comes off, or the store is asked for the size.</summary>
    public static RuleFigure? Figure(CutStep step, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.IsKerfOnly || step.Tool == CutTool.Store ? null
            : step.TakesOff ? RuleFigure.NotMore(step.Setting, unit)
            : RuleFigure.NotShort(step.Setting, unit);
    }

    /// <summary>Returns the setting in words: <c>21 3/16″</c>, <c>just under 21 3/16″ by 1/64″</c>; <c>kerf</c> where there is
    /// nothing to measure; a store's size to the sixty-fourth or the tenth of a millimeter.</summary>
    public static string Setting(CutStep step, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.IsKerfOnly ? "kerf" : Figure(step, unit)?.InWords ?? AtMark(step.Setting, unit);
    }

    /// <summary>Returns of each cut how its figure is set, once where cuts at one setting follow one another.</summary>
    /// <param name="steps">In order.</param>
    /// <param name="unit">Of the figures.</param>
    public static ImmutableArray<string> Shimmed(ImmutableArray<CutStep> steps, LengthUnit unit)
    {
        var all = steps.Select(step => Shimmed(step, unit)).ToList();
        return [.. all.Select((words, i) => i > 0 && words == all[i - 1] ? "" : words)];
    }

    /// <summary>Returns how to set a figure between two marks; empty where it is set by eye. Common practice: a shim goes
    /// between stop and piece, never along a fence, where it would move with the piece.</summary>
    public static string Shimmed(CutStep step, LengthUnit unit)
    {
        if (Figure(step, unit) is not { Shim.Length: > 0 } figure)
            return "";
        if (step.TakesOff)
            return $"A little more than {figure.Text} comes off: {figure.Shim}";
        return step.Tool switch
        {
            CutTool.Fence => $"Set the fence at {figure.Text}, then move it {figure.Shim} toward the blade",
            CutTool.Gauge or CutTool.MiterSaw or CutTool.MiterSawOrGauge =>
                $"Set the stop at {figure.Text}, and hold a {figure.Shim} shim between stop and piece",
            _ => $"Draw the line {figure.Shim} short of {figure.Text}",
        };
    }

    /// <summary>Returns a length at the nearest sixty-fourth of an inch or tenth of a millimeter.</summary>
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

    /// <summary>Returns what is cut: <c>the board</c>, <c>piece 2b</c>.</summary>
    public static string Piece(Cut cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        return cut.Piece is "board" or "sheet" ? "the " + cut.Piece : "piece " + cut.Piece;
    }
}
