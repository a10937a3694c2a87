using System.Collections.Immutable;
using NodaTime;
using ShopPlanner.Core.Making.Times;
using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Calendars;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Weekends.Stored;

namespace ShopPlanner.Services.Weekends;

/// <summary>What is asked of the scheduler, with what its names stand for.</summary>
/// <param name="Request">The request.</param>
/// <param name="Clock">Counts its minutes.</param>
/// <param name="Tasks">By id.</param>
/// <param name="Projects">That have something to do.</param>
internal sealed record AskedWeekends(
    ScheduleRequest Request,
    ScheduleClock Clock,
    ImmutableDictionary<string, WeekendTask> Tasks,
    ImmutableArray<ProjectView> Projects
)
{
    /// <summary>Whether a task could not begin when it was set to, so that all are planned freely.</summary>
    public bool IsFreed { get; init; }

    /// <summary>Projects whose time at the saw can be logged.</summary>
    public ImmutableArray<WeekendCutting> Cutting { get; init; } = [];

    /// <summary>Steps done in the last weeks, latest first.</summary>
    public ImmutableArray<WeekendDone> Lately { get; init; } = [];

    /// <summary>Whether a task is set to a time.</summary>
    public bool HasSet => Request.Tasks.Any(task => task.Begins is not null);

    /// <summary>Returns the same with no task set to a time.</summary>
    public AskedWeekends Freed() =>
        this with
        {
            IsFreed = true,
            Request = Request with { Tasks = [.. Request.Tasks.Select(task => task with { Begins = null })] },
        };
}

/// <summary>All projects and the shop's working time → a request.</summary>
internal sealed class WeekendRequests(IProjectService projects, IWorkService works, TimeProvider time)
{
    // A year of weekends, and some.
    private const int Days = 400;

    // A schedule begins on a round minute, so that it stays the same for a while.
    private const int Step = 15;

    private const double Seconds = 2;

    // Three weekends: later, nobody knows how long something took.
    private const int DaysLately = 21;

    /// <summary>The time zone of the computer, by its name in the IANA database.</summary>
    public string ShopZone =>
        DateTimeZoneProviders.Tzdb.GetZoneOrNull(time.LocalTimeZone.Id) is not null ? time.LocalTimeZone.Id
        : TimeZoneInfo.TryConvertWindowsIdToIanaId(time.LocalTimeZone.Id, out var name) ? name
        : "UTC";

    /// <summary>The moment that a schedule made now begins with.</summary>
    public DateTime Begin
    {
        get
        {
            var now = time.GetUtcNow().UtcDateTime;
            return now.Date.AddMinutes(Math.Floor(now.TimeOfDay.TotalMinutes / Step) * Step);
        }
    }

    /// <summary>Returns the request of now.</summary>
    public async Task<AskedWeekends> AskAsync(WeekendDocument document, CancellationToken cancel)
    {
        var reader = new HoursReader(ShopZone);
        var (calendar, hands) = (reader.Calendar(document), reader.Hands(document));
        var clock = new ScheduleClock(Instant.FromDateTimeUtc(Begin), calendar.Zone);
        var (tasks, shown) = (new List<ProjectTasks>(), new List<ProjectView>());
        var (cutting, done) = (new List<WeekendCutting>(), new List<WeekendDone>());
        var times = WorkTimes.Of((await works.LogsAsync(cancel)).Select(log => log.Time));
        foreach (var project in await projects.ListAsync(cancel: cancel))
        {
            if (project.State >= ProjectState.Done)
                continue;
            var work = await works.GetAsync(project.Id, cancel);
            var own = new ProjectTasks(project, work, clock, hands, times);
            // What took time is told of a project that is left out too.
            done.AddRange(Lately(project, work));
            if (own.IsAtTheSaw)
                cutting.Add(Cutting(project, own));
            if (document.Wishes.Any(one => one.Project == project.Id && one.IsLeftOut))
                continue;
            tasks.Add(own);
            shown.Add(project);
        }

        var request = new ScheduleRequest(
            calendar.Windows(clock, Days),
            Resources(hands, tasks.SelectMany(one => one.Tasks)),
            [.. tasks.SelectMany(one => one.Tasks).Select(task => Remember(task, document, clock))],
            [.. tasks.SelectMany(one => one.Precedences)]
        )
        {
            Start = clock.LocalAt(0),
            Zone = calendar.Zone.Id,
            Seconds = Seconds,
            Projects = [.. shown.Select(project => Wish(project, document, reader, clock))],
        };
        var told = tasks.SelectMany(one => one.Told).Select(one => Remember(one, document, clock));
        return new AskedWeekends(request, clock, told.ToImmutableDictionary(one => one.Id), [.. shown])
        {
            Cutting = [.. cutting],
            Lately = [.. done.OrderByDescending(one => one.DoneUtc).ThenBy(one => one.StepId, StringComparer.Ordinal)],
        };
    }

    private static WeekendCutting Cutting(ProjectView project, ProjectTasks tasks) =>
        new(project.Id, project.Name, tasks.CutSoFar);

    private IEnumerable<WeekendDone> Lately(ProjectView project, WorkView? work)
    {
        var since = time.GetUtcNow().UtcDateTime.AddDays(-DaysLately);
        foreach (var step in work?.Steps ?? [])
            if (step is { Mark: StepMark.Done, DoneUtc: { } done } && done >= since)
                yield return new(project.Id, project.Name, step.Step.Id, step.Title, done, step.Took);
    }

    // What holds already is there, whatever was counted.
    private static ImmutableSortedDictionary<string, int> Resources(ShopHands hands, IEnumerable<ScheduleTask> tasks)
    {
        var resources = ImmutableSortedDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        resources[ProjectTasks.Person] = hands.People;
        if (hands.Clamps is { } clamps)
            resources[ProjectTasks.Clamps] = clamps;
        if (hands.Drying is { } drying)
            resources[ProjectTasks.Drying] = drying;
        var held = tasks.Where(task => task.Fixed is not null).SelectMany(task => task.HoldUses);
        foreach (var use in held.GroupBy(use => use.Key, StringComparer.Ordinal))
            resources[use.Key] = Math.Max(resources[use.Key], use.Sum(one => one.Value));
        return resources.ToImmutable();
    }

    private static ScheduleTask Remember(ScheduleTask task, WeekendDocument document, ScheduleClock clock) =>
        task with
        {
            Begins = task.Fixed is null ? SetTo(task.Id, document, clock) : null,
            NotBefore = document.Moved.TryGetValue(task.Id, out var moved) ? Math.Max(0, Minute(clock, moved)) : 0,
            Earlier =
                document.Kept.TryGetValue(task.Id, out var kept) && Minute(clock, kept) is >= 0 and var minute ? minute : null,
        };

    private static WeekendTask Remember(WeekendTask task, WeekendDocument document, ScheduleClock clock) =>
        task with
        {
            PutOffUtc = document.Moved.TryGetValue(task.Id, out var moved) ? moved : null,
            IsSet = SetTo(task.Id, document, clock) is not null,
        };

    // A time that has passed with the task undone binds nobody.
    private static int? SetTo(string task, WeekendDocument document, ScheduleClock clock) =>
        document.Begins.TryGetValue(task, out var begins) && Minute(clock, begins) is >= 0 and var minute ? minute : null;

    private static ScheduleProject Wish(ProjectView project, WeekendDocument document, HoursReader reader, ScheduleClock clock)
    {
        var wish = document.Wishes.FirstOrDefault(one => one.Project == project.Id);
        var due = wish is null ? null : reader.Due(wish);
        return new ScheduleProject(project.Id.ToString("N"), wish?.Priority ?? ProjectWish.Usual)
        {
            // Until the end of the day.
            Due = due is { } date ? clock.MinuteOf(date.PlusDays(1).AtMidnight()) : null,
        };
    }

    private static int Minute(ScheduleClock clock, DateTime utc) =>
        clock.MinuteOf(Instant.FromDateTimeUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc)));
}
