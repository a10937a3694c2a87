using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Sawing;

/// <summary>What is done with a cut.</summary>
public enum CutPurpose
{
    /// <summary>A piece is cut off, across or along.</summary>
    Part,

    /// <summary>A strip is cut off an end, to square it.</summary>
    SquareEnd,

    /// <summary>A strip is ripped off an edge. What remains runs along the fence: a thin strip between fence and blade is thrown
    /// back.</summary>
    TrimEdge,

    /// <summary>The same where what remains is wider than the saw rips: along a straightedge, without the fence.</summary>
    TrimByGuide,

    /// <summary>A piece wider than the saw rips, of which no more than the blade takes is ripped off: along a straightedge, since there
    /// is nothing on the other side that could run along the fence.</summary>
    RipByGuide,
}

/// <summary>A cut as a person makes it.</summary>
/// <param name="Cut">As planned.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Setting">Of fence or stop, from the near edge to the blade, or from the far one.</param>
/// <param name="FromFarSide">True where the fence stands at the far edge.</param>
/// <param name="Gives">What it gives: <c>C1 Rail, 3b remains</c>.</param>
public sealed record CutStep(Cut Cut, CutPurpose Purpose, Length Setting, bool FromFarSide, string Gives)
{
    /// <summary>True where an end or an edge loses no more than the blade's own width: there is nothing to measure.</summary>
    public bool IsKerfOnly => Purpose is CutPurpose.SquareEnd or CutPurpose.TrimByGuide && Setting == Length.Zero;
}

/// <summary>The cuts of a layout in words, the same on screen and paper.</summary>
public static class CutTexts
{
    // Common practice: narrower than this, a strip is never ripped between fence and blade.
    private static readonly Length Thin = Length.FromInches(1);

    /// <summary>The cuts of a layout, in order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layoutIndex">Index into its layouts.</param>
    /// <param name="copy">Which of the layout's copies, from 1; null names the pieces of all of them.</param>
    public static ImmutableArray<CutStep> Steps(PlanView plan, int layoutIndex, int? copy = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var words = new CutWords(plan, layoutIndex, new PlanMarks(plan), copy);
        var worked = plan.Plan.Layouts[layoutIndex].Cuts.Select(cut => cut.Piece).ToHashSet();
        return
        [
            .. PlanLayouts
                .Trace(plan, layoutIndex)
                .Select(cut => Step(cut, worked, plan.Request.Saw.WidestRip, words.Gives(cut))),
        ];
    }

    private static CutStep Step(TracedCut traced, HashSet<string> worked, Length? widestRip, string gives)
    {
        var cut = traced.Cut;
        var purpose = PurposeOf(traced, worked, widestRip);
        var far = purpose == CutPurpose.TrimEdge || (purpose == CutPurpose.Part && IsBeyond(cut, widestRip));
        return far && traced.Second is { } rest
            ? new(cut, purpose, rest.Dy, FromFarSide: true, gives)
            : new(cut, purpose, cut.At, FromFarSide: false, gives);
    }

    private static CutPurpose PurposeOf(TracedCut traced, HashSet<string> worked, Length? widestRip)
    {
        var cut = traced.Cut;
        if (cut.ByStore)
            return CutPurpose.Part;
        if (cut.FirstPart is not null || cut.At >= Thin || worked.Contains(cut.First) || traced.Second is not { } rest)
            return traced.Second is null && IsBeyond(cut, widestRip) ? CutPurpose.RipByGuide : CutPurpose.Part;
        if (cut.Kind == CutKind.Crosscut)
            return CutPurpose.SquareEnd;
        return rest.Dy > widestRip ? CutPurpose.TrimByGuide : CutPurpose.TrimEdge;
    }

    // The fence reaches the narrower side alone.
    private static bool IsBeyond(Cut cut, Length? widestRip) =>
        cut is { Kind: CutKind.Rip, ByStore: false } && cut.At > widestRip;
}
