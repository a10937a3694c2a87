using System.Text.Json;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Documents;

namespace ShopPlanner.Core.Designs.Listing;

/// <summary>All kinds that a design can name, as JSON: <c>places[]</c> with <c>kinds[]</c>, each with its <c>members[]</c> and an
/// <c>example</c>, a whole document.</summary>
public static class KindJson
{
    /// <summary>The document, ended by a line feed.</summary>
    public static string Write() => JsonOutput.Object(writer => writer.List("places", KindPlace.All, Place));

    private static void Place(Utf8JsonWriter writer, KindPlace place)
    {
        writer.WriteString("member", place.Member);
        writer.WriteString("says", place.Says);
        writer.List("kinds", place.Kinds, (inner, kind) => Kind(inner, place, kind));
    }

    private static void Kind(Utf8JsonWriter writer, KindPlace place, KindInfo kind)
    {
        writer.WriteString("kind", kind.Name);
        writer.WriteString("title", kind.Title);
        writer.WriteString("says", kind.Says);
        writer.List("members", kind.Members, Member);
        var example = KindExample.Of(place, kind);
        writer.WritePropertyName("node");
        writer.WriteRawValue(example.Node);
        writer.WritePropertyName("example");
        writer.WriteRawValue(example.Document);
    }

    private static void Member(Utf8JsonWriter writer, MemberInfo member)
    {
        writer.WriteString("name", member.Name);
        writer.WriteString("label", member.Label);
        writer.WriteString("takes", Takes(member.Type));
        writer.WriteBoolean("required", member.Default is null);
        if (member.Default is { Length: > 0 } usual)
            writer.WriteString("default", usual);
        if (member.Type == MemberType.Choice)
            writer.Texts("choices", member.Choices.Where(one => one.Length > 0));
    }

    private static string Takes(MemberType type) =>
        type switch
        {
            MemberType.Choice => "choice",
            MemberType.Role => "role",
            MemberType.Count => "count",
            MemberType.Angle => "angle",
            _ => "length",
        };
}
