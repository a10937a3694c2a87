using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A top of sheet goods, with edging of solid wood where wanted.</summary>
internal sealed class SheetTop : ITop
{
    public KindInfo Info { get; } =
        new(
            "sheet-top",
            "Sheet top",
            "A top of sheet goods, edged with solid wood if you like.",
            [
                new("material", "Material", MemberType.Role, null),
                new("layers", "Layers", MemberType.Choice, "1", "1", "2"),
                new("edging", "Edging", MemberType.Role, ""),
                .. EdgeAsked.ThinMembers("Edges without edging"),
                .. Tops.OverhangMembers,
            ]
        );

    public Length Thickness(NodeReader members) => members.Role("material").Thickness * Layers(members);

    public Overhang Overhang(NodeReader members) => Tops.Overhang(members);

    public void Build(NodeReader members, Outside outside, Builder builder)
    {
        var (material, edging) = (members.Role("material"), members.MaybeRole("edging"));
        if (members.Failed)
            return;
        var whole = Tops.Whole(outside, material.Thickness * Layers(members));
        var edge = edging?.Thickness ?? Length.Zero;
        var bare = EdgeAsked.Read(members, material);
        if (edging is not null && bare.Work is not null)
            members.Fail("edge", members.Choice("edge"), "can't be: solid edging covers these edges, so leave them plain");
        if (bare.Work is not null && Layers(members) > 1)
            members.Fail("edge", members.Choice("edge"), "is for one layer: leave it plain, and give a doubled top solid edging");
        if (edging?.Width is { } wide && wide < whole.Dz)
            members.Fail("edging", edging.Name, "is narrower than the top is thick: use a wider board");
        if (members.Failed)
            return;
        var sheets = Enumerable
            .Range(0, Layers(members))
            .Select(i => builder.Add(Sheet(outside, material, whole, edge, whole.Z + (material.Thickness * i))))
            .ToList();
        Fasten(sheets[0], builder);
        foreach (var sheet in sheets.Skip(1))
            builder.Join(JointKind.Glued, sheet, sheets[0], Axis.Z);
        foreach (var sheet in sheets)
            EdgeMaker.TreatAll(sheet, bare, builder);
        if (edging is not null)
            Edge(edging, whole, edge, sheets, builder);
    }

    private static int Layers(NodeReader members) => members.Choice("layers") == "2" ? 2 : 1;

    private static Draft Sheet(Outside outside, RoleMaterial material, Box whole, Length edge, Length z) =>
        new(
            "Top",
            "Top",
            material,
            whole.Grown(Axis.X, -edge, -edge).Grown(Axis.Y, -edge, -edge).With(Axis.Z, z, z + material.Thickness),
            Axis.X,
            Axis.Z
        )
        {
            Length = Less("Length of the top", outside.Width, edge),
            Width = Less("Width of the top", outside.Depth, edge),
            FacesToFinish = "both faces",
        };

    // From below, so that no screw is seen: up through what lies flat, from pockets in what stands on edge, else with clips.
    private static void Fasten(Draft top, Builder builder)
    {
        var below = Tops.Under(builder, top.Box).ToList();
        if (below.Count == 0)
            builder.WarnOfNothing(top, "", "Its edging alone lies on the frame: use a wider overhang, or thicker rails.");
        foreach (var under in below)
            if (under.Flat == Axis.Z && ButtJoint.TakesScrews(under, top, Axis.Z))
                builder.Join(JointKind.Screwed, under, top, Axis.Z);
            else if (ButtJoint.TakesPockets(under, top, Axis.Z))
                builder.Join(JointKind.PocketScrew, under, top, Axis.Z);
            else
                builder.Join(JointKind.Slotted, top, under, Axis.Z);
    }

    private static Working<Length> Less(string name, Working<Length> whole, Length edge) =>
        edge == Length.Zero
            ? whole
            : Working.Of(
                name,
                whole.Value - (edge * 2),
                "{whole} − 2 × {edging}",
                Working.Geometry,
                ("whole", whole),
                ("edging", Working.Given("edging", edge))
            );

    private static void Edge(RoleMaterial edging, Box whole, Length edge, IReadOnlyList<Draft> sheets, Builder builder)
    {
        void Add(string name, Box box, Axis along, Axis flat)
        {
            var strip = builder.Add(new(name, "Top", edging, box, along, flat) { FacesToFinish = "outer face, edges" });
            foreach (var sheet in sheets)
                builder.Join(JointKind.Glued, strip, sheet, flat);
        }

        foreach (var y in new[] { whole.Y, whole.EndY - edge })
            Add("Long edging", whole.With(Axis.Y, y, y + edge), Axis.X, Axis.Y);
        foreach (var x in new[] { whole.X, whole.EndX - edge })
            Add("End edging", whole.With(Axis.X, x, x + edge).Grown(Axis.Y, -edge, -edge), Axis.Y, Axis.X);
    }
}

/// <summary>What tops have in common.</summary>
internal static class Tops
{
    public static readonly MemberInfo[] OverhangMembers =
    [
        new("overhang_ends", "Overhang at each end", MemberType.Length, "0 in"),
        new("overhang_front", "Overhang in front", MemberType.Length, "0 in"),
        new("overhang_back", "Overhang behind", MemberType.Length, "0 in"),
    ];

    public static Overhang Overhang(NodeReader members) =>
        new(members.Length("overhang_ends").Value, members.Length("overhang_front").Value, members.Length("overhang_back").Value);

    public static Box Whole(Outside outside, Length thickness) =>
        Box.Between(
            Length.Zero,
            Length.Zero,
            outside.Height.Value - thickness,
            outside.Width.Value,
            outside.Depth.Value,
            outside.Height.Value
        );

    /// <summary>Rails and panels that touch the top from below; legs are left alone, which stand with their end grain
    /// up.</summary>
    public static IEnumerable<Draft> Under(Builder builder, Box top) =>
        builder.Touching(top, Axis.Z, false).Where(one => one.Along != Axis.Z);
}
