using System.Collections.Immutable;
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
        ["shelf"] = "apron",
        ["head"] = "apron",
    }.ToImmutableDictionary(StringComparer.Ordinal);

    private static readonly string[] Materials =
    [
        Sheet("ply", "3/4"),
        Sheet("half", "1/2"),
        Sheet("thin", "1/4"),
        Board("post", "2x2", "1 1/2", "1 1/2"),
        Board("beam", "2x4", "1 1/2", "3 1/2"),
        Board("strip", "1x2", "3/4", "1 1/2"),
        Board("rail", "1x3", "3/4", "2 1/2"),
        Board("apron", "1x6", "3/4", "5 1/2"),
    ];

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
            .Concat(
                kind.Members.Where(one => setting.Members.ContainsKey(one.Name))
                    .Select(one => (one.Name, Text: setting.Members[one.Name]))
            )
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
                parts = kind.Name == "none" ? FreeBoard("") : "";
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
                parts = FreeBoard($", \"{place.Member.Split('.')[^1].TrimEnd('[', ']')}\": [ {node} ]");
                break;
        }

        if (place.Member.StartsWith("parts", StringComparison.Ordinal))
            frame = "{ \"kind\": \"none\" }";
        return Text(setting, frame, bays + top + parts);
    }

    // A shelf of the outside size that lies flat.
    private static string FreeBoard(string more) =>
        ", \"parts\": [ { \"name\": \"Shelf\", \"material\": \"ply\", \"length\": \"width\", \"width\": \"depth\", "
        + $"\"along\": \"x\", \"flat\": \"z\", \"at\": [ [ \"0 in\", \"0 in\", \"0 in\" ] ]{more} }} ]";

    private static string Text(ExampleSetting setting, string frame, string rest)
    {
        var sizes = new[] { ("width", setting.Size.Wide), ("depth", setting.Size.Deep), ("height", setting.Size.High) }.Select(
            one => FormattableString.Invariant($"{{ \"name\": \"{one.Item1}\", \"value\": \"{one.Item2}\" }}")
        );
        return $$"""
            {
              "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Example",
              "dimensions": [ {{string.Join(", ", sizes)}} ],
              "materials": [
                {{string.Join(",\n    ", Materials)}}
              ],
              "frame": {{frame}}{{rest}}
            }
            """;
    }

    private static string Sheet(string role, string thickness) =>
        $"{{ \"role\": \"{role}\", \"name\": \"Plywood {thickness}\", \"form\": \"sheet\", \"thickness\": \"{thickness}\", "
        + "\"species\": \"plywood\" }";

    private static string Board(string role, string nominal, string thickness, string width) =>
        $"{{ \"role\": \"{role}\", \"name\": \"Pine {nominal}\", \"form\": \"board\", \"thickness\": \"{thickness}\", "
        + $"\"width\": \"{width}\", \"species\": \"pine-eastern-white\" }}";
}
