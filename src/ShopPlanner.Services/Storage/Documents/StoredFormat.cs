using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace ShopPlanner.Services.Storage.Documents;

/// <summary>One kind of document in the database: JSON whose members <c>format</c> and <c>version</c> say what it is, so that it
/// can be read by any program and brought up to date by later ones. Version 0 is text from before documents said what they
/// are.</summary>
/// <typeparam name="T">The members of the newest version, each with its name written beside it or in <see cref="Names"/>: a
/// document does not change with the names of the code.</typeparam>
/// <param name="name">E.g. <c>shop-planner/plan-order</c>.</param>
/// <param name="upgrades">The step from each version to the next, version 0 first; as many as the newest version's
/// number.</param>
internal sealed class StoredFormat<T>(string name, params Func<JsonNode, JsonObject>[] upgrades)
    where T : class
{
    private static readonly JsonSerializerOptions Options = new()
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    private readonly JsonSerializerOptions options = Options;

    /// <summary>Names members of a record that have none beside them; see <see cref="MemberNames"/>.</summary>
    public IJsonTypeInfoResolver Names
    {
        init => options = new(Options) { TypeInfoResolver = value };
    }

    /// <summary>The document's text, in the newest version.</summary>
    public string Write(T value)
    {
        var members = JsonSerializer.SerializeToNode(value, options)!.AsObject();
        members.Insert(0, "format", name);
        members.Insert(1, "version", upgrades.Length);
        return members.ToJsonString(options);
    }

    /// <summary>Reads a document of any version up to the newest.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public T Read(string text)
    {
        try
        {
            return ReadNode(JsonNode.Parse(text) ?? throw new JsonException("it is empty"));
        }
        catch (Exception problem)
            when (problem is JsonException or InvalidOperationException or FormatException or KeyNotFoundException)
        {
            throw new StoredDocumentException(name, $"is damaged: {problem.Message.TrimEnd('.')}", problem);
        }
    }

    /// <summary>Whether a text is a document of the newest version.</summary>
    public bool IsNewest(string text) => JsonNode.Parse(text) is { } node && VersionOf(node) == upgrades.Length;

    private T ReadNode(JsonNode node)
    {
        var version = VersionOf(node);
        if (version > upgrades.Length)
            throw new StoredDocumentException(name, $"has version {version}, and this program reads up to {upgrades.Length}");
        foreach (var upgrade in upgrades.Skip(version))
            node = upgrade(node);
        var members = node.AsObject();
        members.Remove("format");
        members.Remove("version");
        return members.Deserialize<T>(options)!;
    }

    private int VersionOf(JsonNode node) =>
        node is JsonObject members
        && members["format"] is JsonValue format
        && format.TryGetValue<string>(out var given)
        && given == name
            ? members["version"]!.GetValue<int>()
            : 0;
}
