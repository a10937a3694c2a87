using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Archives;

internal sealed class ArchiveService(ShopWork work, ShopCommands commands, DataFolder folder, LowDisk disk, TimeProvider clock)
    : IArchiveService,
        IDisposable
{
    // Reading an archive takes a while, and the shop's writers do not wait for it: only other archives do.
    private readonly SemaphoreSlim importing = new(1, 1);

    public Task<byte[]> ExportAsync(CancellationToken cancel = default) =>
        work.ReadAsync(
            db =>
                db.Database.IsSqlite()
                    ? ArchiveWriting.WriteAsync(db, clock.GetUtcNow().UtcDateTime, cancel)
                    : FromServerAsync(db, cancel),
            cancel
        );

    public async Task<Outcome<ArchiveView>> PreviewAsync(ReadOnlyMemory<byte> zip, CancellationToken cancel = default)
    {
        var (archive, staging, faults) = await StageAsync(zip, cancel);
        if (archive is null || staging is null)
            return Outcome.Faulty<ArchiveView>(faults);
        await using (staging)
            return await work.ReadAsync(db => ViewAsync(db, archive, staging, cancel), cancel);
    }

    public async Task<Outcome<ArchiveView>> ImportAsync(
        ReadOnlyMemory<byte> zip,
        CommandId command,
        CancellationToken cancel = default
    )
    {
        await importing.WaitAsync(cancel);
        try
        {
            return await ImportOnceAsync(zip, command, cancel);
        }
        finally
        {
            importing.Release();
        }
    }

    public void Dispose() => importing.Dispose();

    private async Task<Outcome<ArchiveView>> ImportOnceAsync(
        ReadOnlyMemory<byte> zip,
        CommandId command,
        CancellationToken cancel
    )
    {
        (ArchiveText Archive, ArchiveStaging Staging)? staged = null;
        var making = new Making<ArchiveView>(command, CommandTexts.Asked("archive", zip))
        {
            Make = db => TakeAsync(db, staged!.Value.Archive, staged.Value.Staging, cancel),
            Made = ShopJson.Write,
            Find = (_, made) => Task.FromResult<ArchiveView?>(ShopJson.Read<ArchiveView>(made)),
            What = "archive",
        };
        if (await work.ReadAsync(db => ShopCommands.FindAsync(db, making, cancel), cancel) is { } known)
            return known;
        var (archive, staging, faults) = await StageAsync(zip, cancel);
        if (archive is null || staging is null)
            return Outcome.Faulty<ArchiveView>(faults);
        await using (staging)
        {
            staged = (archive, staging);
            return await commands.RunAsync(making, cancel);
        }
    }

    // The rows pass every check before the shop's writers have to wait.
    private async Task<(ArchiveText? Archive, ArchiveStaging? Staging, IReadOnlyList<Fault> Faults)> StageAsync(
        ReadOnlyMemory<byte> zip,
        CancellationToken cancel
    )
    {
        if (disk.Fault() is { } low)
            return (null, null, [new Fault("archive", "the disk", low)]);
        var (archive, fault) = ArchiveReading.Read(zip);
        if (archive is null)
            return (null, null, [fault!]);
        var (staging, faults) = await ArchiveStaging.FillAsync(archive, folder, cancel);
        return (archive, staging, faults);
    }

    private static async Task<Outcome<ArchiveView>> TakeAsync(
        ShopContext db,
        ArchiveText archive,
        ArchiveStaging staging,
        CancellationToken cancel
    )
    {
        var view = await ViewAsync(db, archive, staging, cancel);
        if (view.Hindrance is { } fault)
            return Outcome.Faulty<ArchiveView>(fault);
        await db.Jobs.ExecuteDeleteAsync(cancel);
        await using var source = staging.Read();
        await RowCopy.SomeAsync(source, db, ArchiveTables.Kept.Keys.ToHashSet(), cancel);
        // Which program wrote the database is this program's own.
        db.Facts.Add(new StoredFact { Name = Migrator.WrittenBy, Value = Migrator.ProgramVersion });
        return view;
    }

    // A file of the same rows is what archives are written from.
    private async Task<byte[]> FromServerAsync(ShopContext db, CancellationToken cancel)
    {
        var file = $"{folder.Unfinished}-{Guid.CreateVersion7():N}";
        var now = clock.GetUtcNow().UtcDateTime;
        try
        {
            return await FileCopy.WriteAsync(db, file, copy => ArchiveWriting.WriteAsync(copy, now, cancel), cancel);
        }
        finally
        {
            foreach (var ending in new[] { "", "-wal", "-shm" })
                File.Delete(file + ending);
        }
    }

    private static async Task<ArchiveView> ViewAsync(
        ShopContext db,
        ArchiveText archive,
        ArchiveStaging staging,
        CancellationToken cancel
    )
    {
        using var connection = staging.Open();
        long Count(string table) =>
            long.Parse(SqliteFacts.Ask(connection, $"SELECT COUNT(*) FROM \"{table}\""), CultureInfo.InvariantCulture);
        var hash = ArchiveDocuments.Hash(archive.Documents);
        return new(
            archive.Head.Program,
            archive.Head.MadeUtc,
            hash,
            hash == archive.Head.Hash,
            [
                .. ArchiveTables
                    .Of(db)
                    .Where(table => table.Says is not null and not "setup")
                    .Select(table => new ArchiveCount(table.Says!, Count(table.Table)))
                    .Where(one => one.Count > 0),
            ],
            await FindHindranceAsync(db, cancel)
        );
    }

    private static async Task<Fault?> FindHindranceAsync(ShopContext db, CancellationToken cancel)
    {
        (string What, int Count)[] there =
        [
            ("projects", await db.Projects.IgnoreQueryFilters().CountAsync(cancel)),
            ("stores", await db.Stores.CountAsync(cancel)),
            ("pieces of rack and bin", await db.Pieces.CountAsync(cancel)),
            ("own designs", await db.Designs.CountAsync(cancel)),
            ("own materials", await db.Materials.CountAsync(material => material.Own, cancel)),
        ];
        var told = there
            .Where(one => one.Count > 0)
            .Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.What}: {one.Count}"));
        var list = string.Join(", ", told);
        return list.Length == 0
            ? null
            : new Fault(
                "shop",
                list,
                "are here already, deleted ones counted, and an archive goes into an empty shop only, so that nothing is "
                    + "lost. Start the program with a new data folder (--data FOLDER), and import there"
            );
    }
}
