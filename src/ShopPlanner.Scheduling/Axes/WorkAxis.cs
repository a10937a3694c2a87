using System.Collections.Immutable;

namespace ShopPlanner.Scheduling.Axes;

/// <summary>
/// The axis of open minutes: the windows put end to end. Labor advances along it, holds along the calendar; a position here
/// is a
/// number of open minutes that have passed.
/// </summary>
public sealed class WorkAxis
{
    private readonly int[] before;

    /// <summary>Makes the axis of some windows.</summary>
    /// <param name="windows">Disjoint, ascending.</param>
    public WorkAxis(IEnumerable<Window> windows)
    {
        Windows = Window.Join(windows);
        before = new int[Windows.Length + 1];
        for (var k = 0; k < Windows.Length; k++)
            before[k + 1] = before[k] + Windows[k].Minutes;
    }

    /// <summary>The windows, those that touch put together.</summary>
    public ImmutableArray<Window> Windows { get; }

    /// <summary>All open minutes.</summary>
    public int Total => before[^1];

    /// <summary>The minute that the last window ends before; 0 where there is none.</summary>
    public int Closes => Windows.IsEmpty ? 0 : Windows[^1].Closes;

    /// <summary>Returns how many open minutes pass before a window opens.</summary>
    /// <param name="window">Its number.</param>
    public int Before(int window) => before[window];

    /// <summary>Returns how much later the calendar is than this axis inside a window.</summary>
    /// <param name="window">Its number.</param>
    public int Offset(int window) => Windows[window].Opens - before[window];

    /// <summary>Returns how many open minutes pass before a minute of the calendar.</summary>
    public int OpenBefore(int minute)
    {
        var k = FirstClosingAfter(minute);
        return k == Windows.Length ? Total : before[k] + Math.Max(0, minute - Windows[k].Opens);
    }

    /// <summary>Returns the number of the first window that closes after a minute; the number of windows where none
    /// does.</summary>
    public int FirstClosingAfter(int minute)
    {
        var (low, high) = (0, Windows.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = Windows[middle].Closes > minute ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    /// <summary>Returns the minute that labor ends before which begins at a minute inside a window; null where the windows end
    /// first.</summary>
    /// <param name="start">Its first minute.</param>
    /// <param name="labor">How long it lasts.</param>
    /// <param name="splittable">Whether it pauses where a window closes.</param>
    public int? End(int start, int labor, bool splittable) =>
        splittable && labor > 0 ? AtEnd(OpenBefore(start) + labor) : start + labor;

    /// <summary>Returns the earliest minute by which so many open minutes have passed; null where there are fewer.</summary>
    public int? AtEnd(int open)
    {
        if (open > Total)
            return null;
        var k = WindowOf(open);
        return open + Offset(k);
    }

    /// <summary>Returns the earliest start of labor at or after a minute; null where there is none.</summary>
    /// <param name="from">The minute.</param>
    /// <param name="labor">How long it lasts.</param>
    /// <param name="splittable">Whether it pauses where a window closes.</param>
    public int? EarliestStart(int from, int labor, bool splittable)
    {
        if (splittable && labor > 0)
            return EarliestSplit(from, labor);
        // Labor without a minute fits at the very end of a window too.
        for (var k = FirstClosingAfter(labor == 0 ? from - 1 : from); k < Windows.Length; k++)
            if (Math.Max(from, Windows[k].Opens) + labor <= Windows[k].Closes)
                return Math.Max(from, Windows[k].Opens);
        return null;
    }

    /// <summary>Returns the latest start of labor that ends by a minute; null where there is none.</summary>
    /// <param name="end">The minute.</param>
    /// <param name="labor">How long it lasts.</param>
    /// <param name="splittable">Whether it pauses where a window closes.</param>
    public int? LatestStart(int end, int labor, bool splittable)
    {
        if (splittable && labor > 0)
            return LatestSplit(end, labor);
        for (var k = Math.Min(FirstClosingAfter(end), Windows.Length - 1); k >= 0; k--)
            if (Math.Min(end, Windows[k].Closes) - labor is var start && start >= Windows[k].Opens)
                return start;
        return null;
    }

    private int? EarliestSplit(int from, int labor)
    {
        var k = FirstClosingAfter(from);
        if (k == Windows.Length || OpenBefore(from) + labor > Total)
            return null;
        return Math.Max(from, Windows[k].Opens);
    }

    private int? LatestSplit(int end, int labor)
    {
        var open = OpenBefore(end) - labor;
        if (open < 0)
            return null;
        var k = WindowOf(open + 1);
        return open + Offset(k);
    }

    // The window that the open minute with this number, counted from 1, lies in.
    private int WindowOf(int open)
    {
        var found = Array.BinarySearch(before, Math.Max(open, 1));
        return (found >= 0 ? found : ~found) - 1;
    }
}
