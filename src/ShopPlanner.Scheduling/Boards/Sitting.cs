using System.Collections.Immutable;

namespace ShopPlanner.Scheduling.Boards;

/// <summary>What fits into a while that is free now.</summary>
public static class Sitting
{
    /// <summary>Returns tasks to do one after the other without waiting, in the order of the schedule. None is begun that
    /// would not
    /// end in time, unless it may go on later.</summary>
    /// <param name="request">The request; minute 0 is now.</param>
    /// <param name="schedule">Its schedule.</param>
    /// <param name="minutes">How long the while is.</param>
    public static ImmutableArray<ScheduleTask> Fill(ScheduleRequest request, Schedule schedule, int minutes)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(schedule);
        var placed = request.Tasks.Where(task => task.Fixed is not null).ToDictionary(task => task.Id, task => task.Fixed!.End);
        var (chosen, now) = (ImmutableArray.CreateBuilder<ScheduleTask>(), 0);
        var order = request
            .Tasks.Where(task => task.Fixed is null)
            .OrderBy(task => schedule.Starts.GetValueOrDefault(task.Id))
            .ToList();
        while (order.Find(task => Fits(request, placed, task, now, minutes)) is { } next)
        {
            order.Remove(next);
            chosen.Add(next);
            now = Math.Min(minutes, now + next.Labor);
            placed[next.Id] = now;
        }

        return chosen.ToImmutable();
    }

    private static bool Fits(ScheduleRequest request, Dictionary<string, int> placed, ScheduleTask task, int now, int minutes) =>
        (now + task.Labor <= minutes || (task.IsSplittable && now < minutes))
        && task.NotBefore <= now
        && request.Precedences.Where(one => one.After == task.Id).All(one => Free(request, placed, one) <= now)
        && task.LaborUses.Concat(task.HoldUses)
            .All(use => Taken(request, placed, use.Key, now) + use.Value <= request.Resources[use.Key]);

    private static long Free(ScheduleRequest request, Dictionary<string, int> placed, Precedence one) =>
        placed.TryGetValue(one.Before, out var end)
            ? (long)end + request.Tasks.First(task => task.Id == one.Before).Hold + one.Wait
            : long.MaxValue;

    private static int Taken(ScheduleRequest request, Dictionary<string, int> placed, string resource, int now) =>
        request
            .Tasks.Where(task => placed.TryGetValue(task.Id, out var end) && end <= now && now < end + task.Hold)
            .Sum(task => task.HoldUses.GetValueOrDefault(resource));
}
