using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Features.Projects;

/// <summary>How saving stands.</summary>
public enum SheetSaving
{
    /// <summary>Everything typed is stored.</summary>
    Saved,

    /// <summary>On its way.</summary>
    Saving,

    /// <summary>Not stored; the faults say why.</summary>
    NotSaved,
}

/// <summary>A parts list being edited: typing goes in at once, one save at a time goes out, and what comes back never wipes out
/// what was typed meanwhile.</summary>
public sealed class SheetState(IPartService parts, Guid project)
{
    private readonly List<SheetRow> rows = [];
    private readonly StepQueue steps = new();
    private PartSheet? sheet;
    private Task? pump;

    /// <summary>Raised when something to show changed while a save was under way.</summary>
    public Action? Changed { get; init; }

    /// <summary>The rows, the empty last one among them.</summary>
    public IReadOnlyList<SheetRow> Rows => rows;

    /// <summary>What is stored.</summary>
    public PartSheet Sheet => sheet!;

    /// <summary>How saving stands.</summary>
    public SheetSaving Saving { get; private set; } = SheetSaving.Saved;

    /// <summary>Why the last thing asked for was not done.</summary>
    public ImmutableArray<Fault> Faults { get; private set; } = [];

    /// <summary>Reads the list; false when the project is gone.</summary>
    public async Task<bool> LoadAsync(CancellationToken cancel)
    {
        if (await parts.GetAsync(project, cancel) is not { } read)
            return false;
        Take(read, []);
        return true;
    }

    /// <summary>Takes one cell's text in and sees that it is saved.</summary>
    public Task TypeAsync(SheetRow row, PartTexts texts)
    {
        row.Type(texts);
        return row.IsDirty && !row.IsContested ? SaveAsync() : Task.CompletedTask;
    }

    /// <summary>
    /// Takes one cell's text in whose stored text another device changed since the typing began: both are shown.
    /// </summary>
    public static void Contest(SheetRow row, PartTexts texts)
    {
        ArgumentNullException.ThrowIfNull(row);
        row.Type(texts);
        row.Contest(row.Stored);
    }

    /// <summary>Saves everything that waits, until nothing does.</summary>
    public Task SaveAsync() => pump is { IsCompleted: false } ? pump : pump = PumpAsync();

    /// <summary>Takes rows out.</summary>
    public Task RemoveAsync(SheetRow row) => DoAsync(() => parts.RemoveAsync(project, [row.Id]));

    /// <summary>
    /// Takes what was copied from a spreadsheet: a few columns go in from the cell that has the cursor, whole rows are added at
    /// the end.
    /// </summary>
    /// <param name="text">Rows by line ends, cells by tabs.</param>
    /// <param name="column">Name of the cell's column; null where no cell has the cursor.</param>
    /// <param name="row">Its row.</param>
    /// <param name="columns">As they stand on the page.</param>
    /// <param name="command">Made by the browser.</param>
    public Task PasteAsync(string text, string? column, Guid? row, IReadOnlyList<PartColumn> columns, CommandId command) =>
        PastedCells.Read(text, column, columns) is { } cells && rows.FindIndex(one => one.Id == row) is >= 0 and var at
            ? FillAsync(cells, at)
            : DoAsync(() => parts.PasteAsync(project, text, command));

    /// <summary>Adds the parts of a cut request.</summary>
    public Task ImportAsync(ReadOnlyMemory<byte> request) => DoAsync(() => parts.ImportAsync(project, request, CommandId.New()));

    /// <summary>Adds rows in another way.</summary>
    /// <param name="add">Adds them.</param>
    /// <returns>Why they were not added, for where they were asked for; empty when they were.</returns>
    public async Task<ImmutableArray<Fault>> AddAsync(Func<Task<Outcome<PartSheet>>> add)
    {
        ImmutableArray<Fault> faults = [];
        await DoAsync(async () =>
        {
            var outcome = await add();
            faults = outcome.Faults;
            return outcome with { Faults = [] };
        });
        return faults;
    }

    /// <summary>Says what is wrong with a file that was not read.</summary>
    public void Refuse(Fault fault) => Faults = [fault];

    /// <summary>Says that so many rows are too many to be pasted.</summary>
    public void RefusePaste(int pasted) =>
        Faults = [
            Fault.Of(
                "paste",
                $"{pasted} rows",
                pasted > IPartService.MaxRows
                    ? $"are too many: a parts list holds at most {IPartService.MaxRows}; nothing was added"
                    : "are too long: paste fewer at a time; nothing was added"
            ),
        ];

    /// <summary>Takes the last step back that the page knows of; what was typed and is not stored yet is stored
    /// first.</summary>
    public Task UndoAsync() => StepAsync(() => Sheet.UndoStep, step => parts.UndoAsync(project, step));

    /// <summary>Does the step again that was taken back last.</summary>
    public Task RedoAsync() => StepAsync(() => Sheet.RedoStep, step => parts.RedoAsync(project, step));

    /// <summary>Takes a certain step back, as long as it is the last one.</summary>
    public Task TakeBackAsync(Guid step) => DoAsync(() => parts.UndoAsync(project, step));

    /// <summary>Saves this device's value over the other.</summary>
    public Task KeepMineAsync(SheetRow row)
    {
        row.KeepMine();
        return SaveAsync();
    }

    /// <summary>Lets this device's value go.</summary>
    public async Task TakeTheirsAsync(SheetRow row)
    {
        row.LetGo();
        if (row.Theirs is { } theirs)
            row.Store(theirs, row.Texts);
        else
            rows.Remove(row);
        await LoadAsync(CancellationToken.None);
    }

    private Task FillAsync(PastedCells cells, int at)
    {
        if (at + cells.Rows > IPartService.MaxRows)
        {
            RefusePaste(at + cells.Rows);
            return Task.CompletedTask;
        }

        while (rows.Count < at + cells.Rows)
            rows.Add(new SheetRow(Guid.CreateVersion7()));
        for (var i = 0; i < cells.Rows; i++)
            if (!rows[at + i].IsContested)
                rows[at + i].Type(cells.Into(rows[at + i].Texts, i));
        return SaveAsync();
    }

    private Task DoAsync(Func<Task<Outcome<PartSheet>>> act) =>
        steps.RunAsync(async () =>
        {
            await SaveAsync();
            return await TakeInAsync(await act());
        });

    // Which step is the last one is known only when everything before is stored. Nothing where there is none.
    private Task StepAsync(Func<Guid?> next, Func<Guid, Task<Outcome<PartSheet>>> act) =>
        steps.StepAsync(async () =>
        {
            await SaveAsync();
            return next() is not { } step || await TakeInAsync(await act(step));
        });

    private async Task<bool> TakeInAsync(Outcome<PartSheet> outcome)
    {
        Faults = outcome.Faults;
        if (outcome.Ok)
            Take(outcome.Value, []);
        else if (outcome.Kind == OutcomeKind.Conflict)
            await LoadAsync(CancellationToken.None);
        Changed?.Invoke();
        return outcome.Ok;
    }

    private async Task PumpAsync()
    {
        while (rows.Where(row => row.IsDirty && !row.IsContested).ToList() is { Count: > 0 } waiting)
        {
            Saving = SheetSaving.Saving;
            Changed?.Invoke();
            if (!await SendAsync([.. waiting.Select(row => row.ToEdit())]))
                return;
        }

        Saving = SheetSaving.Saved;
        Changed?.Invoke();
    }

    private async Task<bool> SendAsync(ImmutableArray<PartEdit> edits)
    {
        var outcome = await parts.SaveAsync(project, edits);
        Faults = outcome.Kind == OutcomeKind.Conflict ? [] : outcome.Faults;
        if (outcome.Ok)
            Take(outcome.Value, edits);
        else if (outcome.Kind == OutcomeKind.Conflict)
            await ContestAsync(outcome.Faults);
        else
        {
            Saving = SheetSaving.NotSaved;
            Changed?.Invoke();
            return false;
        }

        return true;
    }

    // Only the rows that the conflict names are held back; the others go out with the next round.
    private async Task ContestAsync(ImmutableArray<Fault> faults)
    {
        var named = faults.Select(fault => fault.Field).ToHashSet();
        if (await parts.GetAsync(project) is not { } now)
            return;
        foreach (var row in rows.Where(row => named.Contains(row.Id.ToString())))
            row.Contest(now.Rows.FirstOrDefault(stored => stored.Texts.Id == row.Id));
    }

    private void Take(PartSheet read, ImmutableArray<PartEdit> sent)
    {
        var typed = rows.ToDictionary(row => row.Id);
        var sentTexts = sent.ToDictionary(edit => edit.Texts.Id, edit => edit.Texts);
        var last = rows.LastOrDefault();
        rows.Clear();
        foreach (var stored in read.Rows)
            rows.Add(Merge(stored, typed, sentTexts));
        rows.AddRange(typed.Values.Where(row => row.IsContested && row.IsGone));
        rows.Add(
            last is { Stored: null, IsContested: false } && rows.All(row => row.Id != last.Id)
                ? last
                : new SheetRow(Guid.CreateVersion7())
        );
        sheet = read;
    }

    private static SheetRow Merge(PartRow stored, Dictionary<Guid, SheetRow> typed, Dictionary<Guid, PartTexts> sent)
    {
        var row = typed.GetValueOrDefault(stored.Texts.Id) ?? new SheetRow(stored.Texts.Id);
        if (!row.IsContested)
            row.Store(stored, sent.GetValueOrDefault(row.Id));
        return row;
    }
}
