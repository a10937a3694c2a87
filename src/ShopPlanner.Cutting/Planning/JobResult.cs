using System.Collections.Immutable;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Planning;

/// <summary>How one material is cut.</summary>
/// <param name="Stocks">Every kind of layout: which stock, how many, what becomes of its usable wood.</param>
/// <param name="Unmet">Pieces of each part of the job that no stock has room for.</param>
/// <param name="Cost">The sum of <see cref="Job.Weight"/> of all stock cut.</param>
/// <param name="Bound">No plan that places the same pieces costs less.</param>
/// <param name="Shortage">True when it is shown that no plan places more pieces.</param>
internal sealed record JobResult(
    ImmutableArray<CutUpStock> Stocks,
    ImmutableArray<int> Unmet,
    long Cost,
    long Bound,
    bool Shortage
)
{
    /// <summary>Layouts taken over from an earlier plan, in place of <see cref="Stocks"/>; null when searched.</summary>
    public ImmutableArray<Layout>? Kept { get; init; }

    public bool Complete => Unmet.All(pieces => pieces == 0);

    /// <summary>No better answer exists. Where pieces are left over, the cost alone proves nothing: free offcuts cost nothing
    /// however badly they are cut.</summary>
    public bool Proven => Cost <= Bound && (Complete || Shortage);

    /// <summary>The better of two answers to one job, with the higher of their bounds where they place the same pieces.</summary>
    public static JobResult Better(JobResult earlier, JobResult later)
    {
        var (a, b) = (earlier.Unmet.Sum(), later.Unmet.Sum());
        if (a != b)
            return a < b ? earlier : later;
        var best = later.Cost <= earlier.Cost ? later : earlier;
        return a == 0 ? best with { Bound = Math.Max(earlier.Bound, later.Bound) } : best;
    }
}

/// <summary>One kind of layout.</summary>
/// <param name="Stock">What is cut.</param>
/// <param name="Times">How many alike.</param>
/// <param name="Root">What becomes of the usable wood, in ticks from a corner of the stock as bought, with a kerf between
/// neighbors; items are parts of the job.</param>
internal sealed record CutUpStock(CutStock Stock, int Times, LayoutNode Root);
