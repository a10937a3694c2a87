using System.Text.Json.Nodes;

namespace ShopPlanner.Services.Storage.Documents;

/// <summary>Helps to bring texts of version 0 up to date: their members had the names of the code of that time.</summary>
internal static class FirstTexts
{
    /// <summary>A copy with these members only, under new names.</summary>
    /// <param name="node">An object.</param>
    /// <param name="names">Old and new name of each member.</param>
    /// <exception cref="KeyNotFoundException">A member is missing.</exception>
    public static JsonObject Renamed(this JsonNode node, params ReadOnlySpan<(string Old, string New)> names)
    {
        var (old, renamed) = (node.AsObject(), new JsonObject());
        foreach (var (was, now) in names)
            renamed.Add(
                now,
                old.ContainsKey(was) ? old[was]?.DeepClone() : throw new KeyNotFoundException($"the member {was} is missing")
            );
        return renamed;
    }

    /// <summary>A copy of an object whose members are values by name, each changed.</summary>
    public static JsonObject Each(this JsonNode node, Func<JsonNode, JsonNode> change)
    {
        var changed = new JsonObject();
        foreach (var (key, value) in node.AsObject())
            changed.Add(key, change(value ?? throw new KeyNotFoundException($"the member {key} is empty")));
        return changed;
    }

    /// <summary>A copy of a list, each item changed.</summary>
    public static JsonArray Items(this JsonNode node, Func<JsonNode, JsonNode> change) =>
        [.. node.AsArray().Select(item => change(item ?? throw new KeyNotFoundException("an item is empty")))];
}
