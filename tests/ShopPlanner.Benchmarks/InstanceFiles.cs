using System.Text.Json;

namespace ShopPlanner.Benchmarks;

/// <summary>Instances as they lie in .jsonl files, one JSON object a line.</summary>
public static class InstanceFiles
{
    /// <summary>Every instance of a file, or of all .jsonl files of a folder and its subfolders, by file name.</summary>
    public static IEnumerable<JsonElement> Read(string path) =>
        Files(path).SelectMany(File.ReadLines).Where(line => !string.IsNullOrWhiteSpace(line)).Select(Parse);

    /// <summary>At most so many of each set, evenly spread over it; zero for all.</summary>
    public static IEnumerable<JsonElement> Sample(IEnumerable<JsonElement> instances, int perSet) =>
        perSet == 0 ? instances : instances.GroupBy(Set).SelectMany(set => Spread([.. set], perSet));

    /// <summary>The set an instance belongs to.</summary>
    public static string Set(JsonElement instance) => instance.GetProperty("set").GetString() ?? "";

    /// <summary>An instance's name.</summary>
    public static string Name(JsonElement instance) => instance.GetProperty("name").GetString() ?? "";

    /// <summary>The first of the named members that holds a number.</summary>
    public static double? FirstNumber(JsonElement instance, params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
            if (instance.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number)
                return value.GetDouble();
        return null;
    }

    private static IEnumerable<string> Files(string path) =>
        File.Exists(path)
            ? [path]
            : Directory.EnumerateFiles(path, "*.jsonl", SearchOption.AllDirectories).Order(StringComparer.Ordinal);

    private static JsonElement Parse(string line)
    {
        using var document = JsonDocument.Parse(line);
        return document.RootElement.Clone();
    }

    private static IEnumerable<JsonElement> Spread(List<JsonElement> set, int count) =>
        set.Count <= count ? set : Enumerable.Range(0, count).Select(i => set[(int)((long)i * set.Count / count)]);
}
