using System.Collections.Immutable;
using System.Globalization;

namespace ShopPlanner.Scheduling.Verification;

/// <summary>Checks a schedule against its request, minute by minute where that is needed; shares no code with the
/// planner.</summary>
public static class ScheduleVerifier
{
    /// <summary>Returns what is wrong, a sentence each; nothing where the schedule keeps all rules.</summary>
    /// <param name="request">The request.</param>
    /// <param name="schedule">Its schedule.</param>
    public static ImmutableArray<string> Check(ScheduleRequest request, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(schedule);
        if (schedule.Status == ScheduleStatus.Impossible)
            return [];
        var missing = request
            .Tasks.Where(task => !schedule.Starts.ContainsKey(task.Id))
            .Select(task => $"'{task.Id}' has no start");
        if (missing.ToImmutableArray() is { IsEmpty: false } faults)
            return faults;
        var placed = request.Tasks.Select(task => Place(request, task, schedule.Starts[task.Id])).ToList();
        return
        [
            .. placed.SelectMany(one => one.Faults),
            .. Orders(request, placed),
            .. request.Resources.SelectMany(resource => Overuse(resource.Key, resource.Value, placed)),
            .. Finish(schedule, placed),
        ];
    }

    private static Placed Place(ScheduleRequest request, ScheduleTask task, int start)
    {
        if (task.Fixed is { } done)
            return new Placed(task, done.Start, done.End, start == done.Start ? [] : [$"'{task.Id}' is fixed to {done.Start}"]);
        var end = task.IsSplittable ? SplitEnd(request, task, start) : start + task.Labor;
        var isInside =
            end is not null && (task.IsSplittable && task.Labor > 0 ? Opens(request, start) : Inside(request, start, end.Value));
        string[] faults =
        [
            .. isInside ? Array.Empty<string>() : [Text($"the labor of '{task.Id}' from {start} does not lie in the windows")],
            .. start >= task.NotBefore
                ? Array.Empty<string>()
                : [Text($"'{task.Id}' begins at {start}, before {task.NotBefore}")],
            .. task.Begins is null || task.Begins == start
                ? Array.Empty<string>()
                : [Text($"'{task.Id}' begins at {start} and is set to {task.Begins}")],
        ];
        return new Placed(task, start, end ?? start, faults);
    }

    // Windows that touch count as one.
    private static bool Inside(ScheduleRequest request, int from, int to)
    {
        var at = from;
        foreach (var window in request.Windows)
            if (window.Opens <= at && at < window.Closes)
                at = window.Closes;
        return at > from ? at >= to : from == to && request.Windows.Any(window => window.Opens == from || window.Closes == from);
    }

    private static bool Opens(ScheduleRequest request, int minute) =>
        request.Windows.Any(window => window.Opens <= minute && minute < window.Closes);

    private static int? SplitEnd(ScheduleRequest request, ScheduleTask task, int start)
    {
        var left = task.Labor;
        if (left == 0)
            return start;
        foreach (var window in request.Windows)
        {
            var from = Math.Max(start, window.Opens);
            if (from >= window.Closes)
                continue;
            if (left <= window.Closes - from)
                return from + left;
            left -= window.Closes - from;
        }

        return null;
    }

    private static IEnumerable<string> Orders(ScheduleRequest request, List<Placed> placed)
    {
        var byId = placed.ToDictionary(one => one.Task.Id, StringComparer.Ordinal);
        foreach (var order in request.Precedences.Where(order => byId[order.After].Task.Fixed is null))
        {
            var earliest = byId[order.Before].Free + order.Wait;
            if (byId[order.After].Start < earliest)
                yield return Text(
                    $"'{order.After}' begins at {byId[order.After].Start}, and '{order.Before}' keeps it until {earliest}"
                );
        }
    }

    private static IEnumerable<string> Overuse(string resource, int capacity, List<Placed> placed)
    {
        var taken = placed.SelectMany(one => one.Taken(resource)).Where(one => one.To > one.From && one.Amount > 0).ToList();
        foreach (var minute in taken.Select(one => one.From).Distinct().Order())
        {
            var amount = taken.Where(one => one.From <= minute && minute < one.To).Sum(one => (long)one.Amount);
            if (amount > capacity)
                yield return Text($"at minute {minute} {amount} of '{resource}' are taken, and there are {capacity}");
        }
    }

    private static IEnumerable<string> Finish(Schedule schedule, List<Placed> placed)
    {
        var finish = placed.Select(one => one.Free).DefaultIfEmpty(0).Max();
        if (schedule.Finish != finish)
            yield return Text($"the finish is said to be {schedule.Finish} and is {finish}");
        if (schedule.Bound > finish)
            yield return Text($"the bound {schedule.Bound} is beyond the finish {finish}");
        if (schedule.Status == ScheduleStatus.Proven && schedule.Bound != schedule.Finish)
            yield return Text($"it is said to be proven, and its bound is {schedule.Bound}");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private sealed record Placed(ScheduleTask Task, int Start, int End, string[] Faults)
    {
        public int Free => End + Task.Hold;

        public IEnumerable<(int From, int To, int Amount)> Taken(string resource) =>
            [(Start, End, Task.LaborUses.GetValueOrDefault(resource)), (End, Free, Task.HoldUses.GetValueOrDefault(resource))];
    }
}
