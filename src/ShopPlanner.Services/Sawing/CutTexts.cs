using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Sawing;

/// <summary>What is done with a cut.</summary>
public enum CutPurpose
{
    /// <summary>A piece is cut off, across or along.</summary>
    Part,

    /// <summary>A strip is cut off an end, to square it.</summary>
    SquareEnd,

    /// <summary>A strip is cut off an edge. Along a fence, what remains runs between fence and blade: a thin strip there is
    /// thrown back.</summary>
    TrimEdge,
}

/// <summary>A cut as a person makes it.</summary>
/// <param name="Cut">As planned.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Tool">What it is made with.</param>
/// <param name="Setting">Of fence or stop, from the near edge to the blade, or from the far one.</param>
/// <param name="FromFarSide">Whether the fence stands at the far edge.</param>
/// <param name="Gives">What it gives: <c>C1 Rail, keep 3b</c>.</param>
public sealed record CutStep(Cut Cut, CutPurpose Purpose, CutTool Tool, Length Setting, bool FromFarSide, string Gives)
{
    /// <summary>What to look out for; empty for nothing beyond the usual care.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Whether a bad place is in the piece that is cut.</summary>
    public bool IsNearBadPlace { get; init; }

    /// <summary>Whether an end or an edge loses no more than the blade's own width: there is nothing to measure.</summary>
    public bool IsKerfOnly => Purpose != CutPurpose.Part && !FromFarSide && Setting == Length.Zero;

    /// <summary>Whether the setting measures what is taken off a part, and not a part: more of it would make the part
    /// short.</summary>
    public bool TakesOff =>
        (Purpose != CutPurpose.Part && !FromFarSide)
        || (FromFarSide ? (Cut.SecondPart, Cut.FirstPart) : (Cut.FirstPart, Cut.SecondPart)) is (null, not null);
}

/// <summary>The cuts of a layout in words, the same on screen and paper.</summary>
public static class CutTexts
{
    // Common practice: narrower than this, a strip is never ripped between fence and blade.
    private static readonly Length Thin = Length.FromInches(1);

    /// <summary>Returns the cuts of a layout, in order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layoutIndex">Index into its layouts.</param>
    /// <param name="copy">Which of the layout's copies, from 1; null names the pieces of all of them.</param>
    public static ImmutableArray<CutStep> Steps(PlanView plan, int layoutIndex, int? copy = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Steps(plan, layoutIndex, copy, new PlanMarks(plan));
    }

    /// <summary>Returns the cuts of a layout, in order, where the plan's marks are counted already.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layoutIndex">Index into its layouts.</param>
    /// <param name="copy">Which of the layout's copies, from 1; null names the pieces of all of them.</param>
    /// <param name="marks">Of all pieces of the plan.</param>
    public static ImmutableArray<CutStep> Steps(PlanView plan, int layoutIndex, int? copy, PlanMarks marks)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var words = new CutWords(plan, layoutIndex, marks, copy);
        var worked = plan.Plan.Layouts[layoutIndex].Cuts.Select(cut => cut.Piece).ToHashSet();
        var unit = plan.UnitOfLayout(layoutIndex);
        var bad = PlanLayouts.StockOf(plan, layoutIndex).BadPlaces;
        return
        [
            .. PlanLayouts
                .Trace(plan, layoutIndex)
                .Select(cut => (cut, step: Step(cut, PurposeOf(cut, worked), plan.Saws, words.Gives(cut))))
                .Select(one =>
                    one.step with
                    {
                        Caution = CutSentences.CautionOf(one.step, one.cut.Kerf.Dx, unit),
                        IsNearBadPlace = one.cut.InHand.Any(area =>
                            bad.Any(place => place.Touches(area.X, area.Y, area.Dx, area.Dy))
                        ),
                    }
                ),
        ];
    }

    private static CutStep Step(TracedCut traced, CutPurpose purpose, ShopSaws saws, string gives)
    {
        var cut = traced.Cut;
        CutStep Near(CutTool tool) => new(cut, purpose, tool, cut.At, FromFarSide: false, gives);
        if (cut.ByStore)
            return Near(CutTool.Store);
        if (cut.Kind == CutKind.Crosscut)
            return Near(ToolChoice.Across(saws, traced.Kerf.Dy));
        var (edge, rest) = (traced.Kerf.Dx, traced.Second?.Dy);
        if (purpose == CutPurpose.Part && ToolChoice.FitsFence(saws, edge, cut.At))
            return Near(CutTool.Fence);
        // The strip that is trimmed off never runs along the fence, and the fence may reach the narrower side alone.
        if (
            rest is { } far
            && (purpose == CutPurpose.TrimEdge || cut.At > saws.WidestRip)
            && ToolChoice.FitsFence(saws, edge, far)
        )
            return new(cut, purpose, CutTool.Fence, far, FromFarSide: true, gives);
        return Near(ToolChoice.WithoutFence(saws, edge, purpose == CutPurpose.TrimEdge ? rest ?? cut.At : cut.At));
    }

    private static CutPurpose PurposeOf(TracedCut traced, HashSet<string> worked)
    {
        var cut = traced.Cut;
        if (cut.ByStore || cut.FirstPart is not null || cut.At >= Thin || worked.Contains(cut.First) || traced.Second is null)
            return CutPurpose.Part;
        return cut.Kind == CutKind.Crosscut ? CutPurpose.SquareEnd : CutPurpose.TrimEdge;
    }
}
