using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Common;

/// <summary>The saws of a shop, as far as they are known. Each cut names one of them.</summary>
public sealed record ShopSaws
{
    /// <summary>Whether there is a table saw.</summary>
    public bool HasTableSaw { get; init; } = true;

    /// <summary>The widest strip between the table saw's blade and fence; null for no limit.</summary>
    public Length? WidestRip { get; init; }

    /// <summary>The longest crosscut on the table saw, by miter gauge or sled; null where it is not known.</summary>
    public Length? GaugeReach { get; init; }

    /// <summary>Whether there is a miter saw; null where it is not known.</summary>
    public bool? HasMiterSaw { get; init; }

    /// <summary>The longest crosscut on the miter saw; null where it is not known.</summary>
    public Length? MiterReach { get; init; }

    /// <summary>Whether a hand saw makes the cuts that are too large for the others, and no circular or track saw.</summary>
    public bool IsLargeByHand { get; init; }

    /// <summary>Returns what a plan's saw settings tell: how far its saw reaches, not which saws there are.</summary>
    public static ShopSaws Of(SawSettings saw)
    {
        ArgumentNullException.ThrowIfNull(saw);
        return new()
        {
            WidestRip = saw.WidestRip,
            GaugeReach = saw.LongestCrosscut,
            MiterReach = saw.LongestCrosscut,
        };
    }
}
