using System.Globalization;
using NodaTime;
using ShopPlanner.Core.Measures;
using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Boards;
using ShopPlanner.Scheduling.Checks;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Weekends;

/// <summary>Sets a task to a window, with everything else planned round it.</summary>
internal sealed class WeekendMoves(AskedWeekends asked, Schedule schedule)
{
    // Somebody waits, and most starts that can't be are refused at once.
    private const double Seconds = 1;
    private const int MostTries = 8;

    private readonly ILookup<string, LaborPiece> pieces =
        schedule.Status == ScheduleStatus.Impossible
            ? Array.Empty<LaborPiece>().ToLookup(piece => piece.Task.Id)
            : Board.Pieces(asked.Request, schedule).ToLookup(piece => piece.Task.Id);

    /// <summary>Returns the schedule with the task in the window that is open at a moment, or why there is none.</summary>
    public Outcome<Schedule> Move(string id, DateTime windowUtc)
    {
        if (asked.Request.Tasks.FirstOrDefault(one => one.Id == id && one.Fixed is null) is not { } task || !pieces.Contains(id))
            return Outcome.Missing<Schedule>("task");
        if (WindowAt(windowUtc) is not { } window)
            return Refuse(task, "wasn't moved: there is no working time then. Load the page again");
        if (!task.IsSplittable && task.Labor > window.Minutes)
            return Refuse(
                task,
                $"takes {Minutes.Say(task.Labor)} without a break, and there are only {Minutes.Say(window.Minutes)} then: "
                    + "choose a longer day"
            );
        foreach (var start in Starts(task, window).Take(MostTries))
            if (Plan(id, start) is { Status: not ScheduleStatus.Impossible } found)
                return found;
        return Refuse(task, WhyNot(task, window));
    }

    private Schedule Plan(string id, int start) =>
        SchedulePlanner.Plan(
            asked.Request with
            {
                Seconds = Seconds,
                Tasks = [.. asked.Request.Tasks.Select(task => task.Id == id ? Set(task, start) : Stay(task))],
            },
            new ScheduleControl()
        );

    private static ScheduleTask Set(ScheduleTask task, int start) => task with { Begins = start, NotBefore = 0, Earlier = start };

    private ScheduleTask Stay(ScheduleTask task) => task with { Earlier = schedule.Starts[task.Id] };

    private Window? WindowAt(DateTime utc)
    {
        var minute = Math.Max(0, asked.Clock.MinuteOf(Instant.FromDateTimeUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc))));
        foreach (var window in Window.Join(asked.Request.Windows))
            if (minute < window.Closes)
                return minute >= window.Opens ? window : null;
        return null;
    }

    // Where the window is free first, then where something else has to make way.
    private IEnumerable<int> Starts(ScheduleTask task, Window window)
    {
        var others = pieces.Where(one => one.Key != task.Id).SelectMany(one => one).ToList();
        var last = Last(task, window);
        var needed = Needs(task).Select(one => one.Free).DefaultIfEmpty(0).Max();
        int[] starts = [window.Opens, needed, schedule.Starts[task.Id], last, .. others.Select(piece => piece.To)];
        return starts
            .Where(start => start >= window.Opens && start <= last)
            .Distinct()
            .OrderBy(start => start < needed || others.Exists(piece => piece.From < start + task.Labor && start < piece.To))
            .ThenBy(start => start);
    }

    private static int Last(ScheduleTask task, Window window) => window.Closes - (task.IsSplittable ? 1 : task.Labor);

    private IEnumerable<(string Id, int Free)> Needs(ScheduleTask task) =>
        asked
            .Request.Precedences.Where(one => one.After == task.Id)
            .Select(one => (one.Before, pieces[one.Before].Max(piece => piece.To + piece.Task.Hold) + one.Wait));

    private string WhyNot(ScheduleTask task, Window window)
    {
        if (
            Needs(task).OrderByDescending(one => one.Free).FirstOrDefault() is { Id: { } need, Free: var free }
            && free > Last(task, window)
        )
            return $"wasn't moved: “{asked.Tasks[need].Title}” comes first, and takes until {At(free)}";
        var set = asked
            .Request.Precedences.Where(one => one.Before == task.Id)
            .Select(one => asked.Tasks[one.After])
            .FirstOrDefault(one => one.IsSet);
        return set is not null
            ? $"wasn't moved: it has to be done before “{set.Title}”, which you set to {At(schedule.Starts[set.Id])}. "
                + "Undo that move first"
            : "wasn't moved: it doesn't fit there beside the tasks you moved and what it needs. Choose another day";
    }

    private string At(int minute) =>
        asked.Clock.LocalAt(minute).ToDateTimeUnspecified().ToString("ddd, MMM d, h:mm tt", CultureInfo.InvariantCulture);

    private Outcome<Schedule> Refuse(ScheduleTask task, string why) =>
        Outcome.Faulty<Schedule>(Fault.Of("task", asked.Tasks[task.Id].Title, why));
}
