using System.Collections.Immutable;
using NodaTime;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Times;
using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Calendars;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Weekends;

/// <summary>What is left to do for a project, as tasks: cutting, then each open step of its order of work. What was done and
/// still
/// cures holds back what waits for it.</summary>
internal sealed class ProjectTasks
{
    /// <summary>People at work.</summary>
    public const string Person = "person";

    /// <summary>Clamps of any kind.</summary>
    public const string Clamps = "clamps";

    /// <summary>Space for pieces that dry.</summary>
    public const string Drying = "drying";

    // Common practice: a few minutes for each piece, measuring, setting and stacking included.
    private const int MinutesPerPiece = 4;

    // Shorter work is done in one go.
    private const int LeastToPause = 45;

    private static readonly ImmutableSortedDictionary<string, int> Nothing = ImmutableSortedDictionary.Create<string, int>(
        StringComparer.Ordinal
    );

    private readonly ProjectView project;
    private readonly ScheduleClock clock;
    private readonly ShopHands hands;
    private readonly Dictionary<string, WorkStepView> steps;

    private readonly WorkTimes times;

    public ProjectTasks(ProjectView project, WorkView? work, ScheduleClock clock, ShopHands hands, WorkTimes times)
    {
        (this.project, this.clock, this.hands, this.times) = (project, clock, hands, times);
        steps = (work?.Steps ?? []).ToDictionary(one => one.Step.Id, StringComparer.Ordinal);
        AddCutting(project.Pieces > 0 ? project.Pieces : work?.Piece?.Parts.Sum(part => part.Copies.Length) ?? 0);
        foreach (var step in steps.Values)
            Add(step);
    }

    public List<ScheduleTask> Tasks { get; } = [];

    public List<Precedence> Precedences { get; } = [];

    public List<WeekendTask> Told { get; } = [];

    /// <summary>Minutes by the usual estimate for what is cut already.</summary>
    public int CutSoFar { get; private set; }

    private string CutId => Id("cut");

    /// <summary>Whether there is something to cut, or was.</summary>
    public bool IsAtTheSaw => IsCutting || CutSoFar > 0;

    private bool IsCutting => Told.Exists(one => one.Id == CutId);

    private string Id(string step) => $"{project.Id:N}/{step}";

    // The parts list counts; before it is made, the design's parts do.
    private void AddCutting(int pieces)
    {
        var progress = project.Standing.Progress;
        var left = progress.Cuts == 0 ? 1.0 : 1 - ((double)progress.CutsMade / progress.Cuts);
        if (project.State > ProjectState.Cutting || progress.IsFinished)
            left = 0;
        var minutes = (int)Math.Ceiling(pieces * MinutesPerPiece * left);
        CutSoFar = (pieces * MinutesPerPiece) - minutes;
        if (minutes == 0)
            return;
        var learned = times.Estimate(WorkTimes.Cutting, minutes);
        Tell(CutId, "Cut the parts", learned, null, "");
        Tasks.Add(Labor(CutId, learned.Minutes, Nothing) with { IsSplittable = true });
    }

    private void Add(WorkStepView step)
    {
        if (step.Mark == StepMark.Skipped)
            return;
        var id = Id(step.Step.Id);
        var page = WorkPages.Has(WorkPage.Build, step.Step.Phase) ? WorkPage.Build : WorkPage.Finish;
        if (step.Mark == StepMark.Done)
        {
            if (Curing(step) is not { } curing)
                return;
            Tasks.Add(curing);
        }
        else
        {
            Tasks.Add(Open(step));
            Follow(step);
        }

        Tell(id, step.Title, Learned(step.Step), page, step.Step.Wait?.What ?? "");
    }

    private LearnedTime Learned(WorkStep step) => times.Estimate(StepWords.Kind(step.Action), step.Minutes);

    private void Tell(string id, string title, LearnedTime time, WorkPage? page, string hold) =>
        Told.Add(
            new WeekendTask(id, project.Id, project.Code, project.Name, title, time.Minutes, page)
            {
                Hold = hold,
                Usual = time.Usual,
                Logs = time.Logs,
            }
        );

    private ScheduleTask Open(WorkStepView step)
    {
        var (hold, uses) = Hold(step.Step);
        var clamps = uses.Where(use => use.Key == Clamps).ToImmutableSortedDictionary(StringComparer.Ordinal);
        var minutes = Learned(step.Step).Minutes;
        return Labor(Id(step.Step.Id), minutes, clamps) with
        {
            Hold = hold,
            HoldUses = uses,
            IsSplittable = step.Step.Wait is null && minutes >= LeastToPause,
        };
    }

    private ScheduleTask Labor(string id, int minutes, ImmutableSortedDictionary<string, int> uses) =>
        new(id, minutes, 0, uses.Add(Person, 1), Nothing) { Project = project.Id.ToString("N") };

    // Clamps come off before the glue has its full strength; what dries takes its space all the while.
    private (int Hold, ImmutableSortedDictionary<string, int> Uses) Hold(WorkStep step)
    {
        if (step.Wait is not { } wait)
            return (0, Nothing);
        if (wait is { Clamps: > 0, ClampMinutes: > 0 })
            return (wait.ClampMinutes, hands.Clamps is null ? Nothing : Nothing.Add(Clamps, wait.Clamps));
        var dries = step.Phase is WorkPhase.Finish or WorkPhase.FinishBefore && hands.Drying is not null;
        return (wait.Minutes, dries ? Nothing.Add(Drying, 1) : Nothing);
    }

    // Null where nothing holds any longer.
    private ScheduleTask? Curing(WorkStepView step)
    {
        if (step is not { DoneUtc: { } done, Step.Wait: { } wait })
            return null;
        var end = clock.MinuteOf(Instant.FromDateTimeUtc(DateTime.SpecifyKind(done, DateTimeKind.Utc)));
        if (end + wait.Minutes <= 0)
            return null;
        var open = Open(step);
        return open with
        {
            LaborUses = Nothing,
            HoldUses = end + open.Hold > 0 ? open.HoldUses : Nothing,
            Fixed = new FixedLabor(end - step.Step.Minutes, end),
        };
    }

    private void Follow(WorkStepView step)
    {
        var before = step.Step.After.SelectMany(id => Before(id, [])).Distinct(StringComparer.Ordinal).ToList();
        foreach (var id in before)
            Precedences.Add(new Precedence(Id(id), Id(step.Step.Id), RestOfWait(steps[id].Step)));
        if (before.Count == 0 && IsCutting)
            Precedences.Add(new Precedence(CutId, Id(step.Step.Id), 0));
    }

    // What is left out hands on what it waits for itself.
    private IEnumerable<string> Before(string id, HashSet<string> seen)
    {
        if (!steps.TryGetValue(id, out var step) || !seen.Add(id))
            return [];
        return step.Mark switch
        {
            StepMark.Open => [id],
            StepMark.Done => Curing(step) is null ? [] : [id],
            _ => step.Step.After.SelectMany(one => Before(one, seen)),
        };
    }

    private int RestOfWait(WorkStep step) => step.Wait is { } wait ? Math.Max(0, wait.Minutes - Hold(step).Hold) : 0;
}
