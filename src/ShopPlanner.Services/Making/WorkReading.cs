using System.Collections.Concurrent;
using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Making;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Making;

/// <summary>Works out the work of projects as their designs stand. What was worked out last is kept: a mark need not do it
/// again.</summary>
internal sealed class WorkReading
{
    private const int Most = 64;

    private readonly ConcurrentDictionary<Guid, Kept> kept = [];

    /// <summary>Returns a project's work with what its builder did; null where the project is gone.</summary>
    public async Task<WorkView?> ViewAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (!await db.Projects.AnyAsync(one => one.Id == projectId, cancel))
            return null;
        var row = await db.Works.SingleOrDefaultAsync(one => one.ProjectId == projectId, cancel);
        var document = row is null ? WorkDocument.Empty : WorkDocument.Read(row.Document);
        var planned = await PlanAsync(db, projectId, document.Choices, cancel);
        var (undo, redo) = await WorkJournal.EndsAsync(db, projectId, cancel);
        return new WorkComposing(planned, document).View(projectId, row?.Version ?? 0) with
        {
            Undo = undo?.Title,
            Redo = redo?.Title,
        };
    }

    /// <summary>Returns a project's work as it is worked out, without its builder's hand.</summary>
    public async Task<PlannedWork> PlanAsync(ShopContext db, Guid projectId, StoredChoices choices, CancellationToken cancel)
    {
        var idea = await db.Ideas.AsNoTracking().SingleOrDefaultAsync(one => one.ProjectId == projectId, cancel);
        return idea is null ? await OfRowsAsync(db, projectId, choices, cancel) : OfIdea(idea, choices);
    }

    private PlannedWork OfIdea(StoredIdea row, StoredChoices choices)
    {
        var key = ShopJson.Write(choices);
        if (kept.TryGetValue(row.ProjectId, out var known) && known.IsOf(row, key))
            return known.Work;
        var idea = IdeaService.Idea(row);
        var piece = DesignEvaluator.Evaluate(idea.Document, idea.Changed).Piece;
        var work = piece is null
            ? new PlannedWork(WorkBasis.FaultyDesign, idea.Document.Unit, null, null)
            : new PlannedWork(WorkBasis.Design, piece.Unit, piece, WorkPlanner.Of(piece, choices.ToChoices()))
            {
                Names = piece.Parts.ToImmutableDictionary(part => part.Id, part => part.Name),
            };
        if (kept.Count >= Most)
            kept.Clear();
        kept[row.ProjectId] = new(row.Document, row.Changed, key, work);
        return work;
    }

    private static async Task<PlannedWork> OfRowsAsync(
        ShopContext db,
        Guid projectId,
        StoredChoices choices,
        CancellationToken cancel
    )
    {
        var project = await db.Projects.AsNoTracking().SingleAsync(one => one.Id == projectId, cancel);
        var sheet = (await PartRows.SheetAsync(db, projectId, cancel))!;
        var materials = await MaterialIndex.LoadAsync(db, cancel);
        return ListedWork.Of(project.Name, project.Unit, sheet.Rows, materials, choices.ToChoices());
    }

    private sealed record Kept(string Document, string Changed, string Choices, PlannedWork Work)
    {
        public bool IsOf(StoredIdea row, string choices) =>
            Document == row.Document && Changed == row.Changed && Choices == choices;
    }
}
