using System.Diagnostics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>When to stop, and who is told.</summary>
internal sealed class SearchClock(SearchControl control)
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(0.9);

    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly Lock gate = new();
    private TimeSpan told = -Beat;
    private long? cost;
    private long bound;

    public TimeSpan Elapsed => watch.Elapsed;

    public bool IsOver => control.Cancel.IsCancellationRequested || (control.Time is { } time && watch.Elapsed >= time);

    /// <summary>Seconds until the deadline, or <paramref name="most"/> when that is less or there is none.</summary>
    public double SecondsLeft(double most) =>
        control.Time is { } time ? Math.Clamp((time - watch.Elapsed).TotalSeconds, 0, most) : most;

    public bool IsPast(double share) =>
        control.Cancel.IsCancellationRequested || (control.Time is { } time && watch.Elapsed >= time * share);

    public void Tell(long? newCost, long newBound)
    {
        lock (gate)
        {
            var changed = newCost != cost || newBound != bound;
            (cost, bound) = (newCost, newBound);
            if (!changed && watch.Elapsed - told < Beat)
                return;
            told = watch.Elapsed;
        }
        control.Progress?.Invoke(new SearchProgress(
            "", newCost is { } c ? Money.FromCount(c) : null, Money.FromCount(newBound), watch.Elapsed));
    }
}
