using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Sawing;

/// <summary>What a cut is made with.</summary>
public enum CutTool
{
    /// <summary>The store's saw.</summary>
    Store,

    /// <summary>The table saw, the piece along its fence.</summary>
    Fence,

    /// <summary>The table saw, the piece against its miter gauge or on a sled.</summary>
    Gauge,

    /// <summary>The miter saw.</summary>
    MiterSaw,

    /// <summary>The miter saw or the table saw's miter gauge: nobody said which one there is.</summary>
    MiterSawOrGauge,

    /// <summary>A circular saw along a clamped straightedge, or a track saw.</summary>
    Straightedge,

    /// <summary>A hand saw.</summary>
    HandSaw,
}

/// <summary>Picks the saw for a cut by its size and kind.</summary>
public static class ToolChoice
{
    // Common practice: how far a miter gauge or a sled guides a panel, and how far a sliding miter saw crosscuts, where the shop
    // does not say.
    private static readonly Length UsualGauge = Length.FromInches(24),
        UsualMiter = Length.FromInches(12);

    /// <summary>Whether a piece can run along the fence: the saw opens that wide, and the edge on the fence is no shorter than
    /// the strip between fence and blade is wide. Common practice: on a shorter edge a piece turns and is thrown back.</summary>
    /// <param name="saws">The shop's.</param>
    /// <param name="edge">Length of the edge on the fence.</param>
    /// <param name="setting">From fence to blade.</param>
    public static bool FitsFence(ShopSaws saws, Length edge, Length setting)
    {
        ArgumentNullException.ThrowIfNull(saws);
        return saws.HasTableSaw && edge >= setting && !(setting > saws.WidestRip);
    }

    /// <summary>Returns the saw for a cut across a piece.</summary>
    /// <param name="saws">The shop's.</param>
    /// <param name="cut">Length of the cut.</param>
    public static CutTool Across(ShopSaws saws, Length cut)
    {
        ArgumentNullException.ThrowIfNull(saws);
        var onMiter = saws.HasMiterSaw != false && cut <= Reach(saws.MiterReach, UsualMiter, saws.HasMiterSaw);
        var onGauge = saws.HasTableSaw && cut <= (saws.GaugeReach ?? UsualGauge);
        return (onMiter, onGauge, saws.HasMiterSaw) switch
        {
            (true, _, true) => CutTool.MiterSaw,
            (true, true, _) => CutTool.MiterSawOrGauge,
            (_, true, _) => CutTool.Gauge,
            _ => AlongLine(saws),
        };
    }

    /// <summary>Returns the saw for a cut along a piece that cannot run along the fence: the gauge where the piece is shorter
    /// than it is wide there, else a saw guided along a line.</summary>
    /// <param name="saws">The shop's.</param>
    /// <param name="cut">Length of the cut.</param>
    /// <param name="setting">From the edge to the cut.</param>
    public static CutTool WithoutFence(ShopSaws saws, Length cut, Length setting)
    {
        ArgumentNullException.ThrowIfNull(saws);
        return saws.HasTableSaw && cut < setting && cut <= (saws.GaugeReach ?? UsualGauge) ? CutTool.Gauge : AlongLine(saws);
    }

    // A saw that nobody spoke of is taken to reach no farther than the usual one.
    private static Length Reach(Length? said, Length usual, bool? isKnown) =>
        said is not { } reach ? usual
        : isKnown == true ? reach
        : Length.Min(reach, usual);

    private static CutTool AlongLine(ShopSaws saws) => saws.IsLargeByHand ? CutTool.HandSaw : CutTool.Straightedge;
}
