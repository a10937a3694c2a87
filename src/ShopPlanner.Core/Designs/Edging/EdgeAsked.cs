using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Edging;

/// <summary>How an edge is to be treated.</summary>
/// <param name="Work">What is done; null where the edge stays as it is cut.</param>
/// <param name="Wood">Of a lipping or strip; null for the others.</param>
/// <param name="Radius">Of a round-over.</param>
internal sealed record EdgeAsked(EdgeWork? Work, RoleMaterial? Wood, Length Radius)
{
    private const string Usual = "plain";

    /// <summary>An edge as it is cut.</summary>
    public static readonly EdgeAsked Plain = new(null, null, Length.Zero);

    /// <summary>Members of a shelf.</summary>
    public static readonly MemberInfo[] ShelfMembers =
    [
        new("edge", "Front edge", MemberType.Choice, Usual, Usual, "band", "lipping", "strip", "round"),
        new("edge_material", "Lipping or strip", MemberType.Role, ""),
        RadiusMember,
    ];

    /// <summary>Members of an upright panel, which no strip stiffens.</summary>
    public static readonly MemberInfo[] UprightMembers =
    [
        new("edge", "Front edge", MemberType.Choice, Usual, Usual, "band", "lipping", "round"),
        new("edge_material", "Lipping", MemberType.Role, ""),
        RadiusMember,
    ];

    /// <summary>Members of what has no room for a lipping.</summary>
    public static MemberInfo[] ThinMembers(string label) =>
        [new("edge", label, MemberType.Choice, Usual, Usual, "band", "round"), RadiusMember];

    private static MemberInfo RadiusMember => new("edge_radius", "Radius of a rounded edge", MemberType.Length, "1/8 in");

    /// <summary>How much narrower the panel is.</summary>
    public Length Takes => Work is EdgeWork.Lipping or EdgeWork.Strip ? Wood!.Thickness : Length.Zero;

    /// <summary>Depth of a panel that is set back from the front and edged there.</summary>
    /// <param name="name">Of the depth.</param>
    /// <param name="clear">Depth of the space it fills.</param>
    /// <param name="setback">From the front of that space.</param>
    public Working<Length> Depth(string name, Length clear, Working<Length> setback)
    {
        (string, Working)[] inputs = [("clear", Working.Given("Clear depth", clear)), ("setback", setback)];
        return Takes.IsPositive
            ? Working.Of(
                name,
                clear - setback.Value - Takes,
                "{clear} − {setback} − {edging}",
                Working.Geometry,
                [.. inputs, ("edging", Working.Given("edging", Takes))]
            )
            : Working.Of(name, clear - setback.Value, "{clear} − {setback}", Working.Geometry, inputs);
    }

    /// <summary>What of the panel itself is seen, where this is done to the edge named.</summary>
    /// <param name="faces">As for a panel without edging: <c>both faces, front edge</c>.</param>
    /// <param name="edge">The edge: <c>front edge</c>.</param>
    public string Seen(string faces, string edge) =>
        Takes.IsPositive ? faces.Replace(", " + edge, "", StringComparison.Ordinal) : faces;

    /// <summary>Reads the members of a fill or frame.</summary>
    /// <param name="members">Its members.</param>
    /// <param name="panel">What is edged.</param>
    public static EdgeAsked Read(NodeReader members, RoleMaterial panel) =>
        Read(members.Choice("edge"), members, panel, "edge_material", "edge_radius");

    /// <summary>Reads how an edge is treated; a plain edge where that can't be made, and the fault says why.</summary>
    /// <param name="work">What is done, as in a document.</param>
    /// <param name="members">Its members.</param>
    /// <param name="panel">What is edged.</param>
    /// <param name="wood">Member that names the wood.</param>
    /// <param name="radius">Member that has the radius.</param>
    public static EdgeAsked Read(string work, NodeReader members, RoleMaterial panel, string wood, string radius) =>
        (
            work switch
            {
                "band" => Plain with { Work = EdgeWork.Band },
                "round" => Plain with { Work = EdgeWork.RoundOver, Radius = members.Length(radius).Value },
                "lipping" => Plain with { Work = EdgeWork.Lipping, Wood = members.MaybeRole(wood) },
                "strip" => Plain with { Work = EdgeWork.Strip, Wood = members.MaybeRole(wood) },
                _ => Plain,
            }
        ).Checked(members, panel, wood, radius);

    private EdgeAsked Checked(NodeReader members, RoleMaterial panel, string wood, string radius)
    {
        if (members.Failed)
            return Plain;
        string Text(Length length) => LengthFormat.WithUnit(length, members.Unit);
        var high = panel.Thickness;
        if (Work is EdgeWork.Lipping or EdgeWork.Strip && Wood is null)
            members.Fail(wood, "", "is missing: pick the material that the edge is made of");
        else if (Work == EdgeWork.Lipping && Wood!.Width < high)
            members.Fail(wood, Wood.Name, $"is narrower than the edge is high: at least {Text(high)} wide");
        else if (Work == EdgeWork.Strip && Wood is not { Form: MaterialForm.Board, Width: { } })
            members.Fail(wood, Wood!.Name, "has no width of its own: pick a board, as wide as the strip is high");
        else if (Work == EdgeWork.Strip && Wood!.Width <= high)
            members.Fail(wood, Wood.Name, $"stiffens nothing: pick a board wider than the panel is thick, {Text(high)}");
        else if (Work == EdgeWork.RoundOver && (!Radius.IsPositive || Radius * 2 > high))
            members.Fail(
                radius,
                Text(Radius),
                $"must be more than zero and at most half of the thickness, {Text(Length.FromTicks(high.Ticks / 2))}"
            );
        return members.Failed ? Plain : this;
    }
}
