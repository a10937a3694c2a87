using System.Collections.Immutable;
using ShopPlanner.Scheduling;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Services.Weekends;

/// <summary>Something to do.</summary>
/// <param name="Id">Stays while it moves.</param>
/// <param name="Project">The project.</param>
/// <param name="Code">The project's letters.</param>
/// <param name="ProjectName">Its name.</param>
/// <param name="Title">What to do.</param>
/// <param name="Minutes">Time at work, an estimate.</param>
/// <param name="Page">Where it is described; null for cutting, which a cut plan describes.</param>
public sealed record WeekendTask(
    string Id,
    Guid Project,
    string Code,
    string ProjectName,
    string Title,
    int Minutes,
    WorkPage? Page
)
{
    /// <summary>What has to pass after it: <c>glue in clamps</c>; empty where nothing has.</summary>
    public string Hold { get; init; } = "";

    /// <summary>Time at work as estimated without any log.</summary>
    public int Usual { get; init; }

    /// <summary>From how many logs the estimate learned; 0 where it is the usual one.</summary>
    public int Logs { get; init; }

    /// <summary>Whether a person set it to its time.</summary>
    public bool IsSet { get; init; }

    /// <summary>The moment before which it is not begun, where a person put it off.</summary>
    public DateTime? PutOffUtc { get; init; }
}

/// <summary>Work on a task inside a window. Times are those of the shop's clock.</summary>
/// <param name="Task">The task.</param>
/// <param name="From">When it begins there.</param>
/// <param name="To">When it ends there.</param>
/// <param name="GoesOn">Whether more of it follows in the next window.</param>
/// <param name="WasBegun">Whether it was begun in an earlier one.</param>
public sealed record WeekendLine(WeekendTask Task, DateTime From, DateTime To, bool GoesOn, bool WasBegun);

/// <summary>What holds by itself.</summary>
/// <param name="Task">The task that it follows.</param>
/// <param name="From">When it begins.</param>
/// <param name="Until">When it is over.</param>
public sealed record WeekendHold(WeekendTask Task, DateTime From, DateTime Until);

/// <summary>A window of working time.</summary>
/// <param name="Opens">When it opens.</param>
/// <param name="Closes">When it closes.</param>
/// <param name="Lines">What is done, in order.</param>
/// <param name="Holds">What holds from its opening until the next one opens.</param>
public sealed record WeekendWindow(
    DateTime Opens,
    DateTime Closes,
    ImmutableArray<WeekendLine> Lines,
    ImmutableArray<WeekendHold> Holds
)
{
    /// <summary>When it opens, in universal time.</summary>
    public required DateTime OpensUtc { get; init; }
}

/// <summary>A window that work can be moved to.</summary>
/// <param name="Opens">When it opens, by the shop's clock.</param>
/// <param name="OpensUtc">The same in universal time.</param>
public sealed record WeekendTarget(DateTime Opens, DateTime OpensUtc);

/// <summary>A project in the schedule.</summary>
/// <param name="Project">The project.</param>
/// <param name="Code">Its letters.</param>
/// <param name="Name">Its name.</param>
/// <param name="Begin">When work on it begins; null where nothing is scheduled.</param>
/// <param name="Finish">When all is done and dry; null where nothing is scheduled.</param>
/// <param name="Due">The date it is to be finished by; null for any time.</param>
/// <param name="LateMinutes">How late it is; 0 where it is not.</param>
/// <param name="Minutes">Work left, an estimate.</param>
public sealed record WeekendProject(
    Guid Project,
    string Code,
    string Name,
    DateTime? Begin,
    DateTime? Finish,
    DateOnly? Due,
    int LateMinutes,
    int Minutes
);

/// <summary>A project whose time at the saw can be logged.</summary>
/// <param name="Project">The project.</param>
/// <param name="Name">Its name.</param>
/// <param name="CutSoFar">Minutes, as estimated, for what is cut by now.</param>
public sealed record WeekendCutting(Guid Project, string Name, int CutSoFar);

/// <summary>A step that was done lately.</summary>
/// <param name="Project">The project.</param>
/// <param name="ProjectName">Its name.</param>
/// <param name="StepId">The step.</param>
/// <param name="Title">What was done.</param>
/// <param name="DoneUtc">When.</param>
/// <param name="Took">How long it took, as typed; empty where that was not logged.</param>
public sealed record WeekendDone(Guid Project, string ProjectName, string StepId, string Title, DateTime DoneUtc, string Took);

/// <summary>What happens when.</summary>
/// <param name="Status">How good the schedule is.</param>
/// <param name="Finish">When everything is done and dry; null where there is no schedule, or nothing to do.</param>
/// <param name="Bound">No schedule finishes before it; null as for the finish.</param>
/// <param name="Windows">In the order of time, up to the last in which something happens.</param>
/// <param name="Projects">By their finish.</param>
/// <param name="Reasons">Why there is no schedule; empty where there is one.</param>
public sealed record WeekendBoard(
    ScheduleStatus Status,
    DateTime? Finish,
    DateTime? Bound,
    ImmutableArray<WeekendWindow> Windows,
    ImmutableArray<WeekendProject> Projects,
    ImmutableArray<string> Reasons
)
{
    /// <summary>Whether nothing is left to do.</summary>
    public bool IsEmpty => Reasons.IsEmpty && Finish is null;

    /// <summary>Windows that work can be moved to: those of the schedule, and a few after it.</summary>
    public ImmutableArray<WeekendTarget> Targets { get; init; } = [];

    /// <summary>Whether a task can't begin when it was set to, so that all are planned freely.</summary>
    public bool IsFreed { get; init; }

    /// <summary>Projects whose time at the saw can be logged.</summary>
    public ImmutableArray<WeekendCutting> Cutting { get; init; } = [];

    /// <summary>Steps done in the last weeks, latest first.</summary>
    public ImmutableArray<WeekendDone> Lately { get; init; } = [];

    /// <summary>Whether it is the schedule that was kept, as far as its tasks are still to be done.</summary>
    public bool IsKept { get; init; }
}

/// <summary>Schedules the work of all projects into the shop's working time.</summary>
public interface IWeekendService
{
    /// <summary>Returns when there is time to work.</summary>
    Task<WeekendSettings> SettingsAsync(CancellationToken cancel = default);

    /// <summary>Saves it, or nothing with a fault for each text that is wrong; a conflict when the version is not the one
    /// stored.</summary>
    Task<Outcome<WeekendSettings>> SaveAsync(WeekendSettings settings, CancellationToken cancel = default);

    /// <summary>Returns what happens when, from now on. It moves as little as possible from the schedule that was
    /// kept.</summary>
    Task<WeekendBoard> BoardAsync(CancellationToken cancel = default);

    /// <summary>Keeps the schedule as it is now: later ones move as little as possible from it.</summary>
    Task<Outcome<Done>> RememberAsync(CancellationToken cancel = default);

    /// <summary>Puts a task off until a moment; null lets it begin as early as it can.</summary>
    Task<Outcome<Done>> PutOffAsync(string task, DateTime? utc, CancellationToken cancel = default);

    /// <summary>Sets a task to a window: it begins there as early as the others let it, and they are planned round it, moved as
    /// little as possible. Refused, with nothing changed, where it can't be done there.</summary>
    /// <param name="task">The task.</param>
    /// <param name="windowUtc">A moment inside the window.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<Done>> MoveAsync(string task, DateTime windowUtc, CancellationToken cancel = default);

    /// <summary>Lets a task begin whenever the schedule says; null for all tasks that were set to a time.</summary>
    Task<Outcome<Done>> LetGoAsync(string? task, CancellationToken cancel = default);

    /// <summary>Returns what can be done in a while that is free now, in order.</summary>
    Task<ImmutableArray<WeekendTask>> WithinAsync(int minutes, CancellationToken cancel = default);

    /// <summary>Returns the schedule as iCalendar (RFC 5545).</summary>
    Task<string> CalendarAsync(CancellationToken cancel = default);
}
