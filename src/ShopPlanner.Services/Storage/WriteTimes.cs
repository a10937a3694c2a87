namespace ShopPlanner.Services.Storage;

/// <summary>How long the last thousand changes took, from asking to being on the disk.</summary>
internal sealed class WriteTimes
{
    private const int Most = 1000;

    private readonly Lock gate = new();
    private readonly Queue<TimeSpan> last = new();

    /// <summary>Notes one.</summary>
    public void Add(TimeSpan time)
    {
        lock (gate)
        {
            if (last.Count == Most)
                last.Dequeue();
            last.Enqueue(time);
        }
    }

    /// <summary>The time that a share of the changes did not exceed (nearest rank); null while there was none.</summary>
    /// <param name="share">Above 0, up to 1.</param>
    public TimeSpan? Within(double share)
    {
        TimeSpan[] times;
        lock (gate)
            times = [.. last];
        if (times.Length == 0)
            return null;
        Array.Sort(times);
        return times[(int)Math.Ceiling(share * times.Length) - 1];
    }
}
