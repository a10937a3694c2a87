using System.Collections.Immutable;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Services.Making.Stored;

namespace ShopPlanner.Services.Making;

/// <summary>The work as it is worked out and the builder's hand, put together.</summary>
internal sealed class WorkComposing(PlannedWork planned, WorkDocument document)
{
    private const int OwnMinutes = 0;

    /// <summary>All steps, the builder's own among them, in the order that she wants.</summary>
    public ImmutableArray<WorkStep> Line { get; } =
        WorkOrder.Arrange([.. planned.Plan?.Steps ?? [], .. document.Own.Select(Own)], document.Order);

    /// <summary>Returns the whole.</summary>
    public WorkView View(Guid projectId, int version) =>
        new(projectId, planned.Basis, planned.Unit, [.. Line.Select(Step)], version)
        {
            Piece = planned.Piece,
            Names = planned.Names,
            Choices = document.Choices.ToChoices(),
            Subassemblies = planned.Plan?.Subassemblies ?? [],
            Finish = planned.Plan?.Finish,
            IsFinishListed = IsListed(planned.Plan?.Finish),
            Findings = planned.Plan?.Findings ?? [],
            // Of a design with errors no step is known: none of them is gone.
            Lost = planned.Basis == WorkBasis.FaultyDesign ? [] : Lost(),
        };

    /// <summary>What a step says as planned: its title, then its lines.</summary>
    public ImmutableArray<string> Says(WorkStep step) => [step.Title, .. StepWords.Lines(step, planned.Unit)];

    private static WorkStep Own(OwnStep own) =>
        new(
            own.Id,
            own.IsFinish ? WorkPhase.Finish : WorkPhase.Assembly,
            own.IsFinish ? WorkAction.Coat : WorkAction.Join,
            own.Title,
            own.Says,
            [],
            [],
            OwnMinutes
        );

    private WorkStepView Step(WorkStep step)
    {
        var kept = document.Of(step.Id);
        var mark = Mark(kept);
        return new(step, Title(step), Words(step), mark)
        {
            DoneUtc = kept.DoneUtc,
            IsChangedSinceDone = mark == StepMark.Done && !kept.DoneAs.SequenceEqual(Says(step)),
            DoneAs = [.. kept.DoneAs.Except(Says(step))],
            WrittenFor = kept.Words is { } words && !words.Instead.SequenceEqual(Says(step)) ? words.Instead : [],
            IsEdited = kept.Words is not null,
            IsOwn = IsOwn(step.Id),
            Note = kept.Note,
            Took = kept.Took?.Text ?? "",
            WaitsFor = mark == StepMark.Open ? [.. Line.Where(one => IsOpenBefore(one, step)).Select(Title)] : [],
            Openings = OpeningReading.Of(planned, step, kept.Measured),
        };
    }

    private bool IsOpenBefore(WorkStep one, WorkStep step) =>
        step.After.Contains(one.Id) && Mark(document.Of(one.Id)) == StepMark.Open;

    private bool IsOwn(string id) => document.Own.Any(own => own.Id == id);

    /// <summary>A step's title in force.</summary>
    public string Title(WorkStep step) => document.Of(step.Id).Words is { Title.Length: > 0 } words ? words.Title : step.Title;

    private ImmutableArray<string> Words(WorkStep step) =>
        document.Of(step.Id).Words is { Says.IsEmpty: false } words ? words.Says : step.Says;

    private ImmutableArray<LostStep> Lost()
    {
        var there = Line.Select(step => step.Id).ToHashSet(StringComparer.Ordinal);
        return [.. document.Steps.Where(kept => !there.Contains(kept.Id)).Select(Lost)];
    }

    private static LostStep Lost(StoredStep kept)
    {
        string[] lines =
        [
            kept.Words?.Title ?? "",
            .. kept.Words?.Says ?? [],
            kept.Note,
            .. kept.Measured.Select(one => $"Opening, {one.Key}: {one.Value}"),
            kept.Took is { } took ? $"Time it took: {took.Text}" : "",
        ];
        return new(kept.Id, kept.Title, Mark(kept), [.. lines.Where(line => line.Length > 0)]);
    }

    private static StepMark Mark(StoredStep kept) =>
        kept.IsSkipped ? StepMark.Skipped
        : kept.DoneUtc is null ? StepMark.Open
        : StepMark.Done;

    private bool IsListed(FinishAmounts? finish) =>
        finish is { Buy.IsEmpty: false } && finish.Buy.All(item => document.ListedOf(item.Name) == FinishListing.Amount(item));
}
