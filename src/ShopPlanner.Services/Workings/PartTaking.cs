using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Workings;

internal sealed class PartTaking(ShopWork work) : IPartTaking
{
    public Task<ProjectParts?> TakeAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync(db => TakeAsync(db, projectId, cancel), cancel);

    private static async Task<ProjectParts?> TakeAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (await db.Projects.SingleOrDefaultAsync(one => one.Id == projectId, cancel) is not { } project)
            return null;
        var sheet = (await PartRows.SheetAsync(db, projectId, cancel))!;
        var rows = new RowParts(sheet.Rows, sheet.Unit, await MaterialIndex.LoadAsync(db, cancel));
        return new(projectId, project.Name, project.Unit, rows.With(await PieceAsync(db, projectId, cancel)));
    }

    // Null where the project has no design, or one that cannot be worked out.
    private static async Task<Piece?> PieceAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (await db.Ideas.SingleOrDefaultAsync(one => one.ProjectId == projectId, cancel) is not { } row)
            return null;
        var idea = IdeaService.Idea(row);
        return DesignEvaluator.Evaluate(idea.Document, idea.Changed).Piece;
    }
}
