using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Projects;

internal sealed class PartService(ShopWork work, ShopCommands commands) : IPartService
{
    public Task<PartSheet?> GetAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync(db => PartRows.SheetAsync(db, projectId, cancel), cancel);

    public async Task<Outcome<PartSheet>> SaveAsync(
        Guid projectId,
        IReadOnlyList<PartEdit> edits,
        CancellationToken cancel = default
    )
    {
        var faults = PartChecks.Find(edits.Select(edit => edit.Texts));
        if (edits.Select(edit => edit.Texts.Id).Distinct().Count() < edits.Count)
            faults.Add(new Fault("rows", "", "name the same row twice"));
        return faults.Count > 0
            ? Outcome.Faulty<PartSheet>(faults)
            : await ChangeAsync(projectId, saving => Save(saving, edits), cancel);
    }

    public Task<Outcome<PartSheet>> RemoveAsync(Guid projectId, IReadOnlyList<Guid> rows, CancellationToken cancel = default) =>
        ChangeAsync(projectId, saving => Remove(saving, rows), cancel);

    public Task<Outcome<PartSheet>> PasteAsync(
        Guid projectId,
        string text,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.AddOnceAsync(
            projectId,
            command,
            CommandTexts.Asked("paste", projectId, text),
            db => PasteAsync(db, projectId, text, cancel),
            cancel
        );

    public async Task<Outcome<PartSheet>> ImportAsync(
        Guid projectId,
        ReadOnlyMemory<byte> request,
        CommandId command,
        CancellationToken cancel = default
    )
    {
        var (read, faults) = CutRequestJson.Read(request);
        if (read is null)
            return Outcome.Faulty<PartSheet>(faults);
        var asked = CommandTexts.Asked("import", projectId, request);
        return await commands.AddOnceAsync(
            projectId,
            command,
            asked,
            db => ImportAsync(db, projectId, read, cancel),
            cancel,
            isFile: true
        );
    }

    public Task<Outcome<PartSheet>> UndoAsync(Guid projectId, CancellationToken cancel = default) =>
        work.WriteAsync(db => PartUndo.UndoAsync(db, projectId, null, cancel), cancel);

    public Task<Outcome<PartSheet>> UndoAsync(Guid projectId, Guid step, CancellationToken cancel = default) =>
        work.WriteAsync(db => PartUndo.UndoAsync(db, projectId, step, cancel), cancel);

    public Task<Outcome<PartSheet>> RedoAsync(Guid projectId, CancellationToken cancel = default) =>
        work.WriteAsync(db => PartUndo.RedoAsync(db, projectId, null, cancel), cancel);

    public Task<Outcome<PartSheet>> RedoAsync(Guid projectId, Guid step, CancellationToken cancel = default) =>
        work.WriteAsync(db => PartUndo.RedoAsync(db, projectId, step, cancel), cancel);

    private static async Task<Outcome<PartSheet>> PasteAsync(
        ShopContext db,
        Guid projectId,
        string text,
        CancellationToken cancel
    )
    {
        if (await PartSaving.BeginAsync(db, projectId, cancel) is not { } saving)
            return Outcome.Missing<PartSheet>("project");
        var (rows, fault) = PartPaste.Read(text, await UnitAsync(db, projectId, cancel), saving.Materials);
        return fault is not null
            ? Outcome.Faulty<PartSheet>(fault)
            : await saving.AddAllAsync(rows, "paste of " + Count(rows.Count), cancel);
    }

    private static async Task<Outcome<PartSheet>> ImportAsync(
        ShopContext db,
        Guid projectId,
        CutRequest request,
        CancellationToken cancel
    )
    {
        if (await PartSaving.BeginAsync(db, projectId, cancel) is not { } saving)
            return Outcome.Missing<PartSheet>("project");
        var import = new PartImport(request, await UnitAsync(db, projectId, cancel), saving.Materials);
        var rows = import.Rows(saving.Texts.Select(row => row.Mark));
        return await saving.AddAllAsync(rows, "import of " + Count(rows.Count), cancel);
    }

    internal static Task<LengthUnit> UnitAsync(ShopContext db, Guid projectId, CancellationToken cancel) =>
        db.Projects.Where(project => project.Id == projectId).Select(project => project.Unit).SingleAsync(cancel);

    private Task<Outcome<PartSheet>> ChangeAsync(
        Guid projectId,
        Func<PartSaving, (string Title, Outcome<PartSheet>? Refusal)> change,
        CancellationToken cancel
    ) => work.WriteAsync(db => ChangeAsync(db, projectId, change, cancel), cancel);

    // The change answers with the step's title, or with the outcome that refuses it.
    private static async Task<Outcome<PartSheet>> ChangeAsync(
        ShopContext db,
        Guid projectId,
        Func<PartSaving, (string Title, Outcome<PartSheet>? Refusal)> change,
        CancellationToken cancel
    )
    {
        var saving = await PartSaving.BeginAsync(db, projectId, cancel);
        if (saving is null)
            return Outcome.Missing<PartSheet>("project");
        var (title, refusal) = change(saving);
        if (refusal is not null)
            return refusal;
        saving.FillMarks();
        return await saving.EndAsync(title, cancel);
    }

    private static (string Title, Outcome<PartSheet>? Refusal) Save(PartSaving saving, IReadOnlyList<PartEdit> edits)
    {
        var conflicts = edits.Select(saving.FindConflict).OfType<Fault>().ToList();
        if (conflicts.Count > 0)
            return ("", Outcome.Conflict<PartSheet>(conflicts));
        foreach (var edit in edits)
            saving.Save(edit);
        return ("change of " + Count(edits.Count), TooMany(saving));
    }

    private static (string Title, Outcome<PartSheet>? Refusal) Remove(PartSaving saving, IReadOnlyList<Guid> rows)
    {
        foreach (var row in rows.Distinct())
            saving.Remove(row);
        return ("removal of " + Count(rows.Count), null);
    }

    private static Outcome<PartSheet>? TooMany(PartSaving saving) =>
        saving.Rows > IPartService.MaxRows ? Outcome.Faulty<PartSheet>(PartPaste.TooMany(saving.Rows)) : null;

    /// <summary>Returns a number of rows in words.</summary>
    internal static string Count(int rows) => rows == 1 ? "1 row" : $"{rows} rows";
}
