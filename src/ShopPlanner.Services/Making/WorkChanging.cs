using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Making;

/// <summary>Changes a project's work in the database, each change with a step to take it back.</summary>
internal sealed class WorkChanging(WorkReading reading)
{
    /// <summary>Does something to the builder's hand.</summary>
    /// <param name="db">The database.</param>
    /// <param name="projectId">The project.</param>
    /// <param name="version">With which it was read; null where any will do.</param>
    /// <param name="change">Returns what becomes of it, or why not.</param>
    /// <param name="cancel">Stops asking.</param>
    public Task<Outcome<WorkView>> ChangeAsync(
        ShopContext db,
        Guid projectId,
        int? version,
        Func<WorkHand, Outcome<HandChange>> change,
        CancellationToken cancel
    ) => ChangeAsync(db, projectId, version, hand => Task.FromResult(change(hand)), cancel);

    /// <summary>Does something to the builder's hand that changes more of the database than that.</summary>
    public async Task<Outcome<WorkView>> ChangeAsync(
        ShopContext db,
        Guid projectId,
        int? version,
        Func<WorkHand, Task<Outcome<HandChange>>> change,
        CancellationToken cancel
    )
    {
        if (!await db.Projects.AnyAsync(one => one.Id == projectId, cancel))
            return Outcome.Missing<WorkView>("project");
        var row = await db.Works.FindAsync([projectId], cancel);
        if (version is { } read && read != (row?.Version ?? 0))
            return Changed();
        var document = row is null ? WorkDocument.Empty : WorkDocument.Read(row.Document);
        var planned = await reading.PlanAsync(db, projectId, document.Choices, cancel);
        var outcome = await change(new WorkHand(planned, document));
        if (outcome.Value is not { } made)
            return new Outcome<WorkView>(outcome.Kind, null, outcome.Faults);
        await WorkJournal.ChangeAsync(db, projectId, made.Document, made.Title, cancel);
        return (await reading.ViewAsync(db, projectId, cancel))!;
    }

    /// <summary>Takes the last change back, or does it again.</summary>
    public async Task<Outcome<WorkView>> StepAsync(
        ShopContext db,
        Guid projectId,
        int version,
        bool undo,
        CancellationToken cancel
    )
    {
        if (
            !await db.Projects.AnyAsync(one => one.Id == projectId, cancel)
            || await db.Works.FindAsync([projectId], cancel) is not { } row
        )
            return Outcome.Missing<WorkView>("work");
        if (row.Version != version)
            return Changed();
        var (last, next) = await WorkJournal.EndsAsync(db, projectId, cancel);
        var verb = undo ? "undo" : "redo";
        if ((undo ? last : next) is not { } step)
            return Outcome.Faulty<WorkView>(new Fault(verb, "", $"has nothing to {verb}"));
        row.Document = undo ? step.Before : step.After;
        step.Undone = undo;
        await db.SaveChangesAsync(cancel);
        return (await reading.ViewAsync(db, projectId, cancel))!;
    }

    private static Outcome<WorkView> Changed() =>
        Outcome.Conflict<WorkView>(
            new Fault("work", "", "was changed on another device: the page shows the steps as they are now")
        );
}
