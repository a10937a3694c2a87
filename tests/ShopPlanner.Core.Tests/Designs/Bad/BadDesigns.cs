using System.Globalization;
using System.Text.Json.Nodes;

namespace ShopPlanner.Core.Tests.Designs.Bad;

/// <summary>Documents that are each wrong at one place: a good one, with a value set, taken out or written differently. They
/// stand in <c>bad-designs.jsonl</c>, one a line.</summary>
public static class BadDesigns
{
    /// <summary>The good documents, by name.</summary>
    public static IReadOnlyDictionary<string, string> Good { get; } =
        new[] { "case", "stand" }.ToDictionary(name => name, name => File.ReadAllText(Path.Combine(Folder, name + ".json")));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<BadDesign> All { get; } =
    [
        .. File.ReadLines(Path.Combine(Folder, "bad-designs.jsonl"))
            .Where(line => line.Length > 0)
            .Select((line, i) => Read(JsonNode.Parse(line)!.AsObject(), i + 1)),
    ];

    private static string Folder
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder!.FullName, "ShopPlanner.sln")))
                folder = folder.Parent;
            return Path.Combine(folder.FullName, "tests", "ShopPlanner.Core.Tests", "Designs", "Bad");
        }
    }

    private static BadDesign Read(JsonObject line, int number)
    {
        var text =
            line.ContainsKey("text") ? Of(line, "text")
            : line.ContainsKey("old") ? Good[Of(line, "base")].Replace(Of(line, "old"), Of(line, "new"), StringComparison.Ordinal)
            : Changed(line);
        return new(number, text, Of(line, "place"), Of(line, "says"));
    }

    private static string Of(JsonObject line, string name) => line[name]!.GetValue<string>();

    // At "parts.0.at" stands "to", or nothing where there is no "to".
    private static string Changed(JsonObject line)
    {
        var root = JsonNode.Parse(Good[Of(line, "base")])!;
        var path = Of(line, "at").Split('.');
        var parent = path[..^1].Aggregate(root, (node, name) => node is JsonArray list ? list[Number(name)]! : node[name]!);
        var (to, isSet) = (line["to"]?.DeepClone(), line.ContainsKey("to"));
        if (parent is JsonArray items)
            Change(items, Number(path[^1]), to, isSet);
        else if (isSet)
            parent[path[^1]] = to;
        else
            parent.AsObject().Remove(path[^1]);
        return root.ToJsonString();
    }

    private static void Change(JsonArray items, int at, JsonNode? to, bool isSet)
    {
        if (at == items.Count)
            items.Add(to);
        else if (isSet)
            items[at] = to;
        else
            items.RemoveAt(at);
    }

    private static int Number(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
}

/// <summary>A document that is wrong.</summary>
/// <param name="Number">Of its line.</param>
/// <param name="Text">The document.</param>
/// <param name="Place">Where it is wrong.</param>
/// <param name="Says">Part of what is said about it.</param>
public sealed record BadDesign(int Number, string Text, string Place, string Says);
