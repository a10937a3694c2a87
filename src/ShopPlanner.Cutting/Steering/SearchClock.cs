using System.Diagnostics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Steering;

/// <summary>When to stop, and who is told: on every change, and about once a second whatever the search is busy with.</summary>
internal sealed class SearchClock : IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(0.9);

    private readonly SearchControl control;
    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly Lock gate = new();
    private readonly Timer? timer;
    private bool isStarted;
    private long? cost;
    private long bound;

    public SearchClock(SearchControl control)
    {
        this.control = control;
        if (control.Progress is not null)
            timer = new Timer(_ => Repeat(), null, Beat, Beat);
    }

    public TimeSpan Elapsed => watch.Elapsed;

    public bool IsOver => IsPast(1);

    /// <summary>Seconds until the deadline, or <paramref name="most"/> when that is less or there is none.</summary>
    public double SecondsLeft(double most) =>
        control.Time is { } time ? Math.Clamp((time - watch.Elapsed).TotalSeconds, 0, most) : most;

    public bool IsPast(double share) =>
        control.Cancel.IsCancellationRequested || (control.Time is { } time && watch.Elapsed >= time * share);

    public void Tell(long? newCost, long newBound)
    {
        lock (gate)
        {
            var changed = !isStarted || newCost != cost || newBound != bound;
            (isStarted, cost, bound) = (true, newCost, newBound);
            if (changed)
                Report();
        }
    }

    /// <summary>Ends the beat; nobody is told anything after it.</summary>
    public void Dispose()
    {
        if (timer is null)
            return;
        using var ended = new ManualResetEvent(false);
        if (timer.Dispose(ended))
            ended.WaitOne();
    }

    private void Repeat()
    {
        lock (gate)
            Report();
    }

    private void Report() =>
        control.Progress?.Invoke(
            new SearchProgress("", cost is { } known ? Money.FromCount(known) : null, Money.FromCount(bound), watch.Elapsed)
        );
}
