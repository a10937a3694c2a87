namespace ShopPlanner.Scheduling.Lists;

/// <summary>How much of one resource is taken at each minute, as steps.</summary>
internal sealed class UsageProfile
{
    private readonly List<int> minutes = [int.MinValue];
    private readonly List<int> taken = [0];

    public void Add(int from, int to, int amount)
    {
        if (to <= from)
            return;
        var first = StepAt(from);
        var end = StepAt(to);
        for (var step = first; step < end; step++)
            taken[step] += amount;
    }

    /// <summary>Null when an amount is free all the while; otherwise the minute that the last shortage within ends
    /// before.</summary>
    public int? ShortUntil(int from, int to, int amount, int capacity)
    {
        if (to <= from)
            return null;
        for (var step = Last(to - 1); step >= 0; step--)
        {
            if (taken[step] + amount > capacity)
                return minutes[step + 1];
            if (minutes[step] <= from)
                return null;
        }

        return null;
    }

    // The step that holds a minute.
    private int Last(int minute)
    {
        var found = minutes.BinarySearch(minute);
        return found >= 0 ? found : ~found - 1;
    }

    private int StepAt(int minute)
    {
        var step = Last(minute);
        if (minutes[step] == minute)
            return step;
        minutes.Insert(step + 1, minute);
        taken.Insert(step + 1, taken[step]);
        return step + 1;
    }
}
