using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Plans.Running;

/// <summary>A planning run of this program's life: what it shows and how it is stopped.</summary>
internal sealed class LiveJob(Guid id, PlanOrder order) : IDisposable
{
    private readonly Lock gate = new();
    private readonly CancellationTokenSource stop = new();
    private PlanJobView view = new(id, PlanJobState.Waiting, "", null, Money.Zero, TimeSpan.Zero, order.Seconds, null, []);
    private long told;

    public PlanOrder Order => order;

    /// <summary>The draft made when the run was queued; null once it was taken.</summary>
    public MadeDraft? Draft { get; set; }

    /// <summary>Lets the draft hold after the run was queued: queueing is a change of the shop too, but none that a draft rests
    /// on.</summary>
    /// <param name="changes">See <see cref="ShopWork.Changes"/>, as queueing left it.</param>
    public void KeepDraft(long changes) => Draft = Draft is { } made ? made with { Changes = changes } : null;

    public CancellationToken Stopped => stop.Token;

    public PlanJobView View
    {
        get
        {
            lock (gate)
                return view;
        }
    }

    public void Stop() => stop.Cancel();

    public void Change(Func<PlanJobView, PlanJobView> change)
    {
        lock (gate)
            view = change(view);
    }

    /// <summary>Takes progress in; true when it is time to tell the pages again.</summary>
    public bool Take(SearchProgress progress, TimeProvider clock, TimeSpan pause)
    {
        lock (gate)
        {
            view = view with
            {
                Material = progress.Material,
                Cost = progress.Cost ?? view.Cost,
                Bound = progress.Bound,
                Elapsed = progress.Elapsed,
            };
            if (told != 0 && clock.GetElapsedTime(told) < pause)
                return false;
            told = clock.GetTimestamp();
            return true;
        }
    }

    public void Dispose() => stop.Dispose();
}
