using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
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
                new("edging", "Edging", MemberType.Role, ""),
                .. Tops.OverhangMembers,
            ]
        );

    public Length Thickness(NodeReader members) => members.Role("material").Thickness;

    public Overhang Overhang(NodeReader members) => Tops.Overhang(members);

    public void Build(NodeReader members, Outside outside, Builder builder)
    {
        var (material, edging) = (members.Role("material"), members.MaybeRole("edging"));
        if (members.Failed)
            return;
        var whole = Tops.Whole(outside, material.Thickness);
        var edge = edging?.Thickness ?? Length.Zero;
        var box = whole.Grown(Axis.X, -edge, -edge).Grown(Axis.Y, -edge, -edge);
        var top = builder.Add(
            new("Top", "Top", material, box, Axis.X, Axis.Z)
            {
                Length = Less("Length of the top", outside.Width, edge),
                Width = Less("Width of the top", outside.Depth, edge),
                FacesToFinish = "both faces",
            }
        );
        foreach (var under in Tops.Under(builder, whole))
            builder.Join(JointKind.Screwed, top, under, Axis.Z);
        if (edging is not null)
            Edge(edging, whole, edge, top, builder);
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

    private static void Edge(RoleMaterial edging, Box whole, Length edge, Draft top, Builder builder)
    {
        void Add(string name, Box box, Axis along, Axis flat) =>
            builder.Join(
                JointKind.Glued,
                builder.Add(new(name, "Top", edging, box, along, flat) { FacesToFinish = "outer face, edges" }),
                top,
                flat
            );
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
