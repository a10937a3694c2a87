namespace ShopPlanner.Cli.Tests;

/// <summary>A folder of a test's own, gone after it.</summary>
internal sealed class Scratch : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("shop-planner-").FullName;

    public IEnumerable<string> Files =>
        Directory.EnumerateFileSystemEntries(Folder).Select(path => Path.GetFileName(path)!).Order();

    public string this[string name] => Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(this[name], text);
        return this[name];
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
