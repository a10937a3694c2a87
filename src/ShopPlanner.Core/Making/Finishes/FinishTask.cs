using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>When a lot is finished.</summary>
internal enum FinishStage
{
    /// <summary>Single parts are made ready.</summary>
    Parts,

    /// <summary>Before assembly, what can't be reached after it.</summary>
    Before,

    /// <summary>After assembly, the rest.</summary>
    After,
}

/// <summary>Copies that are finished together.</summary>
/// <param name="Id">Begins the ids of its steps: <c>piece</c>, <c>before</c>.</param>
/// <param name="Told">Ends the titles of its steps, after a comma; empty for the piece.</param>
/// <param name="Stage">When.</param>
/// <param name="Recipe">What they get.</param>
/// <param name="Surfaces">Their surfaces.</param>
internal sealed record FinishLot(
    string Id,
    string Told,
    FinishStage Stage,
    FinishRecipe Recipe,
    ImmutableArray<FinishSurface> Surfaces
)
{
    public bool IsEmpty => Surfaces.IsEmpty;

    public WorkPhase Phase => Stage == FinishStage.After ? WorkPhase.Finish : WorkPhase.FinishBefore;

    /// <summary>What of a copy is finished in it.</summary>
    public Area Of(FinishSurface surface) =>
        Stage switch
        {
            FinishStage.Parts => surface.Area,
            FinishStage.Before => surface.Early,
            _ => surface.Late,
        };
}

/// <summary>One thing to do with a lot.</summary>
/// <param name="Action">What is done.</param>
/// <param name="What">Ends the id of the step: <c>stain</c>, <c>coat:first</c>.</param>
/// <param name="Title">A few words.</param>
/// <param name="Says">What to do.</param>
/// <param name="Pace">How long it takes.</param>
internal sealed record FinishTask(WorkAction Action, string What, string Title, ImmutableArray<string> Says, FinishPace Pace)
{
    /// <summary>On which copies; null for all of the lot.</summary>
    public Func<FinishSurface, bool>? On { get; init; }

    public WorkWait? Wait { get; init; }

    public ImmutableArray<Caution> Cautions { get; init; } = [];

    public SourceNote? Source { get; init; }

    public string? Tool { get; init; }
}

/// <summary>Time at work (common practice: an estimate).</summary>
/// <param name="Start">Minutes to set out and clean up.</param>
/// <param name="PerFoot">Minutes for a square foot.</param>
internal sealed record FinishPace(double Start, double PerFoot)
{
    public static readonly FinishPace None = new(0, 0);
    public static readonly FinishPace Wipe = new(5, 0.1);
    public static readonly FinishPace Spots = new(10, 0.1);
    public static readonly FinishPace Edges = new(15, 0.3);
    public static readonly FinishPace Coat = new(15, 1.2);

    private const int Step = 5;

    public static FinishPace Sand(int grits) => new(5 * grits, 0.6 * grits);

    /// <summary>Minutes for an area, in steps of five.</summary>
    public int Minutes(Area area) => (int)Math.Ceiling((Start + (PerFoot * (double)area.ToSquareFeet())) / Step) * Step;
}

/// <summary>Steps one after the other, each after the one before it.</summary>
/// <param name="lot">What they are done with.</param>
/// <param name="after">Ids of what comes before the first.</param>
internal sealed class StepChain(FinishLot lot, ImmutableArray<string> after)
{
    private readonly ImmutableArray<WorkStep>.Builder steps = ImmutableArray.CreateBuilder<WorkStep>();

    public FinishLot Lot => lot;

    public ImmutableArray<WorkStep> Steps => steps.ToImmutable();

    /// <summary>Ids of what the next step comes after.</summary>
    public ImmutableArray<string> Last => steps.Count == 0 ? after : [steps[^1].Id];

    /// <summary>Adds a step; none where no copy of the lot needs it.</summary>
    public void Add(FinishTask task)
    {
        var on = lot.Surfaces.Where(task.On ?? (_ => true)).ToList();
        if (on.Count == 0)
            return;
        var area = on.Aggregate(Area.Zero, (sum, one) => sum + lot.Of(one));
        steps.Add(
            new(
                $"finish:{lot.Id}:{task.What}",
                lot.Phase,
                task.Action,
                lot.Told.Length == 0 ? task.Title : $"{task.Title}, {lot.Told}",
                task.Says,
                [.. on.Select(one => one.Mark)],
                Last,
                task.Pace.Minutes(area)
            )
            {
                Wait = task.Wait,
                Cautions = task.Cautions,
                Source = task.Source,
                Tool = task.Tool,
                Face = lot.Stage == FinishStage.Before ? "faces that can't be reached after assembly" : null,
            }
        );
    }
}
