using System.Collections.Immutable;

namespace ShopPlanner.Scheduling;

/// <summary>A stretch of time that is open for work, in minutes from the start of the schedule.</summary>
/// <param name="Opens">Its first minute.</param>
/// <param name="Closes">The minute that it ends before.</param>
public readonly record struct Window(int Opens, int Closes)
{
    /// <summary>How long it is open.</summary>
    public int Minutes => Closes - Opens;

    /// <summary>Returns the windows with those that touch put together.</summary>
    /// <param name="windows">Disjoint, ascending.</param>
    public static ImmutableArray<Window> Join(IEnumerable<Window> windows)
    {
        var joined = ImmutableArray.CreateBuilder<Window>();
        foreach (var window in windows.Where(one => one.Minutes > 0))
            if (joined.Count > 0 && joined[^1].Closes == window.Opens)
                joined[^1] = joined[^1] with { Closes = window.Closes };
            else
                joined.Add(window);
        return joined.ToImmutable();
    }
}
