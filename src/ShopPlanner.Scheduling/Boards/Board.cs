using System.Collections.Immutable;

namespace ShopPlanner.Scheduling.Boards;

/// <summary>Labor on a task inside one window.</summary>
/// <param name="Task">The task.</param>
/// <param name="From">Its first minute there.</param>
/// <param name="To">The minute it ends before there.</param>
/// <param name="GoesOn">Whether more of it follows in the next window.</param>
/// <param name="WasBegun">Whether it was begun in an earlier window.</param>
public sealed record LaborPiece(ScheduleTask Task, int From, int To, bool GoesOn, bool WasBegun);

/// <summary>The hold of a task.</summary>
/// <param name="Task">The task.</param>
/// <param name="From">The minute its labor ends.</param>
/// <param name="To">The minute it is free.</param>
public sealed record HoldSpan(ScheduleTask Task, int From, int To);

/// <summary>What happens in a window, and what holds from its opening until the next one opens.</summary>
/// <param name="Window">The window.</param>
/// <param name="Labor">In the order of time.</param>
/// <param name="Holds">By the minute they end.</param>
public sealed record BoardWindow(Window Window, ImmutableArray<LaborPiece> Labor, ImmutableArray<HoldSpan> Holds);

/// <summary>When a project is finished.</summary>
/// <param name="Project">Its id.</param>
/// <param name="Finish">The latest end of any of its holds.</param>
/// <param name="Due">When it should be; null for any time.</param>
public sealed record ProjectFinish(string Project, int Finish, int? Due)
{
    /// <summary>Minutes that it is late; 0 where it is not.</summary>
    public int Late => Due is { } due ? Math.Max(0, Finish - due) : 0;
}

/// <summary>A schedule, window by window.</summary>
public static class Board
{
    /// <summary>Returns the windows from the first to the last in which something happens.</summary>
    /// <param name="request">The request.</param>
    /// <param name="schedule">Its schedule.</param>
    public static ImmutableArray<BoardWindow> Of(ScheduleRequest request, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(request);
        var windows = Window.Join(request.Windows);
        var pieces = Pieces(request, schedule);
        var holds = Holds(request, schedule);
        var board = windows.Select(
            (window, n) =>
                new BoardWindow(
                    window,
                    [
                        .. pieces.Where(piece =>
                            piece.From >= window.Opens && piece.To <= window.Closes && piece.From < window.Closes
                        ),
                    ],
                    [.. holds.Where(hold => hold.To > window.Opens && hold.From < Next(windows, n))]
                )
        );
        var busy = board.ToList();
        return [.. busy.Take(busy.FindLastIndex(one => !one.Labor.IsEmpty || !one.Holds.IsEmpty) + 1)];
    }

    /// <summary>Returns the labor of each task, cut where windows close, in the order of time.</summary>
    public static ImmutableArray<LaborPiece> Pieces(ScheduleRequest request, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(schedule);
        var windows = Window.Join(request.Windows);
        return
        [
            .. request.Tasks.SelectMany(task => Pieces(windows, task, schedule.Starts[task.Id])).OrderBy(piece => piece.From),
        ];
    }

    /// <summary>Returns the holds, by the minute they end.</summary>
    public static ImmutableArray<HoldSpan> Holds(ScheduleRequest request, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(schedule);
        var windows = Window.Join(request.Windows);
        return
        [
            .. request
                .Tasks.Where(task => task.Hold > 0)
                .Select(task => (task, End: Pieces(windows, task, schedule.Starts[task.Id])[^1].To))
                .Select(one => new HoldSpan(one.task, one.End, one.End + one.task.Hold))
                .OrderBy(hold => hold.To),
        ];
    }

    /// <summary>Returns when each project is finished, the soonest first.</summary>
    public static ImmutableArray<ProjectFinish> Finishes(ScheduleRequest request, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(schedule);
        var windows = Window.Join(request.Windows);
        var due = request.Projects.ToDictionary(one => one.Id, one => one.Due, StringComparer.Ordinal);
        return
        [
            .. request
                .Tasks.GroupBy(task => task.Project, StringComparer.Ordinal)
                .Select(project => new ProjectFinish(
                    project.Key,
                    project.Max(task => Pieces(windows, task, schedule.Starts[task.Id])[^1].To + task.Hold),
                    due.GetValueOrDefault(project.Key)
                ))
                .OrderBy(one => one.Finish),
        ];
    }

    private static int Next(ImmutableArray<Window> windows, int n) =>
        n + 1 < windows.Length ? windows[n + 1].Opens : int.MaxValue;

    private static List<LaborPiece> Pieces(ImmutableArray<Window> windows, ScheduleTask task, int start)
    {
        if (task.Fixed is { } done)
            return [new(task, done.Start, done.End, false, false)];
        if (!task.IsSplittable || task.Labor == 0)
            return [new(task, start, start + task.Labor, false, false)];
        var (pieces, left) = (new List<LaborPiece>(), task.Labor);
        foreach (var window in windows.Where(window => window.Closes > start))
        {
            var from = Math.Max(start, window.Opens);
            var to = Math.Min(window.Closes, from + left);
            left -= to - from;
            pieces.Add(new LaborPiece(task, from, to, left > 0, pieces.Count > 0));
            if (left == 0)
                break;
        }

        return pieces;
    }
}
