using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Together;

namespace ShopPlanner.Services.Plans;

/// <summary>A project of a plan as it would be planned by itself.</summary>
/// <param name="Project">The project.</param>
/// <param name="Name">Its name when the plan was made.</param>
/// <param name="Cost">Of all stock cut.</param>
/// <param name="Status">How good it is known to be.</param>
/// <param name="Missing">Pieces that found no stock.</param>
public sealed record AloneSummary(Guid Project, string Name, Money Cost, PlanStatus Status, int Missing);

/// <summary>What a plan was held against when it was made.</summary>
/// <param name="Alone">Its projects planned one after another, in the order in which they took from rack and bin; empty for a
/// plan of one project.</param>
/// <param name="Baskets">What other ways to buy came to, the one that was taken first; empty where trips were not
/// counted.</param>
public sealed record PlanComparison(ImmutableArray<AloneSummary> Alone, ImmutableArray<StoreBasket> Baskets)
{
    /// <summary>What the projects cost one after another.</summary>
    public Money AloneCost => Alone.Aggregate(Money.Zero, (sum, one) => sum + one.Cost);

    /// <summary>Pieces that the projects find no stock for one after another.</summary>
    public int AloneMissing => Alone.Sum(one => one.Missing);
}

/// <summary>Tells what planning several projects together saves.</summary>
public interface IPlanTogether
{
    /// <summary>What a plan was held against; null where nothing was compared.</summary>
    /// <exception cref="Storage.Documents.StoredDocumentException">A newer program stored it, or it is damaged.</exception>
    Task<PlanComparison?> OfAsync(Guid planId, CancellationToken cancel = default);

    /// <summary>A project of a plan, planned by itself, as it was when the plan was made; null where there is none. Nothing is
    /// promised to it, and it is not cut.</summary>
    /// <param name="planId">The plan that it is compared with, whose id the answer bears.</param>
    /// <param name="project">The project.</param>
    /// <param name="cancel">Stops the reading.</param>
    /// <exception cref="Storage.Documents.StoredDocumentException">A newer program stored it, or it is damaged.</exception>
    Task<PlanView?> AloneAsync(Guid planId, Guid project, CancellationToken cancel = default);
}
