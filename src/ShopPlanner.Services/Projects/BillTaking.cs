using ShopPlanner.Core.Bills;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Projects;

internal sealed class BillTaking(ShopWork work, ShopCommands commands) : IBillTaking
{
    public Task<Outcome<BillPreview>> PreviewAsync(Guid projectId, string text, CancellationToken cancel = default) =>
        work.ReadAsync(
            async db =>
            {
                if (await db.Projects.FindAsync([projectId], cancel) is null)
                    return Outcome.Missing<BillPreview>("project");
                var (bill, faults) = BillText.Read(text);
                return bill is null
                    ? Outcome.Faulty<BillPreview>(faults.Select(fault => fault.At("bill")))
                    : new BillPreview(BillRows.Lines(bill), bill.Remarks, bill.Parts.Length);
            },
            cancel
        );

    public Task<Outcome<PartSheet>> AddBillAsync(
        Guid projectId,
        string text,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.AddOnceAsync(
            projectId,
            command,
            CommandTexts.Asked("bill", projectId, text),
            db => AddAsync(db, projectId, text, cancel),
            cancel
        );

    private static async Task<Outcome<PartSheet>> AddAsync(ShopContext db, Guid projectId, string text, CancellationToken cancel)
    {
        if (await PartSaving.BeginAsync(db, projectId, cancel) is not { } saving)
            return Outcome.Missing<PartSheet>("project");
        var (bill, faults) = BillText.Read(text);
        if (bill is null)
            return Outcome.Faulty<PartSheet>(faults.Select(fault => fault.At("bill")));
        if (await NoteAsync(db, projectId, BillRows.NoteOf(bill), cancel) is { } full)
            return Outcome.Faulty<PartSheet>(full);
        var maker = new BillRows(await PartService.UnitAsync(db, projectId, cancel), saving.Materials);
        var rows = PartAdding.Marked([.. bill.Parts.Select(maker.Row)], saving.Texts);
        return await saving.AddAllAsync(rows, "stock bill of " + PartService.Count(rows.Count), cancel);
    }

    private static async Task<Fault?> NoteAsync(ShopContext db, Guid projectId, string lines, CancellationToken cancel)
    {
        if (lines.Length == 0 || await db.Projects.FindAsync([projectId], cancel) is not { } project)
            return null;
        var note = project.Note.Length == 0 ? lines : project.Note + "\n" + lines;
        if (TextRules.Free("project's note", note, TextRules.NoteCharacters) is not null)
            return Fault.Of(
                "project's note",
                lines,
                $"doesn't fit: a note has at most {TextRules.NoteCharacters} characters. Shorten it, or the bill"
            );
        project.Note = note;
        return null;
    }
}
