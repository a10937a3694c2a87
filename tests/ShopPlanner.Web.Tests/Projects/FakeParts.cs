using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Web.Tests.Projects;

/// <summary>
/// A parts list in memory: reads lengths, keeps one step to undo for each change, can be made to wait or to refuse.
/// </summary>
internal sealed class FakeParts : IPartService
{
    private readonly Stack<(Guid Step, string Title, ImmutableArray<PartRow> Before)> undo = [];
    private ImmutableArray<PartRow> rows = [];

    public Guid Project { get; } = Guid.NewGuid();

    public List<IReadOnlyList<PartEdit>> Saves { get; } = [];

    public List<string> Pastes { get; } = [];

    /// <summary>How many steps were asked back.</summary>
    public int Undos { get; private set; }

    /// <summary>Completed when a save or an undo may go on; null lets everything through at once.</summary>
    public TaskCompletionSource? Gate { get; set; }

    /// <summary>Refuses every save with this while set.</summary>
    public Fault? Refusal { get; set; }

    /// <summary>Fails pastes and undos with this while set.</summary>
    public Exception? Failure { get; set; }

    public ImmutableArray<PartRow> Rows => rows;

    public PartTexts Add(string mark, string name, string length)
    {
        var texts = new PartTexts(Guid.NewGuid(), mark, name, "Pine 1x3", length, "", "1", false, "");
        rows = rows.Add(Read(texts, 1));
        return texts;
    }

    /// <summary>What another device does.</summary>
    public void ChangeElsewhere(Guid id, string length) =>
        rows = [.. rows.Select(row => row.Texts.Id == id ? Read(row.Texts with { Length = length }, row.Version + 1) : row)];

    /// <summary>Another device does something that can be taken back.</summary>
    public void StepElsewhere() => Note("step of another device");

    public void RemoveElsewhere(Guid id) => rows = rows.RemoveAll(row => row.Texts.Id == id);

    public Task<PartSheet?> GetAsync(Guid projectId, CancellationToken cancel = default) => Task.FromResult<PartSheet?>(Sheet());

    public async Task<Outcome<PartSheet>> SaveAsync(
        Guid projectId,
        IReadOnlyList<PartEdit> edits,
        CancellationToken cancel = default
    )
    {
        Saves.Add(edits);
        if (Gate is { } gate)
            await gate.Task;
        if (Refusal is { } refusal)
            return Outcome.Faulty<PartSheet>(refusal);
        var conflicts = edits
            .Where(edit => edit.Version != Find(edit.Texts.Id)?.Version)
            .Select(edit => new Fault(edit.Texts.Id.ToString(), "", "changed"))
            .ToList();
        if (conflicts.Count > 0)
            return Outcome.Conflict<PartSheet>(conflicts);
        Note($"change of {edits.Count}");
        foreach (var edit in edits)
            Put(edit);
        return Sheet();
    }

    public Task<Outcome<PartSheet>> RemoveAsync(Guid projectId, IReadOnlyList<Guid> removed, CancellationToken cancel = default)
    {
        Note("removal");
        rows = rows.RemoveAll(row => removed.Contains(row.Texts.Id));
        return Task.FromResult<Outcome<PartSheet>>(Sheet());
    }

    public Task<Outcome<PartSheet>> PasteAsync(Guid projectId, string text, CommandId command, CancellationToken cancel = default)
    {
        ThrowFailure();
        Pastes.Add(text);
        Note("paste");
        foreach (var line in text.Split('\n'))
            Add(line.Split('\t')[0], line.Split('\t')[1], line.Split('\t')[2]);
        return Task.FromResult<Outcome<PartSheet>>(Sheet());
    }

    public Task<Outcome<PartSheet>> ImportAsync(
        Guid projectId,
        ReadOnlyMemory<byte> request,
        CommandId command,
        CancellationToken cancel = default
    ) => throw new NotSupportedException();

    public Task<Outcome<PartSheet>> UndoAsync(Guid projectId, CancellationToken cancel = default)
    {
        ThrowFailure();
        rows = undo.Pop().Before;
        return Task.FromResult<Outcome<PartSheet>>(Sheet());
    }

    public async Task<Outcome<PartSheet>> UndoAsync(Guid projectId, Guid step, CancellationToken cancel = default)
    {
        Undos++;
        if (Gate is { } gate)
            await gate.Task;
        return undo.TryPeek(out var last) && last.Step == step
            ? await UndoAsync(projectId, cancel)
            : Outcome.Conflict<PartSheet>(new Fault("undo", "", "is not the last step"));
    }

    public Task<Outcome<PartSheet>> RedoAsync(Guid projectId, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    public Task<Outcome<PartSheet>> RedoAsync(Guid projectId, Guid step, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    private void Note(string title) => undo.Push((Guid.NewGuid(), title, rows));

    private void ThrowFailure()
    {
        if (Failure is { } failure)
            throw failure;
    }

    private PartRow? Find(Guid id) => rows.FirstOrDefault(row => row.Texts.Id == id);

    private void Put(PartEdit edit)
    {
        var version = (edit.Version ?? 0) + 1;
        rows = Find(edit.Texts.Id) is { } old
            ? rows.Replace(old, Read(edit.Texts, version))
            : rows.Add(Read(edit.Texts, version));
    }

    private static PartRow Read(PartTexts texts, int version)
    {
        var length = LengthText.ParsePositive(texts.Length, LengthUnit.Inch);
        ImmutableArray<Fault> faults = length.Ok ? [] : [length.Fault.At(nameof(texts.Length))];
        var part = length.Ok
            ? new CutPart(texts.Mark, texts.Name, "pine-1x3", length.Value, Length.FromInches(2, 1, 2), Grain.Length, 1)
            : null;
        return new PartRow(texts, part, texts.Material, faults, version);
    }

    private PartSheet Sheet() =>
        new(Project, LengthUnit.Inch, rows, undo.Count > 0 ? undo.Peek().Title : null, null)
        {
            UndoStep = undo.Count > 0 ? undo.Peek().Step : null,
        };
}
