using System.Globalization;
using System.Text;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Core.Designs.Listing;

/// <summary>All kinds that a design can name, with their members and an example each, as Markdown: a section of the format's
/// description, and what the command line prints.</summary>
public static class KindText
{
    /// <summary>The section, ended by a line feed.</summary>
    public static string Write()
    {
        var text = new StringBuilder();
        foreach (var place in KindPlace.All)
        {
            text.Append(CultureInfo.InvariantCulture, $"### {place.Title}: `{place.Member}`\n{place.Says}\n\n");
            foreach (var kind in place.Kinds)
                Kind(text, place, kind);
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static void Kind(StringBuilder text, KindPlace place, KindInfo kind)
    {
        text.Append(CultureInfo.InvariantCulture, $"**`{kind.Name}`** {kind.Title}. {kind.Says}\n\n");
        if (!kind.Members.IsEmpty)
        {
            text.Append("| member | takes | if absent | meaning |\n| --- | --- | --- | --- |\n");
            foreach (var member in kind.Members)
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"| `{member.Name}` | {Takes(member)} | {Absent(member)} | {member.Label} |\n"
                );
            text.Append('\n');
        }

        text.Append(CultureInfo.InvariantCulture, $"`{KindExample.Of(place, kind).Node}`\n\n");
    }

    private static string Takes(MemberInfo member) =>
        member.Type switch
        {
            MemberType.Choice => string.Join(", ", member.Choices.Where(one => one.Length > 0).Select(one => $"`{one}`")),
            MemberType.Role => "a role",
            MemberType.Count => "a whole number",
            MemberType.Angle => "degrees",
            _ => "a length",
        };

    private static string Absent(MemberInfo member) =>
        member.Default switch
        {
            null => "required",
            "" => "none",
            { } usual => $"`{usual}`",
        };
}
