using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
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
    private readonly IReadOnlyList<PartTexts> list;
    private readonly ImmutableArray<MadeRow> made;
    private readonly PartTextWriter writer;

    private PartMaking(PartSaving saving, ImmutableArray<MadeRow> made, PartTextWriter writer) =>
        (this.saving, this.made, this.writer, list) = (saving, made, writer, saving.Texts);

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
        var idea = IdeaService.Idea(row);
        var evaluation = DesignEvaluator.Evaluate(idea.Document, idea.Changed);
        if (evaluation.Piece is not { } piece)
            return Outcome.Faulty<MadeParts>(evaluation.Faults);
        var unit = (await db.Projects.FindAsync([projectId], cancel))!.Unit;
        var making = new PartMaking(
            saving,
            MadeRowsDocument.Read(row.Made),
            new(unit, await MaterialIndex.LoadAsync(db, cancel), piece)
        );
        return await making.RunAsync(row, mayLetter, cancel);
    }

    private async Task<Outcome<MadeParts>> RunAsync(StoredIdea row, bool mayLetter, CancellationToken cancel)
    {
        var parts = writer.Rows();
        var own = list.Where(texts => made.All(one => one.Row != texts.Id)).ToList();
        var taken = parts.Select(part => part.Id).ToHashSet();
        var doubled = own.Where(texts => taken.Contains(PartMarks.Plain(texts.Mark))).ToList();
        if (doubled.Count > 0 && !mayLetter)
            return Outcome.Faulty<MadeParts>(doubled.Select(Clash));
        var lettered = Letter(doubled, taken.Concat(own.Select(texts => texts.Mark)));
        var rows = parts.Select(Write).ToImmutableArray();
        foreach (var gone in list.Where(texts => made.Any(one => one.Row == texts.Id) && rows.All(one => one.Row != texts.Id)))
            saving.Remove(gone.Id);
        if (saving.Rows > IPartService.MaxRows)
            return Outcome.Faulty<MadeParts>(PartPaste.TooMany(saving.Rows));
        // Rows made earlier are remembered, since undoing may bring them back.
        row.Made = MadeRowsDocument.Write(rows.Concat(made).DistinctBy(one => one.Row).Take(IPartService.MaxRows));
        var changed = saving.IsChanged;
        var sheet = await saving.EndAsync("parts of the idea", cancel);
        return new MadeParts(sheet, rows.Length, lettered, changed ? sheet.UndoStep : null);
    }

    private static Fault Clash(PartTexts texts) =>
        Fault.Of(
            "marks",
            texts.Mark,
            $"is the mark of {texts.Name.Trim()}, a row of your own, and of a part of the drawing: let your own "
                + $"rows take other letters, or change its mark"
        );

    private ImmutableArray<(string From, string To)> Letter(List<PartTexts> doubled, IEnumerable<string> taken)
    {
        var letters = doubled.Zip(PartMarks.Free(taken)).ToList();
        foreach (var (texts, mark) in letters)
            saving.Put(texts with { Mark = mark });
        return [.. letters.Select(one => (PartMarks.Plain(one.First.Mark), one.Second))];
    }

    // A row made before for the same letter is changed in its place: plans know it by its id.
    private MadeRow Write(PiecePart part)
    {
        var before = made.Where(one => one.Mark == part.Id)
            .Select(one => list.FirstOrDefault(texts => texts.Id == one.Row))
            .FirstOrDefault(texts => texts is not null);
        var texts = writer.Texts(part, before);
        saving.Put(texts);
        return new(part.Id, texts.Id);
    }
}
