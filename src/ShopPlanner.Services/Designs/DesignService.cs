using System.Collections.Immutable;
using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Designs;

internal sealed class DesignService(ShopWork work, ShopCommands commands, BuiltInDesigns builtIn, TimeProvider clock)
    : IDesignService
{
    public Task<IReadOnlyList<DesignView>> ListAsync(CancellationToken cancel = default) =>
        work.ReadAsync<IReadOnlyList<DesignView>>(
            async db =>
            {
                var rows = await db
                    .Designs.OrderByDescending(row => row.SavedUtc)
                    .ThenByDescending(row => row.Id)
                    .ToListAsync(cancel);
                return [.. rows.Select(View), .. builtIn.All];
            },
            cancel
        );

    public async Task<DesignView?> GetAsync(string key, CancellationToken cancel = default)
    {
        if (builtIn.All.FirstOrDefault(one => one.Key == key) is { } found)
            return found;
        if (!Guid.TryParse(key, out var id))
            return null;
        return await work.ReadAsync(db => FindAsync(db, id, cancel), cancel);
    }

    public Task<Outcome<DesignView>> SaveAsync(DesignDocument document, CommandId command, CancellationToken cancel = default) =>
        SaveAsync(document, command, isFile: false, cancel);

    public Task<Outcome<DesignView>> ReplaceAsync(
        Guid id,
        int version,
        DesignDocument document,
        CancellationToken cancel = default
    ) => Checked(document, () => work.WriteAsync(db => ReplaceAsync(db, id, version, document, cancel), cancel));

    public async Task<Outcome<DesignView>> ImportAsync(
        ReadOnlyMemory<byte> json,
        CommandId command,
        CancellationToken cancel = default
    )
    {
        var reading = DesignJson.Read(json);
        if (reading.Document is not { } document)
            return Outcome.Faulty<DesignView>(reading.Faults);
        // What the command line refuses is refused here, with the same reasons.
        var faults = DesignEvaluator.Evaluate(document, ImmutableDictionary<string, string>.Empty).Faults;
        return faults.IsEmpty ? await SaveAsync(document, command, isFile: true, cancel) : Outcome.Faulty<DesignView>(faults);
    }

    public Task<Outcome<DesignView>> RemoveAsync(Guid id, CancellationToken cancel = default) =>
        work.WriteAsync<DesignView>(
            async db =>
            {
                if (await db.Designs.FindAsync([id], cancel) is not { } row)
                    return Outcome.Missing<DesignView>("design");
                db.Designs.Remove(row);
                return View(row);
            },
            cancel
        );

    public Task<Outcome<DesignView>> PutBackAsync(DesignView design, CommandId command, CancellationToken cancel = default) =>
        AddAsync(
            command,
            $"design back {design.OwnId} {design.Version}",
            Row(design.OwnId!.Value, design.Document, design.Version + 1),
            isFile: false,
            cancel
        );

    private Task<Outcome<DesignView>> SaveAsync(
        DesignDocument document,
        CommandId command,
        bool isFile,
        CancellationToken cancel
    ) =>
        Checked(
            document,
            () => AddAsync(command, "design", Row(Guid.CreateVersion7(clock.GetUtcNow()), document, 1), isFile, cancel)
        );

    private Task<Outcome<DesignView>> AddAsync(
        CommandId command,
        string verb,
        StoredDesign row,
        bool isFile,
        CancellationToken cancel
    ) =>
        commands.RunAsync(
            new Making<DesignView>(command, CommandTexts.Asked(verb, row.Document))
            {
                Make = async db => await Full(db, cancel) ?? View(db.Designs.Add(row).Entity),
                Made = design => CommandTexts.Text(design.OwnId!.Value),
                Find = (db, made) => FindAsync(db, Guid.Parse(made), cancel),
                NeedsRoom = isFile,
                What = "design",
            },
            cancel
        );

    private async Task<Outcome<DesignView>> ReplaceAsync(
        ShopContext db,
        Guid id,
        int version,
        DesignDocument document,
        CancellationToken cancel
    )
    {
        if (await db.Designs.FindAsync([id], cancel) is not { } row)
            return Outcome.Missing<DesignView>("design");
        if (row.Version != version)
            return Outcome.Conflict<DesignView>(Fault.Of("design", row.Name, "was saved on another device: reload it"));
        (row.Name, row.Document, row.SavedUtc) = (document.Name, DesignJson.Write(document), clock.GetUtcNow().UtcDateTime);
        await db.SaveChangesAsync(cancel);
        return View(row);
    }

    private static async Task<DesignView?> FindAsync(ShopContext db, Guid id, CancellationToken cancel) =>
        await db.Designs.FindAsync([id], cancel) is { } row ? View(row) : null;

    private static async Task<Outcome<DesignView>> Checked(DesignDocument document, Func<Task<Outcome<DesignView>>> save)
    {
        Fault?[] faults =
        [
            TextRules.Name("name", document.Name),
            TextRules.Line("says", document.Says, TextRules.CellCharacters),
        ];
        return faults.OfType<Fault>().Any() ? Outcome.Faulty<DesignView>(faults.OfType<Fault>()) : await save();
    }

    private static async Task<Outcome<DesignView>?> Full(ShopContext db, CancellationToken cancel) =>
        await db.Designs.CountAsync(cancel) < IDesignService.MostOwn
            ? null
            : Outcome.Faulty<DesignView>(new Fault("designs", "", $"number {IDesignService.MostOwn} already: remove some first"));

    private StoredDesign Row(Guid id, DesignDocument document, int version) =>
        new()
        {
            Id = id,
            Name = document.Name,
            Document = DesignJson.Write(document),
            SavedUtc = clock.GetUtcNow().UtcDateTime,
            Version = version,
        };

    private static DesignView View(StoredDesign row) =>
        new(row.Id.ToString(), row.Id, Documents.Read(row.Document), row.SavedUtc, row.Version);
}

/// <summary>Designs as the database holds them.</summary>
internal static class Documents
{
    /// <exception cref="InvalidDataException">The database holds what this program did not write.</exception>
    public static DesignDocument Read(string json) =>
        DesignJson.Read(Encoding.UTF8.GetBytes(json)).Document
        ?? throw new InvalidDataException("the database holds a design that cannot be read");
}
