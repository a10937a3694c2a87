using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

/// <summary>Takes a step of a parts list back, or does it again, as long as its rows are as it left them.</summary>
internal static class PartUndo
{
    public static async Task<Outcome<PartSheet>> UndoAsync(
        ShopContext db,
        Guid projectId,
        Guid? expected,
        CancellationToken cancel
    )
    {
        var (step, _) = await PartJournal.EndsAsync(db, projectId, cancel);
        return await MoveAsync(db, projectId, step, expected, undo: true, cancel);
    }

    public static async Task<Outcome<PartSheet>> RedoAsync(
        ShopContext db,
        Guid projectId,
        Guid? expected,
        CancellationToken cancel
    )
    {
        var (_, step) = await PartJournal.EndsAsync(db, projectId, cancel);
        return await MoveAsync(db, projectId, step, expected, undo: false, cancel);
    }

    private static async Task<Outcome<PartSheet>> MoveAsync(
        ShopContext db,
        Guid projectId,
        StoredPartStep? step,
        Guid? expected,
        bool undo,
        CancellationToken cancel
    )
    {
        if (!await db.Projects.AnyAsync(project => project.Id == projectId, cancel))
            return Outcome.Missing<PartSheet>("project");
        var verb = undo ? "undo" : "redo";
        if (expected is not null && expected != step?.Id)
            return Outcome.Conflict<PartSheet>(
                new Fault(verb, step?.Title ?? "", "is the last step now: another device changed the list")
            );
        if (step is null)
            return Outcome.Faulty<PartSheet>(new Fault(verb, "", $"has nothing left to {verb}"));
        var (from, to) = undo ? (step.After, step.Before) : (step.Before, step.After);
        var outcome = await ReplaceAsync(db, projectId, PartRowsDocument.Read(from), PartRowsDocument.Read(to), cancel);
        if (outcome is not null)
            return Outcome.Conflict<PartSheet>(outcome);
        step.Undone = undo;
        await db.SaveChangesAsync(cancel);
        return (await PartRows.SheetAsync(db, projectId, cancel))!;
    }

    // Null when done; else what stands in the way.
    private static async Task<Fault?> ReplaceAsync(
        ShopContext db,
        Guid projectId,
        List<PartMoment> from,
        List<PartMoment> to,
        CancellationToken cancel
    )
    {
        var stored = await PartRows.Of(db, projectId).ToDictionaryAsync(part => part.Id, cancel);
        var expected = from.ToDictionary(moment => moment.Texts.Id);
        var touched = expected.Keys.Union(to.Select(moment => moment.Texts.Id)).ToList();
        foreach (var id in touched)
            if (stored.GetValueOrDefault(id)?.Texts != expected.GetValueOrDefault(id)?.Texts)
                return Changed(stored.GetValueOrDefault(id), expected.GetValueOrDefault(id));
        foreach (var id in touched)
            Put(db, projectId, stored.GetValueOrDefault(id), to.Find(moment => moment.Texts.Id == id));
        return null;
    }

    private static void Put(ShopContext db, Guid projectId, StoredPart? stored, PartMoment? wanted)
    {
        if (wanted is null)
        {
            db.Parts.Remove(stored!);
            return;
        }

        // A row that comes back counts on from where it was, so that an old version is never taken for the new one.
        var row =
            stored
            ?? db.Parts.Add(
                new StoredPart
                {
                    Id = wanted.Texts.Id,
                    ProjectId = projectId,
                    Version = wanted.Version + 1,
                }
            ).Entity;
        row.Take(wanted.Texts);
        row.Position = wanted.Position;
    }

    private static Fault Changed(StoredPart? stored, PartMoment? expected)
    {
        var mark = stored?.Mark ?? expected?.Texts.Mark ?? "";
        return Fault.Of(
            mark,
            stored is null ? "" : $"{stored.Name} {stored.Length}".Trim(),
            stored is null ? "was deleted on another device" : "was changed on another device"
        );
    }
}
