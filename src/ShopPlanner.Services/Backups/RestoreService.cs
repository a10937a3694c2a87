using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Backups;

internal sealed class RestoreService(IBackupService backups, ShopWork work, DataFolder folder) : IRestoreService
{
    private const string Field = "backup";

    public bool IsAsked => File.Exists(folder.RestoreRequest);

    public async Task<Outcome<RestorePreview>> PreviewAsync(string name, CancellationToken cancel = default)
    {
        if (Find(name) is not { } backup)
            return Outcome.Missing<RestorePreview>(Field);
        // Reading every page takes a while.
        if (await Task.Run(() => ShopRestore.Fault(backup.File), cancel) is { } fault)
            return Outcome.Faulty<RestorePreview>(Fault.Of(Field, name, fault));
        var then = CopyFacts.Of(backup.File);
        var now = await work.ReadAsync(db => Task.FromResult(CopyFacts.Of(db.Database.GetDbConnection())), cancel);
        return new RestorePreview(backup, then.Program, Figures(then), Figures(now));
    }

    public Outcome<Done> Ask(string name)
    {
        if (Find(name) is not { } backup)
            return Outcome.Missing<Done>(Field);
        if (ShopRestore.Fault(backup.File) is { } fault)
            return Outcome.Faulty<Done>(Fault.Of(Field, name, fault));
        try
        {
            File.WriteAllText(folder.RestoreRequest, backup.File);
            return Done.Value;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Outcome.Faulty<Done>(Fault.Of(Field, name, "can't be restored: " + problem.Message.ReplaceLineEndings(" ")));
        }
    }

    // By its name among the backups alone: a name is never part of a path.
    private BackupView? Find(string name) => backups.List().FirstOrDefault(one => Path.GetFileName(one.File) == name);

    private static ShopFigures Figures(CopyFacts facts) => new(facts.Projects, facts.Plans, facts.Pieces, facts.Entries);
}
