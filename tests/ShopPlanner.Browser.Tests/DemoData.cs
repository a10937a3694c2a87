namespace ShopPlanner.Browser.Tests;

/// <summary>
/// The data of a shop with the demo, made by the program once and copied for every program that begins with it: making it takes
/// longer than all else that a start does.
/// </summary>
internal static class DemoData
{
    private static readonly Lazy<Task<string>> Made = new(MakeAsync);

    public static async Task CopyToAsync(string folder)
    {
        var from = await Made.Value;
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(folder, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }

    private static async Task<string> MakeAsync()
    {
        await using var app = await RunningApp.StartAsync(_ => { }, [], CancellationToken.None);
        await app.KillAsync();
        var made = Directory.CreateTempSubdirectory("shop-planner-demo-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(made, recursive: true);
        foreach (var file in Directory.EnumerateFiles(app.DataFolder, "shop.db*"))
            File.Copy(file, Path.Combine(made, Path.GetFileName(file)));
        return made;
    }
}
