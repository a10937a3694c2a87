using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Core.Designs.Listing;

/// <summary>An example of a kind: the node by itself, and a whole document around it that can be worked out.</summary>
/// <param name="Node">One line of JSON: <c>{ "kind": "doors", … }</c>.</param>
/// <param name="Document">The design, as JSON.</param>
public sealed record KindExample(string Node, string Document)
{
    // Roles of the document by the member that takes one; every other member takes plywood.
    private static readonly ImmutableDictionary<string, string> Roles = new Dictionary<string, string>
    {
        ["leg"] = "post",
        ["post"] = "post",
        ["rail"] = "rail",
        ["apron"] = "apron",
        ["stretcher"] = "rail",
        ["low_rail"] = "rail",
        ["slat"] = "rail",
        ["door"] = "rail",
        ["cleat"] = "strip",
        ["ledger"] = "strip",
        ["edging"] = "strip",
        ["edge_material"] = "strip",
        ["beam"] = "beam",
        ["back"] = "thin",
        ["panel"] = "thin",
        ["bottom"] = "thin",
        ["box"] = "half",
        ["shelf"] = "board",
        ["head"] = "board",
    }.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>The example of a kind.</summary>
    /// <param name="place">Where it is named.</param>
    /// <param name="kind">The kind.</param>
    public static KindExample Of(KindPlace place, KindInfo kind)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(kind);
        var setting = ExampleSetting.Of(kind.Name);
        var members = kind
            .Members.Where(one => one.Default is null && !setting.Members.ContainsKey(one.Name))
            .Select(one => (one.Name, Text: Usual(one)))
            .Concat(kind.Members.Where(one => setting.Members.ContainsKey(one.Name)).Select(one => (one.Name, setting.Members[one.Name])))
            .Select(one => $", \"{one.Name}\": \"{one.Text}\"");
        var node = $"{{ \"kind\": \"{kind.Name}\"{string.Concat(members)} }}";
        return new(node, Whole(place, kind, node, setting));
    }

    private static string Usual(MemberInfo member) =>
        member.Type switch
        {
            MemberType.Role => Roles.GetValueOrDefault(member.Name, "ply"),
            MemberType.Choice => member.Choices.First(one => one.Length > 0),
            MemberType.Count => "2",
            MemberType.Angle => "45",
            _ => "1 in",
        };

    private static string Whole(KindPlace place, KindInfo kind, string node, ExampleSetting setting)
    {
        var (frame, bays, top, parts) = (setting.Frame, "", "", "");
        switch (place.Member)
        {
            case "frame":
                frame = node;
                parts = kind.Name == "none" ? Board("") : "";
                break;
            case "bays.split":
                bays = $", \"bays\": {{ \"split\": {node}, \"bays\": [ {{}}, {{}} ] }}";
                break;
            case "bays.fills[]":
                bays = $", \"bays\": {{ \"fills\": [ {node} ] }}";
                break;
            case "top":
                top = $", \"top\": {node}";
                break;
            default:
                parts = Board($", \"{place.Member.Split('.')[^1].TrimEnd('[', ']')}\": [ {node} ]");
                break;
        }

        return Text(setting, place.Member.StartsWith("parts", StringComparison.Ordinal) ? "{ \"kind\": \"none\" }" : frame, bays + top + parts);
    }

    // A shelf of the outside size that lies flat.
    private static string Board(string more) =>
        ", \"parts\": [ { \"name\": \"Shelf\", \"material\": \"ply\", \"length\": \"width\", \"width\": \"depth\", "
        + $"\"along\": \"x\", \"flat\": \"z\", \"at\": [ [ \"0 in\", \"0 in\", \"0 in\" ] ]{more} }} ]";

    private static string Text(ExampleSetting setting, string frame, string rest)
    {
        var (wide, deep, high) = setting.Size;
        return string.Create(
            CultureInfo.InvariantCulture,
            $$"""
            {
              "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Example",
              "dimensions": [
                { "name": "width", "value": "{{wide}}" }, { "name": "depth", "value": "{{deep}}" }, { "name": "height", "value": "{{high}}" }
              ],
              "materials": [
                { "role": "ply", "name": "Plywood 3/4", "form": "sheet", "thickness": "3/4", "species": "plywood" },
                { "role": "half", "name": "Plywood 1/2", "form": "sheet", "thickness": "1/2", "species": "plywood" },
                { "role": "thin", "name": "Plywood 1/4", "form": "sheet", "thickness": "1/4", "species": "plywood" },
                { "role": "post", "name": "Whitewood 2x2", "form": "board", "thickness": "1 1/2", "width": "1 1/2", "species": "spruce-pine-fir" },
                { "role": "beam", "name": "Whitewood 2x4", "form": "board", "thickness": "1 1/2", "width": "3 1/2", "species": "spruce-pine-fir" },
                { "role": "strip", "name": "Pine 1x2", "form": "board", "thickness": "3/4", "width": "1 1/2", "species": "pine-eastern-white" },
                { "role": "rail", "name": "Pine 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2", "species": "pine-eastern-white" },
                { "role": "apron", "name": "Pine 1x6", "form": "board", "thickness": "3/4", "width": "5 1/2", "species": "pine-eastern-white" },
                { "role": "board", "name": "Pine 1x6", "form": "board", "thickness": "3/4", "width": "5 1/2", "species": "pine-eastern-white" }
              ],
              "frame": {{frame}}{{rest}}
            }
            """
        );
    }
}
