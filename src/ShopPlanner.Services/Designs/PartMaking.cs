using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Designs;

/// <summary>Writes the parts of an idea into the parts list as one step.</summary>
internal sealed class PartMaking
{
    private readonly PartSaving saving;
    private readonly PartUpdating update;

    private PartMaking(PartSaving saving, PartUpdating update) => (this.saving, this.update) = (saving, update);

    /// <summary>Writes them. Faulty where the idea cannot be worked out, or a row typed by hand has a mark of the drawing and may
    /// not get another.</summary>
    public static async Task<Outcome<MadeParts>> RunAsync(
        ShopContext db,
        Guid projectId,
        bool mayLetter,
        CancellationToken cancel
    )
    {
        if (
            await db.Ideas.FindAsync([projectId], cancel) is not { } row
            || await PartSaving.BeginAsync(db, projectId, cancel) is not { } saving
        )
            return Outcome.Missing<MadeParts>("idea");
        var (writer, faults) = await WriterAsync(db, row, cancel);
        if (writer is null)
            return Outcome.Faulty<MadeParts>(faults);
        var update = new PartUpdating(saving.Texts, MadeRowsDocument.Read(row.Made), writer);
        return await new PartMaking(saving, update).RunAsync(row, mayLetter, cancel);
    }

    /// <summary>Returns what writing them would change; null where the project has no idea, or one that cannot be worked
    /// out.</summary>
    public static async Task<PartsUpdate?> CompareAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (
            await db.Ideas.FindAsync([projectId], cancel) is not { } row
            || await PartSaving.BeginAsync(db, projectId, cancel) is not { } saving
        )
            return null;
        var (writer, _) = await WriterAsync(db, row, cancel);
        return writer is null ? null : new PartUpdating(saving.Texts, MadeRowsDocument.Read(row.Made), writer).Difference();
    }

    private static async Task<(PartTextWriter? Writer, ImmutableArray<Fault> Faults)> WriterAsync(
        ShopContext db,
        StoredIdea row,
        CancellationToken cancel
    )
    {
        var idea = IdeaService.Idea(row);
        var evaluation = DesignEvaluator.Evaluate(idea.Document, idea.Changed);
        if (evaluation.Piece is not { } piece)
            return (null, evaluation.Faults);
        var unit = (await db.Projects.FindAsync([row.ProjectId], cancel))!.Unit;
        return (new(unit, await MaterialIndex.LoadAsync(db, cancel), piece), []);
    }

    private async Task<Outcome<MadeParts>> RunAsync(StoredIdea row, bool mayLetter, CancellationToken cancel)
    {
        var (rows, own) = (update.Rows.ToList(), update.Own.ToList());
        var taken = rows.Select(one => one.Mark).ToHashSet();
        var doubled = own.Where(texts => taken.Contains(PartMarks.Plain(texts.Mark))).ToList();
        if (doubled.Count > 0 && !mayLetter)
            return Outcome.Faulty<MadeParts>(doubled.Select(Clash));
        var lettered = Letter(doubled, taken.Concat(own.Select(texts => texts.Mark)));
        foreach (var gone in update.Gone.ToList())
            saving.Remove(gone.Id);
        foreach (var texts in rows)
            saving.Put(texts);
        if (saving.Rows > IPartService.MaxRows)
            return Outcome.Faulty<MadeParts>(PartPaste.TooMany(saving.Rows));
        row.Made = MadeRowsDocument.Write(update.Remembered().Take(IPartService.MaxRows));
        var changed = saving.IsChanged;
        var sheet = await saving.EndAsync("parts of the design", cancel);
        return new MadeParts(sheet, rows.Count, lettered, changed ? sheet.UndoStep : null);
    }

    private static Fault Clash(PartTexts texts) =>
        Fault.Of(
            "marks",
            texts.Mark,
            $"marks both {texts.Name.Trim()}, a row of your own, and a part of the drawing: give your own rows new letters, or "
                + "change the mark"
        );

    private ImmutableArray<(string From, string To)> Letter(List<PartTexts> doubled, IEnumerable<string> taken)
    {
        var letters = doubled.Zip(PartMarks.Free(taken)).ToList();
        foreach (var (texts, mark) in letters)
            saving.Put(texts with { Mark = mark });
        return [.. letters.Select(one => (PartMarks.Plain(one.First.Mark), one.Second))];
    }
}
