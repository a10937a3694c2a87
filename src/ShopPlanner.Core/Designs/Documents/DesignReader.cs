using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>Reads the members of a design one by one.</summary>
internal sealed class DesignReader(JsonNode root, List<Fault> faults)
{
    private const int MostBayDepth = 8;

    internal static readonly Dictionary<string, MaterialForm> Forms = new()
    {
        ["board"] = MaterialForm.Board,
        ["sheet"] = MaterialForm.Sheet,
    };
    internal static readonly Dictionary<string, Axis> Directions = new()
    {
        ["x"] = Axis.X,
        ["y"] = Axis.Y,
        ["z"] = Axis.Z,
    };
    internal static readonly Dictionary<string, BoxSide> Sides = Enum.GetValues<BoxSide>().ToDictionary(Export.Words.Side);
    internal static readonly Dictionary<string, bool> Grains = new() { ["length"] = false, ["any"] = true };
    internal static readonly Dictionary<string, JointKind> Joints = Enum.GetValues<JointKind>().ToDictionary(Export.Words.Joint);
    private static readonly Dictionary<string, bool> DimensionKinds = new() { ["length"] = false, ["count"] = true };

    private readonly LengthUnit unit = root["unit"].OneOf(DocumentWords.Units, LengthUnit.Inch);

    public DesignDocument Read()
    {
        root.Only(
            "format",
            "version",
            "unit",
            "name",
            "says",
            "dimensions",
            "materials",
            "frame",
            "bays",
            "top",
            "parts",
            "shapes",
            "hardware",
            "steps"
        );
        return new(
            root["name"].Required(),
            root["says"].Text() ?? "",
            unit,
            Once([.. root["dimensions"].Items().Select(Dimension)], one => one.Name, "dimensions"),
            Once([.. root["materials"].Items().Select(Material)], one => one.Role, "materials"),
            Node(root["frame"]),
            root["bays"].Present ? Bay(root["bays"], 0) : null,
            root["top"].Present ? Node(root["top"]) : null,
            [.. root["parts"].Items().Select(Part)],
            [.. root["hardware"].Items().Select(Hardware)],
            [.. root["steps"].Items().Select(one => one.Words())]
        )
        {
            Shapes = [.. root["shapes"].Items().Select(one => new AppliedShape(one["of"].Required(), KindNode(one, "of")))],
        };
    }

    private ImmutableArray<T> Once<T>(ImmutableArray<T> items, Func<T, string> name, string path)
    {
        foreach (var twice in items.GroupBy(name).Where(group => group.Count() > 1))
            faults.Add(Fault.Of(path, twice.Key, "is named twice: use each name once"));
        return items;
    }

    private DesignDimension Dimension(JsonNode node)
    {
        node.Only("name", "label", "kind", "value", "least", "most");
        var name = node["name"].Required();
        if (name.Length > 0 && !DimensionName.IsName(name))
            node["name"].Fail("isn't a name: use lowercase letters, digits and underscores, a letter first");
        return new(
            name,
            node["label"].Text() ?? name,
            node["kind"].OneOf(DimensionKinds, false),
            node["value"].Required(),
            node["least"].Text(),
            node["most"].Text()
        );
    }

    private RoleMaterial Material(JsonNode node)
    {
        node.Only("role", "material", "name", "form", "thickness", "width", "species");
        var form = node["form"].OneOf(Forms, MaterialForm.Sheet);
        var width = Size(node["width"]);
        if (form == MaterialForm.Board && width is null && !node["width"].Present)
            node["width"].Fail("is missing: a board needs a width");
        if (form == MaterialForm.Sheet && node["width"].Present)
            node["width"].Fail("belongs to a board: a sheet has no width of its own");
        return new(
            node["role"].Required(),
            node["material"].Text(),
            node["name"].Text() ?? node["role"].Required(),
            form,
            Size(node["thickness"], true) ?? Length.FromInches(1),
            form == MaterialForm.Board ? width : null,
            node["species"].Text()
        );
    }

    private Length? Size(JsonNode node, bool required = false)
    {
        var text = required ? node.Required() : node.Text();
        if (string.IsNullOrEmpty(text))
            return null;
        var read = LengthText.ParsePositive(text, unit);
        if (read.Ok)
            return read.Value;
        faults.Add(read.Fault.At(node.Path));
        return null;
    }

    private static DesignNode Node(JsonNode node) => KindNode(node, "kind");

    // A kind with its members; one that says where it belongs is no member of the kind.
    private static DesignNode KindNode(JsonNode node, string beside)
    {
        var members = node.Members().Where(one => one.Name != "kind" && one.Name != beside).ToList();
        return new(
            node["kind"].Required(),
            members.DistinctBy(one => one.Name).ToImmutableDictionary(one => one.Name, one => one.Value.Text() ?? ""),
            node.Path
        );
    }

    private static BayNode Bay(JsonNode node, int depth)
    {
        node.Only("fills", "split", "sizes", "bays");
        if (depth > MostBayDepth)
            node.Fail($"is nested too deeply: at most {MostBayDepth} bays in bays");
        ImmutableArray<BayNode> bays = depth > MostBayDepth ? [] : [.. node["bays"].Items().Select(one => Bay(one, depth + 1))];
        ImmutableArray<string> sizes = [.. node["sizes"].Items().Select(one => one.Required())];
        if (sizes.IsEmpty && !bays.IsEmpty)
            sizes = [.. bays.Select(_ => "*")];
        if (sizes.Length != bays.Length)
            node["sizes"].Fail($"has {sizes.Length} sizes for {bays.Length} bays: give one for each");
        if (node["split"].Present == bays.IsEmpty)
            node["split"].Fail("goes with bays: a split needs two or more bays, and bays need a split");
        return new(
            [.. node["fills"].Items().Select(Node)],
            node["split"].Present ? Node(node["split"]) : null,
            sizes,
            bays,
            node.Path
        );
    }

    private FreePart Part(JsonNode node)
    {
        node.Only("name", "material", "length", "width", "along", "flat", "at", "repeat", "grain", "joints", "shapes", "edges");
        ImmutableArray<ImmutableArray<string>> at = [.. node["at"].Items().Select(Corner)];
        if (at.IsEmpty)
            node["at"].Fail("is missing: give a list of corners, each [x, y, z]");
        return new(
            node["name"].Required(),
            node["material"].Required(),
            node["length"].Required(),
            node["width"].Text(),
            node["along"].OneOf(Directions, Axis.X),
            node["flat"].OneOf(Directions, Axis.Z),
            at,
            node.Path
        )
        {
            Repeat = node["repeat"].Present ? Repeat(node["repeat"]) : null,
            AnyGrain = node["grain"].OneOf(Grains, false),
            Joints = [.. node["joints"].Items().Select(Joint)],
            Shapes = [.. node["shapes"].Items().Select(Node)],
            Edges = [.. node["edges"].Items().Select(Node)],
        };
    }

    private static PartRepeat Repeat(JsonNode node)
    {
        node.Only("count", "step");
        return new(node["count"].Required(), Corner(node["step"]));
    }

    private static PartJoint Joint(JsonNode node)
    {
        node.Only("with", "kind", "along", "depth");
        if (!node["kind"].Present)
            node["kind"].Fail("is missing: it is one of " + string.Join(", ", Joints.Keys));
        if (!node["along"].Present)
            node["along"].Fail("is missing: say whether they meet along x, y or z");
        return new(
            node["with"].Required(),
            node["kind"].OneOf(Joints, JointKind.Glued),
            node["along"].OneOf(Directions, Axis.X),
            node["depth"].Text(),
            node.Path
        );
    }

    private static ImmutableArray<string> Corner(JsonNode node)
    {
        ImmutableArray<string> corner = [.. node.Items().Select(one => one.Required())];
        if (corner.Length == 3)
            return corner;
        node.Fail("isn't a corner: write [x, y, z]");
        return ["0", "0", "0"];
    }

    private static HardwareEntry Hardware(JsonNode node)
    {
        node.Only("name", "quantity");
        return new(node["name"].Required(), node["quantity"].Required(), node.Path);
    }
}
