using System.Text.Json.Nodes;

namespace ShopPlanner.Core.Tests.Designs.Bad;

/// <summary>Changes a document somewhere: a member or an entry is taken out, put in twice, moved, or takes the value of
/// another.</summary>
internal static class DesignMutation
{
    private static readonly string[] Sizes =
    [
        "0",
        "-1",
        "1/64",
        "0 in",
        "1 mm",
        "3/4 in",
        "7 ft",
        "width",
        "depth / 7",
        "height * 3",
        "2",
        "13",
    ];

    /// <summary>Changes it so often, and says how.</summary>
    public static string Change(JsonNode root, Random chance, int times) =>
        string.Join("; ", Enumerable.Range(0, times).Select(_ => Change(root, chance)));

    private static string Change(JsonNode root, Random chance)
    {
        var nodes = All(root).Where(node => node.Parent is not null && !IsHead(node)).ToList();
        var node = nodes[chance.Next(nodes.Count)];
        var path = node.GetPath();
        switch (chance.Next(5))
        {
            case 0:
                Remove(node);
                return path + " removed";
            case 1 when node.Parent is JsonArray list:
                list.Insert(chance.Next(list.Count), node.DeepClone());
                return path + " doubled";
            case 2:
                var other = nodes[chance.Next(nodes.Count)];
                var copy = other.DeepClone();
                var from = other.GetPath();
                node.ReplaceWith(copy);
                return $"{path} = {from}";
            case 3:
                node.ReplaceWith(JsonValue.Create(chance.Next(-2, 40)));
                return path + " = a number";
            default:
                var value = Sizes[chance.Next(Sizes.Length)];
                node.ReplaceWith(value);
                return $"{path} = {value}";
        }
    }

    private static void Remove(JsonNode node)
    {
        if (node.Parent is JsonArray list)
            list.Remove(node);
        else
            node.Parent!.AsObject().Remove(node.GetPropertyName());
    }

    // What kind of document it is stays, or nothing else would be tried.
    private static bool IsHead(JsonNode node) =>
        node.Parent is JsonObject && node.GetPropertyName() is "format" or "version" && node.Parent.Parent is null;

    private static IEnumerable<JsonNode> All(JsonNode node)
    {
        var inner = node switch
        {
            JsonObject members => members.Select(one => one.Value).OfType<JsonNode>(),
            JsonArray items => items.OfType<JsonNode>(),
            _ => [],
        };
        return inner.SelectMany(All).Prepend(node);
    }
}
