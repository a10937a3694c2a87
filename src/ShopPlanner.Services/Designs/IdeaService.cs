using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Designs;

internal sealed class IdeaService(ShopWork work, ShopCommands commands, IDesignService designs, TimeProvider clock) : IIdeaService
{
    public Task<IdeaView?> GetAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync(db => FindAsync(db, projectId, cancel), cancel);

    public Task<Outcome<ProjectView>> BeginAsync(
        string designKey,
        string name,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            ProjectService.Begin(
                command,
                CommandTexts.Asked("piece", designKey, name),
                db => BeginAsync(db, designKey, name, cancel),
                cancel
            ),
            cancel
        );

    public Task<Outcome<IdeaView>> StartAsync(
        Guid projectId,
        string designKey,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            new Making<IdeaView>(command, CommandTexts.Asked("idea", projectId, designKey))
            {
                Make = db => StartAsync(db, projectId, designKey, cancel),
                Made = idea => CommandTexts.Text(idea.ProjectId),
                Find = (db, made) => FindAsync(db, Guid.Parse(made), cancel),
                What = "idea",
            },
            cancel
        );

    public async Task<Outcome<IdeaView>> SaveAsync(
        Guid projectId,
        Idea idea,
        int version,
        string title,
        CancellationToken cancel = default
    )
    {
        var faults = idea
            .Changed.Select(pair => TextRules.Line(pair.Key, pair.Value, TextRules.CellCharacters))
            .OfType<Fault>()
            .ToList();
        return faults.Count > 0
            ? Outcome.Faulty<IdeaView>(faults)
            : await work.WriteAsync(db => SaveAsync(db, projectId, idea, version, title, cancel), cancel);
    }

    public Task<Outcome<IdeaView>> UndoAsync(Guid projectId, int version, CancellationToken cancel = default) =>
        work.WriteAsync(db => MoveAsync(db, projectId, version, true, cancel), cancel);

    public Task<Outcome<IdeaView>> RedoAsync(Guid projectId, int version, CancellationToken cancel = default) =>
        work.WriteAsync(db => MoveAsync(db, projectId, version, false, cancel), cancel);

    public Task<PartsUpdate?> CompareAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync(db => PartMaking.CompareAsync(db, projectId, cancel), cancel);

    public Task<Outcome<MadeParts>> MakePartsAsync(
        Guid projectId,
        bool mayLetter,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.RunAsync(
            new Making<MadeParts>(command, CommandTexts.Asked("parts", projectId, mayLetter))
            {
                Make = db => PartMaking.RunAsync(db, projectId, mayLetter, cancel),
                Made = MadePartsNote.Write,
                Find = (db, made) => MadePartsNote.FindAsync(db, projectId, made, cancel),
                What = "project",
            },
            cancel
        );

    private async Task<Outcome<ProjectView>> BeginAsync(ShopContext db, string designKey, string name, CancellationToken cancel)
    {
        if (await designs.GetAsync(designKey, cancel) is not { } design)
            return Outcome.Missing<ProjectView>("design");
        var called = string.IsNullOrWhiteSpace(name) ? design.Document.Name : name;
        if (TextRules.Name(nameof(ProjectView.Name), called) is { } fault)
            return Outcome.Faulty<ProjectView>(fault);
        var project = await ProjectService.AddAsync(db, called, design.Document.Unit, clock, cancel);
        db.Ideas.Add(Row(project.Id, await ShopSizes.TakeAsync(db, design.Document, cancel)));
        await db.SaveChangesAsync(cancel);
        return (await ProjectService.ViewAsync(db, project.Id, cancel))!;
    }

    private async Task<Outcome<IdeaView>> StartAsync(ShopContext db, Guid projectId, string designKey, CancellationToken cancel)
    {
        if (await designs.GetAsync(designKey, cancel) is not { } design)
            return Outcome.Missing<IdeaView>("design");
        if (await db.Projects.FindAsync([projectId], cancel) is null)
            return Outcome.Missing<IdeaView>("project");
        var document = await ShopSizes.TakeAsync(db, design.Document, cancel);
        var row = await db.Ideas.FindAsync([projectId], cancel);
        if (row is null)
            row = db.Ideas.Add(Row(projectId, document)).Entity;
        else
            await IdeaJournal.ChangeAsync(
                db,
                row,
                (DesignJson.Write(document), "{}"),
                $"start from {document.Name.ToLowerInvariant()}",
                Now,
                cancel
            );
        await db.SaveChangesAsync(cancel);
        return await ViewAsync(db, row, cancel);
    }

    private async Task<Outcome<IdeaView>> SaveAsync(
        ShopContext db,
        Guid projectId,
        Idea idea,
        int version,
        string title,
        CancellationToken cancel
    )
    {
        if (await FindRowAsync(db, projectId, cancel) is not { } row)
            return Outcome.Missing<IdeaView>("idea");
        if (row.Version != version)
            return Changed();
        await IdeaJournal.ChangeAsync(
            db,
            row,
            (DesignJson.Write(idea.Document), TextsDocument.Write(idea.Changed)),
            title,
            Now,
            cancel
        );
        await db.SaveChangesAsync(cancel);
        return await ViewAsync(db, row, cancel);
    }

    private static async Task<Outcome<IdeaView>> MoveAsync(
        ShopContext db,
        Guid projectId,
        int version,
        bool undo,
        CancellationToken cancel
    )
    {
        if (await FindRowAsync(db, projectId, cancel) is not { } row)
            return Outcome.Missing<IdeaView>("idea");
        if (row.Version != version)
            return Changed();
        var (last, next) = await IdeaJournal.EndsAsync(db, projectId, cancel);
        var verb = undo ? "undo" : "redo";
        if ((undo ? last : next) is not { } step)
            return Outcome.Faulty<IdeaView>(new Fault(verb, "", $"has nothing to {verb}"));
        (row.Document, row.Changed) = undo ? (step.DocumentBefore, step.ChangedBefore) : (step.DocumentAfter, step.ChangedAfter);
        // A change that follows is a step of its own, though it has the same title.
        (step.Undone, step.WhenUtc) = (undo, DateTime.UnixEpoch);
        await db.SaveChangesAsync(cancel);
        return await ViewAsync(db, row, cancel);
    }

    private DateTime Now => clock.GetUtcNow().UtcDateTime;

    private static Outcome<IdeaView> Changed() =>
        Outcome.Conflict<IdeaView>(
            new Fault("idea", "", "was changed on another device: the page shows the design as it is now")
        );

    /// <summary>Returns the row of an idea that begins with a design.</summary>
    internal static StoredIdea Row(Guid projectId, DesignDocument document) =>
        new()
        {
            ProjectId = projectId,
            Document = DesignJson.Write(document),
            Changed = TextsDocument.Write(ImmutableSortedDictionary<string, string>.Empty),
            Made = MadeRowsDocument.Write([]),
        };

    private static async Task<IdeaView?> FindAsync(ShopContext db, Guid projectId, CancellationToken cancel) =>
        await FindRowAsync(db, projectId, cancel) is { } row ? await ViewAsync(db, row, cancel) : null;

    // The idea of a project in the trash rests there with it.
    private static Task<StoredIdea?> FindRowAsync(ShopContext db, Guid projectId, CancellationToken cancel) =>
        db.Ideas.SingleOrDefaultAsync(
            idea => idea.ProjectId == projectId && db.Projects.Any(project => project.Id == projectId),
            cancel
        );

    private static async Task<IdeaView> ViewAsync(ShopContext db, StoredIdea row, CancellationToken cancel)
    {
        var (undo, redo) = await IdeaJournal.EndsAsync(db, row.ProjectId, cancel);
        return new(row.ProjectId, Idea(row), row.Version, undo?.Title, redo?.Title);
    }

    internal static Idea Idea(StoredIdea row) => new(Documents.Read(row.Document), TextsDocument.Read(row.Changed));
}
