namespace ShopPlanner.Scheduling.Tests.Checking;

/// <summary>The rules of the format as arrays of minutes: slow, plain, and without a line of the planner's code.</summary>
internal static class Minutewise
{
    /// <summary>The minutes that a task's labor and hold take when it begins at a minute; null where it cannot begin
    /// there.</summary>
    public static (int From, int LaborEnd, int Free)? Place(ScheduleRequest request, ScheduleTask task, int start)
    {
        if (task.Fixed is { } done)
            return start == done.Start ? (start, done.End, done.End + task.Hold) : null;
        if (start < task.NotBefore)
            return null;
        var open = new HashSet<int>(request.Windows.SelectMany(window => Enumerable.Range(window.Opens, window.Minutes)));
        var end = start;
        if (task.Labor == 0)
            return request.Windows.Any(window => window.Opens <= start && start <= window.Closes)
                ? (start, start, start + task.Hold)
                : null;
        if (!open.Contains(start))
            return null;
        for (var left = task.Labor; left > 0; end++)
        {
            if (open.Contains(end))
                left--;
            else if (!task.IsSplittable || end > open.Max())
                return null;
        }

        return (start, end, end + task.Hold);
    }

    /// <summary>The finish of a schedule that keeps all rules; null of one that breaks one.</summary>
    public static int? Finish(ScheduleRequest request, IReadOnlyDictionary<string, int> starts)
    {
        var places = new Dictionary<string, (int From, int LaborEnd, int Free)>();
        foreach (var task in request.Tasks)
        {
            if (Place(request, task, starts[task.Id]) is not { } place)
                return null;
            places[task.Id] = place;
        }

        var tasks = request.Tasks.ToDictionary(task => task.Id);
        if (
            request.Precedences.Any(one =>
                tasks[one.After].Fixed is null && places[one.After].From < places[one.Before].Free + one.Wait
            )
        )
            return null;
        var last = places.Values.Select(place => place.Free).DefaultIfEmpty(0).Max();
        var first = places.Values.Select(place => place.From).DefaultIfEmpty(0).Min();
        for (var minute = first; minute < last; minute++)
            foreach (var (resource, capacity) in request.Resources)
                if (request.Tasks.Sum(task => Taken(task, places[task.Id], resource, minute)) > capacity)
                    return null;
        return last;
    }

    private static int Taken(ScheduleTask task, (int From, int LaborEnd, int Free) place, string resource, int minute) =>
        place.From <= minute && minute < place.LaborEnd ? task.LaborUses.GetValueOrDefault(resource)
        : place.LaborEnd <= minute && minute < place.Free ? task.HoldUses.GetValueOrDefault(resource)
        : 0;
}
