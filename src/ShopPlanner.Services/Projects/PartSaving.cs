using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

/// <summary>One step in the making: the rows of a list, what was touched, and how it was before.</summary>
internal sealed class PartSaving
{
    // Room left between two rows, so that many can be inserted there before the list has to be renumbered.
    private const long Gap = 1 << 20;

    private readonly ShopContext db;
    private readonly Guid projectId;
    private readonly List<StoredPart> rows;
    private readonly Dictionary<Guid, StoredPart> byId;
    private readonly List<StoredPart> touched = [];
    private readonly List<PartMoment> before = [];

    private PartSaving(ShopContext db, Guid projectId, List<StoredPart> rows, MaterialIndex materials)
    {
        (this.db, this.projectId, this.rows, Materials) = (db, projectId, rows, materials);
        byId = rows.ToDictionary(row => row.Id);
    }

    /// <summary>The shop's materials.</summary>
    public MaterialIndex Materials { get; }

    public int Rows => rows.Count;

    /// <summary>The rows as they are now, in order.</summary>
    public IReadOnlyList<PartTexts> Texts => [.. rows.Select(row => row.Texts)];

    /// <summary>True once a row was added, changed or taken out.</summary>
    public bool IsChanged => touched.Count + before.Count > 0;

    public static async Task<PartSaving?> BeginAsync(ShopContext db, Guid projectId, CancellationToken cancel) =>
        await db.Projects.AnyAsync(project => project.Id == projectId, cancel)
            ? new PartSaving(
                db,
                projectId,
                await PartRows.Of(db, projectId).ToListAsync(cancel),
                await MaterialIndex.LoadAsync(db, cancel)
            )
            : null;

    /// <summary>Null when the edit may be made; else what another device did.</summary>
    public Fault? FindConflict(PartEdit edit)
    {
        var id = edit.Texts.Id.ToString();
        var stored = byId.GetValueOrDefault(edit.Texts.Id);
        if (stored is null)
            return edit.Version is null ? null : new Fault(id, edit.Texts.Mark, "was deleted on another device");
        return edit.Version == stored.Version || stored.Texts == Wanted(stored, edit)
            ? null
            : Fault.Of(id, Summary(stored), "is the row now: another device changed it");
    }

    public void Save(PartEdit edit)
    {
        var stored = byId.GetValueOrDefault(edit.Texts.Id);
        if (stored is null)
            Add(edit.Texts, edit.Before);
        else if (stored.Texts != Wanted(stored, edit))
            Change(stored, Wanted(stored, edit));
    }

    public void Add(PartTexts texts, Guid? beforeRow)
    {
        var at = beforeRow is { } id && byId.TryGetValue(id, out var next) ? rows.IndexOf(next) : rows.Count;
        var row = new StoredPart
        {
            Id = texts.Id,
            ProjectId = projectId,
            Position = PositionAt(at),
        };
        row.Take(Named(texts));
        rows.Insert(at, row);
        byId.Add(row.Id, row);
        touched.Add(row);
        db.Parts.Add(row);
    }

    /// <summary>Changes the row with that id, or adds it at the end; nothing where it says so already.</summary>
    public void Put(PartTexts texts)
    {
        if (!byId.TryGetValue(texts.Id, out var stored))
            Add(texts, null);
        else if (stored.Texts != texts)
            Change(stored, texts);
    }

    public void Remove(Guid id)
    {
        if (!byId.Remove(id, out var row))
            return;
        before.Add(PartMoment.Of(row));
        rows.Remove(row);
        db.Parts.Remove(row);
    }

    /// <summary>Gives rows without a mark the next free letters.</summary>
    public void FillMarks()
    {
        var blank = touched.Where(row => row.Mark.Trim().Length == 0).ToList();
        if (blank.Count == 0)
            return;
        foreach (var (row, mark) in blank.Zip(PartMarks.Free(rows.Select(row => row.Mark))))
            row.Mark = mark;
    }

    /// <summary>Adds rows at the end as one step to undo: all of them, or none with a fault for each text that cannot be
    /// kept.</summary>
    public async Task<Outcome<PartSheet>> AddAllAsync(IReadOnlyList<PartTexts> added, string title, CancellationToken cancel)
    {
        var wrong = PartChecks.Find(added);
        if (wrong.Count == 0 && rows.Count + added.Count > IPartService.MaxRows)
            wrong = [PartPaste.TooMany(rows.Count + added.Count)];
        if (wrong.Count > 0)
            return Outcome.Faulty<PartSheet>(wrong);
        foreach (var texts in added)
            Add(texts, null);
        FillMarks();
        return await EndAsync(title, cancel);
    }

    /// <summary>Saves, with a step to undo when anything was touched.</summary>
    public async Task<PartSheet> EndAsync(string title, CancellationToken cancel)
    {
        await db.SaveChangesAsync(cancel);
        if (IsChanged)
            await PartJournal.AddAsync(db, projectId, title, before, [.. touched.Select(PartMoment.Of)], cancel);
        await db.SaveChangesAsync(cancel);
        return (await PartRows.SheetAsync(db, projectId, cancel))!;
    }

    private void Change(StoredPart row, PartTexts texts)
    {
        before.Add(PartMoment.Of(row));
        row.Take(texts);
        touched.Add(row);
    }

    private long PositionAt(int at)
    {
        if (at == rows.Count)
            return rows.Count == 0 ? 0 : rows[^1].Position + Gap;
        var low = at == 0 ? rows[at].Position - (2 * Gap) : rows[at - 1].Position;
        if (rows[at].Position - low < 2)
            NumberAnew();
        return at == 0 ? rows[at].Position - Gap : (rows[at - 1].Position + rows[at].Position) / 2;
    }

    private void NumberAnew()
    {
        for (var i = 0; i < rows.Count; i++)
            rows[i].Position = i * Gap;
    }

    // A mark that was filled in stays when the page, not knowing it yet, sends none.
    private PartTexts Wanted(StoredPart stored, PartEdit edit) =>
        edit.Texts.Mark.Trim().Length == 0 && PartMarks.IsMark(stored.Mark)
            ? Named(edit.Texts) with
            {
                Mark = stored.Mark,
            }
            : Named(edit.Texts);

    // Words that fit one material today may fit two tomorrow: the row keeps the one that was meant.
    private PartTexts Named(PartTexts texts) =>
        Materials.FindNamed(texts.Material) is null && Materials.FindTyped(texts.Material) is { } meant
            ? texts with
            {
                Material = meant.Name,
            }
            : texts;

    private static string Summary(StoredPart row) => string.Join(' ', row.Mark, row.Name, row.Length, "×", row.Quantity);
}
