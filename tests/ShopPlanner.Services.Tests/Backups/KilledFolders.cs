using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Backups;

/// <summary>Keeps the data folder as it is before each step that changes files: what a program killed there leaves.</summary>
internal sealed class KilledFolders : StorageSteps, IDisposable
{
    private readonly List<(string Step, string Folder)> folders = [];
    private string? watched;

    public IReadOnlyList<(string Step, string Folder)> Folders => folders;

    public void Watch(string folder) => watched = folder;

    public override void Reach(string step)
    {
        if (watched is null)
            return;
        var kept = TestShop.NewFolder();
        Copy(watched, kept);
        folders.Add((step, kept));
    }

    public void Dispose() => folders.ForEach(one => Directory.Delete(one.Folder, recursive: true));

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.EnumerateFiles(from).Where(file => Path.GetFileName(file) != "shop.lock"))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        foreach (var inner in Directory.EnumerateDirectories(from))
            Copy(inner, Path.Combine(to, Path.GetFileName(inner)));
    }
}
