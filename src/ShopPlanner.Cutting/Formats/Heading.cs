using System.Globalization;
using System.Text.Json;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Opens a document: is it of the right format, of a version that is known, and in which unit?</summary>
internal static class Heading
{
    /// <summary>The members of the document, lengths in its unit; null when it is another document altogether.</summary>
    public static Members? Open(JsonElement root, string format, FaultList faults)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            faults.Add(JsonValue.Wrong(root, $"is not a {format} document: an object is wanted"));
            return null;
        }

        var members = new Members(root, "", faults, LengthUnit.Inch);
        if (!IsFormat(members, format) || !IsVersion(members)) return null;
        return members.In(members.Choice("unit", Words.Unit, null));
    }

    private static bool IsFormat(Members members, string format)
    {
        var given = members.Text("format");
        if (given == format) return true;
        members.Refuse("format", given, $"is another format: \"{format}\" is wanted");
        return false;
    }

    private static bool IsVersion(Members members)
    {
        var version = members.Count("version", 1, int.MaxValue);
        if (version > Words.Version)
            members.Refuse("version", version.ToString(CultureInfo.InvariantCulture),
                "is a later version than this program reads (1): a newer program is needed");
        return !members.Faults.Any;
    }
}
