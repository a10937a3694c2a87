using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

internal sealed class BackupService(
    CopyMaker maker,
    GoodCopies copies,
    SecondFolder second,
    ShopWork work,
    ShopContextFactory contexts,
    ShopCommands commands,
    DataFolder folder
) : IBackupService, IDisposable
{
    // The same command sent twice waits for the first and finds what that made.
    private readonly SemaphoreSlim asking = new(1, 1);

    public SecondFolderView Second => new(second.Where ?? "", second.IsByOption);

    public async Task<Outcome<BackupView>> CreateAsync(CommandId command, CancellationToken cancel = default)
    {
        await asking.WaitAsync(cancel);
        try
        {
            return await CreateOnceAsync(command, cancel);
        }
        finally
        {
            asking.Release();
        }
    }

    public IReadOnlyList<BackupView> List() => [.. copies.List().Select(View)];

    public IReadOnlyList<StrangeFile> Strange() => [.. copies.Others().Select(one => new StrangeFile(one.File, one.Fault))];

    public Outcome<Done> ChooseSecond(string folder) => second.Choose(folder);

    public void Dispose() => asking.Dispose();

    private async Task<Outcome<BackupView>> CreateOnceAsync(CommandId command, CancellationToken cancel)
    {
        BackupView? written = null;
        var making = new Making<BackupView>(command, "backup")
        {
            Make = _ => Task.FromResult<Outcome<BackupView>>(written!),
            Made = copy => Path.GetFileName(copy.File),
            Find = (_, name) => Task.FromResult(Find(name)),
            What = "backup",
        };
        try
        {
            if (await work.ReadAsync(db => ShopCommands.FindAsync(db, making, cancel), cancel) is { } known)
                return known;
            written = View(await maker.MakeAsync(GoodCopies.ByHand, cancel));
            // The copy is there: that it was made is noted, where that can be, whatever becomes of the asker.
            return contexts.IsReadOnly ? written : await commands.RunAsync(making, CancellationToken.None);
        }
        catch (Exception problem) when (CopyMaker.IsTrouble(problem))
        {
            return Outcome.Faulty<BackupView>(
                new Fault("backup", folder.Backups, "could not be saved: " + problem.Message.ReplaceLineEndings(" "))
            );
        }
    }

    private BackupView? Find(string name)
    {
        var file = Path.Combine(folder.Backups, name);
        return File.Exists(file) ? View(file) : null;
    }

    private static BackupView View(string file) =>
        new(file, new FileInfo(file).Length, BackupFile.MadeAt(file)!.Value.UtcDateTime, BackupFile.Why(file)!);
}
