using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Workings;

internal sealed class WorkingService(ShopWork work, ShopCommands commands, TimeProvider clock) : IWorkingService
{
    public Task<IReadOnlyList<KeptWorking>> ListAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync<IReadOnlyList<KeptWorking>>(
            async db =>
            {
                var latest = Of(db, projectId).OrderByDescending(row => row.KeptUtc).ThenByDescending(row => row.Id);
                return [.. (await latest.ToListAsync(cancel)).Select(View)];
            },
            cancel
        );

    public async Task<Outcome<KeptUse>> KeepAsync(
        Guid projectId,
        string form,
        IReadOnlyDictionary<string, string> given,
        LengthUnit unit,
        CommandId command,
        CancellationToken cancel = default
    )
    {
        if (!WorkingForms.TryFind(form, out var found))
            return Outcome.Faulty<KeptUse>(Fault.Of("form", form, "isn't a calculator"));
        var texts = given
            .Where(pair => !string.IsNullOrWhiteSpace(pair.Value))
            .ToImmutableSortedDictionary(StringComparer.Ordinal);
        var faults = texts
            .Select(pair => TextRules.Line(pair.Key, pair.Value, TextRules.CellCharacters))
            .OfType<Fault>()
            .ToList();
        if (faults.Count > 0)
            return Outcome.Faulty<KeptUse>(faults);
        var outcome = found.Run(texts, unit);
        return outcome.Answer is { } answer
            ? await commands.RunAsync(
                new Making<KeptUse>(command, CommandTexts.Asked("working", projectId, form, texts, unit))
                {
                    Make = db => KeepAsync(db, projectId, found, texts, unit, answer, cancel),
                    Made = use => ShopJson.Write(new UseNote(use.Working.Id, use.Parts, use.Step)),
                    Find = (db, made) => FindAsync(db, ShopJson.Read<UseNote>(made), cancel),
                    What = "working",
                },
                cancel
            )
            : Outcome.Faulty<KeptUse>(outcome.Faults);
    }

    public Task<Outcome<KeptWorking>> UndoAsync(KeptUse use, CancellationToken cancel = default) =>
        work.WriteAsync(
            async db =>
            {
                if (use.Step is { } step)
                {
                    var undone = await PartUndo.UndoAsync(db, use.Working.ProjectId, step, cancel);
                    if (!undone.Ok)
                        return new Outcome<KeptWorking>(undone.Kind, null, undone.Faults);
                }

                return await RemoveAsync(db, use.Working.Id, cancel);
            },
            cancel
        );

    public Task<Outcome<KeptWorking>> RemoveAsync(Guid id, CancellationToken cancel = default) =>
        work.WriteAsync(db => RemoveAsync(db, id, cancel), cancel);

    public Task<Outcome<KeptWorking>> PutBackAsync(KeptWorking working, CommandId command, CancellationToken cancel = default) =>
        commands.RunAsync(
            new Making<KeptWorking>(command, CommandTexts.Asked("working back", working))
            {
                Make = db => PutBackAsync(db, working, cancel),
                Made = one => CommandTexts.Text(one.Id),
                Find = (db, made) => FindAsync(db, Guid.Parse(made), cancel),
                What = "working",
            },
            cancel
        );

    private static async Task<Outcome<KeptWorking>> PutBackAsync(ShopContext db, KeptWorking working, CancellationToken cancel)
    {
        if (await MayKeepAsync(db, working.ProjectId, cancel) is { } refusal)
            return new Outcome<KeptWorking>(refusal.Kind, null, refusal.Faults);
        db.Workings.Add(Row(working));
        return working;
    }

    private async Task<Outcome<KeptUse>> KeepAsync(
        ShopContext db,
        Guid projectId,
        WorkingForm form,
        ImmutableSortedDictionary<string, string> texts,
        LengthUnit unit,
        Answer answer,
        CancellationToken cancel
    )
    {
        if (await MayKeepAsync(db, projectId, cancel) is { } refusal)
            return refusal;
        var now = clock.GetUtcNow();
        var working = new KeptWorking(
            Guid.CreateVersion7(now),
            projectId,
            form.Name,
            form.Title,
            texts,
            unit,
            Line(answer, unit),
            now.UtcDateTime
        );
        db.Workings.Add(Row(working));
        if (answer.Parts.IsEmpty)
            return new KeptUse(working, 0, null);
        var rows = await WorkingParts.AddAsync(db, projectId, form, answer, cancel);
        return rows.Ok
            ? new KeptUse(working, answer.Parts.Length, rows.Value.UndoStep)
            : new Outcome<KeptUse>(rows.Kind, null, rows.Faults);
    }

    private static async Task<Outcome<KeptWorking>> RemoveAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Workings.FindAsync([id], cancel) is not { } row)
            return Outcome.Missing<KeptWorking>("working");
        db.Workings.Remove(row);
        return View(row);
    }

    private static async Task<KeptWorking?> FindAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        await db.Workings.FindAsync([id], cancel) is { } row ? View(row) : null;

    private static async Task<KeptUse?> FindAsync(ShopContext db, UseNote note, CancellationToken cancel) =>
        await FindAsync(db, note.Id, cancel) is { } working ? new KeptUse(working, note.Parts, note.Step) : null;

    // Null where one more may be kept.
    private static async Task<Outcome<KeptUse>?> MayKeepAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (!await db.Projects.AnyAsync(project => project.Id == projectId, cancel))
            return Outcome.Missing<KeptUse>("project");
        return await Of(db, projectId).CountAsync(cancel) < IWorkingService.MostKept
            ? null
            : Outcome.Faulty<KeptUse>(
                new Fault("project", "", $"has {IWorkingService.MostKept} saved figures already: remove some first")
            );
    }

    private static IQueryable<StoredWorking> Of(ShopContext db, Guid projectId) =>
        db.Workings.Where(row => row.ProjectId == projectId);

    private static string Line(Answer answer, LengthUnit unit)
    {
        var line = $"{answer.Results[0].Name}: {answer.Results[0].Figure.Text(unit)}";
        return line.Length <= TextRules.CellCharacters ? line : line[..(TextRules.CellCharacters - 1)] + "…";
    }

    private static StoredWorking Row(KeptWorking working) =>
        new()
        {
            Id = working.Id,
            ProjectId = working.ProjectId,
            Form = working.Form,
            Given = TextsDocument.Write(working.Given),
            Unit = working.Unit,
            Result = working.Result,
            KeptUtc = working.KeptUtc,
        };

    // A form that a later version took away leaves its name and its result.
    private static KeptWorking View(StoredWorking row) =>
        new(
            row.Id,
            row.ProjectId,
            row.Form,
            WorkingForms.TryFind(row.Form, out var form) ? form.Title : row.Form,
            TextsDocument.Read(row.Given),
            row.Unit,
            row.Result,
            row.KeptUtc
        );

    private sealed record UseNote(Guid Id, int Parts, Guid? Step);
}
