using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Boards;
using ShopPlanner.Scheduling.Calendars;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Weekends;

/// <summary>A schedule → what is shown of it, by the shop's clock.</summary>
internal sealed class BoardWriting(AskedWeekends asked, Schedule schedule)
{
    // Two weekends, as most people have them.
    private const int MoreTargets = 4;

    private readonly ScheduleRequest request = asked.Request;

    /// <summary>What happens when.</summary>
    public WeekendBoard Board()
    {
        if (schedule.Status == ScheduleStatus.Impossible)
            return new WeekendBoard(schedule.Status, null, null, [], Projects([]), [.. schedule.Reasons.Select(Named)]);
        var isIdle = request.Tasks.All(task => task.Fixed is not null);
        var windows = Scheduling.Boards.Board.Of(request, schedule);
        return new WeekendBoard(
            schedule.Status,
            isIdle ? null : At(schedule.Finish!.Value),
            isIdle ? null : At(schedule.Bound!.Value),
            [.. windows.Select(Window)],
            Projects(Scheduling.Boards.Board.Finishes(request, schedule)),
            []
        )
        {
            Targets = [.. Scheduling.Window.Join(request.Windows).Take(windows.Length + MoreTargets).Select(Target)],
        };
    }

    private WeekendTarget Target(Window window) => new(At(window.Opens), asked.Clock.InstantAt(window.Opens).ToDateTimeUtc());

    /// <summary>The schedule as iCalendar (RFC 5545): work as busy, what holds as free.</summary>
    public string Calendar(NodaTime.Instant stamp)
    {
        if (schedule.Status == ScheduleStatus.Impossible)
            return CalendarFile.Write("Shop Planner", [], stamp);
        var labor = Scheduling
            .Boards.Board.Pieces(request, schedule)
            .Where(piece => piece.Task.Fixed is null)
            .GroupBy(piece => piece.Task.Id)
            .SelectMany(pieces => pieces.Select((piece, n) => Entry(piece.Task.Id, n, piece.From, piece.To)));
        var holds = Scheduling.Boards.Board.Holds(request, schedule).Select(Entry);
        return CalendarFile.Write("Shop Planner", labor.Concat(holds), stamp);
    }

    private DateTime At(int minute) => asked.Clock.LocalAt(minute).ToDateTimeUnspecified();

    private WeekendWindow Window(BoardWindow window) =>
        new(
            At(window.Window.Opens),
            At(window.Window.Closes),
            [
                .. window
                    .Labor.Where(piece => piece.Task.Fixed is null)
                    .Select(piece => new WeekendLine(
                        Task(piece.Task),
                        At(piece.From),
                        At(piece.To),
                        piece.GoesOn,
                        piece.WasBegun
                    )),
            ],
            [.. window.Holds.Select(hold => new WeekendHold(Task(hold.Task), At(hold.From), At(hold.To)))]
        )
        {
            OpensUtc = asked.Clock.InstantAt(window.Window.Opens).ToDateTimeUtc(),
        };

    private WeekendTask Task(ScheduleTask task) => asked.Tasks[task.Id];

    private ImmutableArray<WeekendProject> Projects(ImmutableArray<ProjectFinish> finishes) =>
        [
            .. asked
                .Projects.Select(project =>
                    Project(project, finishes.FirstOrDefault(one => one.Project == project.Id.ToString("N")))
                )
                .OrderBy(one => one.Finish ?? DateTime.MaxValue)
                .ThenBy(one => one.Name, StringComparer.OrdinalIgnoreCase),
        ];

    private WeekendProject Project(ProjectView project, ProjectFinish? finish)
    {
        var id = project.Id.ToString("N");
        var open = request.Tasks.Where(task => task.Project == id && task.Fixed is null).ToList();
        var due = request.Projects.First(one => one.Id == id).Due;
        return new WeekendProject(
            project.Id,
            project.Code,
            project.Name,
            finish is null || open.Count == 0 ? null : At(open.Min(task => schedule.Starts[task.Id])),
            finish is null || open.Count == 0 ? null : At(finish.Finish),
            due is { } minute ? DateOnly.FromDateTime(At(minute)).AddDays(-1) : null,
            open.Count == 0 ? 0 : finish?.Late ?? 0,
            open.Sum(task => task.Labor)
        );
    }

    private CalendarEntry Entry(string id, int part, int from, int to)
    {
        var task = asked.Tasks[id];
        return new CalendarEntry(
            string.Create(CultureInfo.InvariantCulture, $"{id}/{part}@shop-planner"),
            asked.Clock.InstantAt(from),
            asked.Clock.InstantAt(to),
            $"{task.ProjectName}: {task.Title}",
            ""
        );
    }

    private CalendarEntry Entry(HoldSpan hold)
    {
        var task = Task(hold.Task);
        return new CalendarEntry(
            $"{task.Id}/hold@shop-planner",
            asked.Clock.InstantAt(hold.From),
            asked.Clock.InstantAt(hold.To),
            $"{task.ProjectName}: {task.Hold}",
            $"After: {task.Title}"
        )
        {
            IsBusy = false,
        };
    }

    // Reasons name tasks by their ids; people know them by project and title.
    private string Named(string reason) =>
        asked.Tasks.Values.Aggregate(
            reason,
            (text, task) =>
                text.Replace($"'{task.Id}'", $"“{task.ProjectName}: {task.Title}”", StringComparison.Ordinal)
                    .Replace(task.Id, $"“{task.ProjectName}: {task.Title}”", StringComparison.Ordinal)
        );
}
