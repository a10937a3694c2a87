using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Projects;

internal sealed class PartExchange(ShopWork work, ShopCommands commands) : IPartExchange
{
    public async Task<string?> ExportCsvAsync(Guid projectId, CancellationToken cancel = default) =>
        await work.ReadAsync(db => PartRows.SheetAsync(db, projectId, cancel), cancel) is { } sheet ? PartCsv.Write(sheet) : null;

    public Task<Outcome<PartPreview>> PreviewCsvAsync(Guid projectId, TableFile csv, CancellationToken cancel = default) =>
        work.ReadAsync(db => PreviewAsync(db, projectId, csv, cancel), cancel);

    public Task<Outcome<PartSheet>> ImportCsvAsync(
        Guid projectId,
        TableFile csv,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.AddOnceAsync(
            projectId,
            command,
            CommandTexts.Asked("import csv", projectId, csv.Bytes, csv.Choices),
            db => ImportAsync(db, projectId, csv, cancel),
            cancel,
            isFile: true
        );

    public Task<Outcome<PartSheet>> CopyAsync(
        Guid projectId,
        Guid from,
        IReadOnlyCollection<Guid> rows,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        commands.AddOnceAsync(
            projectId,
            command,
            CommandTexts.Asked("copy parts", projectId, from, rows.Order().ToArray()),
            db => CopyAsync(db, projectId, from, rows, cancel),
            cancel
        );

    private static async Task<Outcome<PartPreview>> PreviewAsync(
        ShopContext db,
        Guid projectId,
        TableFile csv,
        CancellationToken cancel
    )
    {
        if (await PartSaving.BeginAsync(db, projectId, cancel) is not { } saving)
            return Outcome.Missing<PartPreview>("project");
        var (table, faults) = await ReadAsync(db, projectId, saving, csv, cancel);
        if (faults.Count > 0)
            return Outcome.Faulty<PartPreview>(faults);
        var unit = await PartService.UnitAsync(db, projectId, cancel);
        return new PartPreview(PartAdding.Preview(table.Lines, saving, unit), table.Unused, unit) { Format = table.Format };
    }

    private static async Task<Outcome<PartSheet>> ImportAsync(
        ShopContext db,
        Guid projectId,
        TableFile csv,
        CancellationToken cancel
    )
    {
        if (await PartSaving.BeginAsync(db, projectId, cancel) is not { } saving)
            return Outcome.Missing<PartSheet>("project");
        var (table, faults) = await ReadAsync(db, projectId, saving, csv, cancel);
        if (faults.Count > 0)
            return Outcome.Faulty<PartSheet>(faults);
        var rows = PartAdding.Marked([.. table.Lines.Select(line => line.Texts)], saving.Texts);
        return await saving.AddAllAsync(rows, "import of " + PartService.Count(rows.Count), cancel);
    }

    // The table, or what refuses all of it.
    private static async Task<(PartTable Table, List<Fault> Faults)> ReadAsync(
        ShopContext db,
        Guid projectId,
        PartSaving saving,
        TableFile csv,
        CancellationToken cancel
    )
    {
        var table = new PartTable(await PartService.UnitAsync(db, projectId, cancel), saving.Materials);
        if (csv.Bytes.Length > IPartExchange.MostBytes)
            return (table, [new Fault("file", "", "is larger than 5 MB, the most that is read")]);
        if (table.Read(csv) is { } fault)
            return (table, [fault]);
        if (table.Lines.Count == 0)
            return (
                table,
                [
                    new Fault(
                        "file",
                        "",
                        "has no parts: write a heading like Part, Material, Length, Pieces, then a line for each part"
                    ),
                ]
            );
        var all = saving.Rows + table.Lines.Count;
        return (table, all > IPartService.MaxRows ? [PartPaste.TooMany(all).At("file")] : PartChecks.Find(table.Lines));
    }

    private static async Task<Outcome<PartSheet>> CopyAsync(
        ShopContext db,
        Guid projectId,
        Guid from,
        IReadOnlyCollection<Guid> rows,
        CancellationToken cancel
    )
    {
        if (await PartSaving.BeginAsync(db, projectId, cancel) is not { } saving)
            return Outcome.Missing<PartSheet>("project");
        if (await db.Projects.AsNoTracking().SingleOrDefaultAsync(one => one.Id == from, cancel) is not { } source)
            return Outcome.Missing<PartSheet>("project to copy from");
        if (rows.Count == 0)
            return Outcome.Faulty<PartSheet>(new Fault("rows", "", "are missing: choose at least one part"));
        var found = (await PartRows.Of(db, from).AsNoTracking().ToListAsync(cancel)).Where(row => rows.Contains(row.Id)).ToList();
        if (found.Count < rows.Distinct().Count())
            return Outcome.Conflict<PartSheet>(
                new Fault(source.Name, "", "lost some of these parts on another device: choose again")
            );
        var unit = await PartService.UnitAsync(db, projectId, cancel);
        var texts = found.Select(row => PartAdding.Copy(row.Texts, source.Unit, unit)).ToList();
        var title = $"copy of {PartService.Count(texts.Count)} from {source.Name}";
        return await saving.AddAllAsync(PartAdding.Marked(texts, saving.Texts), title, cancel);
    }
}
