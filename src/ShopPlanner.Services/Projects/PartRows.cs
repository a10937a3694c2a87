using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

/// <summary>A project's rows as stored and what they mean today.</summary>
internal static class PartRows
{
    public static IQueryable<StoredPart> Of(ShopContext db, Guid projectId) =>
        db.Parts.Where(part => part.ProjectId == projectId).OrderBy(part => part.Position).ThenBy(part => part.Id);

    /// <summary>Null when the project is gone.</summary>
    public static async Task<PartSheet?> SheetAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (await db.Projects.AsNoTracking().SingleOrDefaultAsync(p => p.Id == projectId, cancel) is not { } project)
            return null;
        var rows = Read(
            project,
            await Of(db, projectId).AsNoTracking().ToListAsync(cancel),
            await MaterialIndex.LoadAsync(db, cancel)
        );
        var (undo, redo) = await PartJournal.EndsAsync(db, projectId, cancel);
        return new PartSheet(projectId, project.Unit, rows, undo?.Title, redo?.Title)
        {
            UndoStep = undo?.Id,
            RedoStep = redo?.Id,
        };
    }

    public static ImmutableArray<PartRow> Read(StoredProject project, IReadOnlyList<StoredPart> stored, MaterialIndex materials)
    {
        var texts = stored.Select(part => part.Texts).ToList();
        var reader = new PartReader(project.Unit, materials, PartReader.Doubled(texts));
        return
        [
            .. stored.Zip(
                texts,
                (part, text) =>
                {
                    var (meaning, materialName, practice, faults) = reader.Read(text);
                    return new PartRow(text, meaning, materialName, faults, part.Version) { Practice = practice };
                }
            ),
        ];
    }
}
