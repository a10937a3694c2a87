using System.Text.Json.Serialization.Metadata;

namespace ShopPlanner.Services.Storage.Documents;

/// <summary>Names in a document of the members of a record that the code uses elsewhere too, so that it is stored as it is and
/// may still be renamed.</summary>
internal static class MemberNames
{
    /// <summary>Returns what names the members of <typeparamref name="T"/>, and asks for all of them.</summary>
    /// <param name="names">Each member's name in the code and in the document, all of them.</param>
    public static IJsonTypeInfoResolver Of<T>(params (string Member, string Name)[] names)
    {
        var byMember = names.ToDictionary(one => one.Member, one => one.Name);
        return new DefaultJsonTypeInfoResolver { Modifiers = { info => Rename<T>(info, byMember) } };
    }

    private static void Rename<T>(JsonTypeInfo info, Dictionary<string, string> names)
    {
        if (info.Type != typeof(T))
            return;
        foreach (var property in info.Properties)
        {
            property.Name = names.GetValueOrDefault(property.Name) ?? throw Unnamed(info, property);
            property.IsRequired = true;
        }
    }

    // Stored without it, a record would lose what it holds.
    private static NotSupportedException Unnamed(JsonTypeInfo info, JsonPropertyInfo property) =>
        new($"{info.Type.Name}.{property.Name} has no name in documents: give it one, in a new version of the format");
}
