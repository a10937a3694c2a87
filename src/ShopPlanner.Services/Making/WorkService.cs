using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Making;

internal sealed class WorkService(
    ShopWork work,
    ShopCommands commands,
    WorkReading reading,
    WorkChanging changing,
    FinishListing listing,
    TimeProvider clock
) : IWorkService
{
    public Task<WorkView?> GetAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync(db => reading.ViewAsync(db, projectId, cancel), cancel);

    public Task<Outcome<WorkView>> MarkAsync(
        Guid projectId,
        string stepId,
        StepMark mark,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        SayAsync(
            "mark",
            (projectId, stepId, mark),
            hand => hand.Mark(stepId, mark, clock.GetUtcNow().UtcDateTime),
            command,
            cancel
        );

    public Task<Outcome<WorkView>> NoteAsync(
        Guid projectId,
        string stepId,
        string note,
        CommandId command,
        CancellationToken cancel = default
    ) => SayAsync("note", (projectId, stepId, note), hand => hand.Note(stepId, note), command, cancel);

    public Task<Outcome<WorkView>> TookAsync(
        Guid projectId,
        string stepId,
        string took,
        CommandId command,
        CancellationToken cancel = default
    ) => SayAsync("took", (projectId, stepId, took), hand => hand.Took(stepId, took), command, cancel);

    public Task<Outcome<WorkView>> AddCuttingTimeAsync(
        Guid projectId,
        string took,
        int cutSoFar,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            projectId,
            command,
            CommandTexts.Asked("cutting time", projectId, took, cutSoFar),
            hand => hand.AddSession(new WorkSession(Id(command), took, cutSoFar, clock.GetUtcNow().UtcDateTime)),
            cancel
        );

    public Task<ImmutableArray<WorkLog>> LogsAsync(CancellationToken cancel = default) =>
        work.ReadAsync(db => WorkLogs.ReadAsync(db, cancel), cancel);

    public Task<Outcome<WorkView>> MoveAsync(
        Guid projectId,
        string stepId,
        WorkPage page,
        bool up,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            projectId,
            command,
            CommandTexts.Asked("move step", projectId, stepId, page, up),
            hand => hand.Move(stepId, page, up),
            cancel
        );

    public Task<Outcome<WorkView>> AddStepAsync(
        Guid projectId,
        WorkPage page,
        string title,
        string says,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        RunAsync(
            projectId,
            command,
            CommandTexts.Asked("new step", projectId, page, title, says),
            hand => hand.Add("own:" + Id(command), page, title, says),
            cancel
        );

    public Task<Outcome<WorkView>> RemoveAsync(Guid projectId, string stepId, CancellationToken cancel = default) =>
        work.WriteAsync(db => changing.ChangeAsync(db, projectId, null, hand => hand.Remove(stepId), cancel), cancel);

    public Task<StepTexts?> TextsAsync(Guid projectId, string stepId, CancellationToken cancel = default) =>
        work.ReadAsync(
            async db =>
                await reading.ViewAsync(db, projectId, cancel) is { } view
                && view.Steps.FirstOrDefault(one => one.Step.Id == stepId) is { } step
                    ? StepTextReader.Write(projectId, step, view.Version)
                    : null,
            cancel
        );

    public Task<Outcome<StepTexts>> SaveTextsAsync(StepTexts texts, CancellationToken cancel = default) =>
        work.WriteAsync(
            async db =>
            {
                var outcome = await changing.ChangeAsync(db, texts.ProjectId, texts.Version, hand => hand.Write(texts), cancel);
                return outcome.Value is { } view
                    ? StepTextReader.Write(texts.ProjectId, view.Steps.Single(one => one.Step.Id == texts.StepId), view.Version)
                    : new Outcome<StepTexts>(outcome.Kind, null, outcome.Faults);
            },
            cancel
        );

    public Task<ChoiceTexts?> ChoicesAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync(
            async db =>
                await reading.ViewAsync(db, projectId, cancel) is { } view
                    ? ChoiceReader.Write(projectId, view.Choices, view.Version)
                    : null,
            cancel
        );

    public async Task<Outcome<ChoiceTexts>> SaveChoicesAsync(ChoiceTexts texts, CancellationToken cancel = default)
    {
        var reader = new ChoiceReader(texts);
        var choices = reader.Read();
        if (reader.Faults.Count > 0)
            return Outcome.Faulty<ChoiceTexts>(reader.Faults);
        return await work.WriteAsync(
            async db =>
            {
                var outcome = await changing.ChangeAsync(
                    db,
                    texts.ProjectId,
                    texts.Version,
                    hand => WorkHand.Changed(hand.Document with { Choices = choices }, "choices"),
                    cancel
                );
                return outcome.Value is { } view
                    ? ChoiceReader.Write(texts.ProjectId, view.Choices, view.Version)
                    : new Outcome<ChoiceTexts>(outcome.Kind, null, outcome.Faults);
            },
            cancel
        );
    }

    public Task<Outcome<WorkView>> ListFinishAsync(
        Guid projectId,
        string device,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            Command(
                projectId,
                command,
                CommandTexts.Asked("list finish", projectId),
                db => changing.ChangeAsync(db, projectId, null, hand => ListAsync(db, projectId, hand, device, cancel), cancel),
                cancel
            ),
            cancel
        );

    public Task<Outcome<WorkView>> UndoAsync(Guid projectId, int version, CancellationToken cancel = default) =>
        work.WriteAsync(db => changing.StepAsync(db, projectId, version, true, cancel), cancel);

    public Task<Outcome<WorkView>> RedoAsync(Guid projectId, int version, CancellationToken cancel = default) =>
        work.WriteAsync(db => changing.StepAsync(db, projectId, version, false, cancel), cancel);

    // One thing about a step; of two that come out of order the later one holds.
    private Task<Outcome<WorkView>> SayAsync(
        string what,
        (Guid Project, string Step, object Said) of,
        Func<WorkHand, Outcome<HandChange>> say,
        CommandId command,
        CancellationToken cancel
    ) =>
        RunAsync(
            of.Project,
            command,
            CommandTexts.Asked(what, of.Project, of.Step, of.Said),
            say,
            cancel,
            CommandTexts.Asked(what, of.Project, of.Step)
        );

    private static string Id(CommandId command) => command.Value.ToString("N", CultureInfo.InvariantCulture);

    private async Task<Outcome<HandChange>> ListAsync(
        ShopContext db,
        Guid projectId,
        WorkHand hand,
        string device,
        CancellationToken cancel
    )
    {
        if (hand.Finish is not { Buy.IsEmpty: false } finish)
            return Outcome.Faulty<HandChange>(Fault.Of("finish", "", "takes nothing that is bought"));
        var outcome = await listing.AddAsync(db, projectId, (hand.Document, finish), device, cancel);
        return outcome.Value is { } document
            ? WorkHand.Changed(document, "finish on the shopping list")
            : new Outcome<HandChange>(outcome.Kind, null, outcome.Faults);
    }

    private Task<Outcome<WorkView>> RunAsync(
        Guid projectId,
        CommandId command,
        string asked,
        Func<WorkHand, Outcome<HandChange>> change,
        CancellationToken cancel,
        string? subject = null
    ) =>
        commands.RunAsync(
            Command(projectId, command, asked, db => changing.ChangeAsync(db, projectId, null, change, cancel), cancel) with
            {
                Subject = subject,
            },
            cancel
        );

    private Making<WorkView> Command(
        Guid projectId,
        CommandId command,
        string asked,
        Func<ShopContext, Task<Outcome<WorkView>>> make,
        CancellationToken cancel
    ) =>
        new(command, asked)
        {
            Make = make,
            Made = view => CommandTexts.Text(view.ProjectId),
            Find = (db, _) => reading.ViewAsync(db, projectId, cancel),
            What = "project",
        };
}
