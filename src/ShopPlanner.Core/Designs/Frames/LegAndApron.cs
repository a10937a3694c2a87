using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Legs and aprons, with stretchers where wanted: a table, a desk, a bench.</summary>
internal sealed class LegAndApron : IFrame
{
    public KindInfo Info { get; } =
        new(
            "leg-and-apron",
            "Legs and aprons",
            "Four legs joined by aprons under the top, with stretchers below if you want them.",
            [
                new("leg", "Legs", MemberType.Role, null),
                new("wide_face", "Wide face of the legs", MemberType.Choice, "front", "front", "side"),
                new("apron", "Aprons", MemberType.Role, null),
                new("setback", "Aprons set back from the legs", MemberType.Length, "0 in"),
                .. RailJoint.Members,
                new("stretcher", "Stretchers", MemberType.Role, ""),
                new("stretcher_height", "Height of the stretchers", MemberType.Length, "4 in"),
                new("stretchers", "Where stretchers run", MemberType.Choice, "all", "all", "ends"),
                new("cross", "Cross rails under the top", MemberType.Count, "0"),
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        var (leg, apron, stretcher) = (members.Role("leg"), members.Role("apron"), members.MaybeRole("stretcher"));
        var (setback, height) = (members.Length("setback").Value, members.Length("stretcher_height").Value);
        var (wide, all) = (members.Choice("wide_face") == "front", members.Choice("stretchers") == "all");
        if (members.Failed)
            return null;
        var sizes = new LegSizes(leg, wide, outside);
        var thickest = Length.Max(apron.Thickness, stretcher?.Thickness ?? Length.Zero);
        var thinnest = Length.Min(apron.Thickness, stretcher?.Thickness ?? apron.Thickness);
        var crossing = CrossRails.Read(members, sizes, apron, setback);
        if (crossing is null || RailJoint.Read(members, sizes, setback, thickest, thinnest) is not { } joint)
            return null;
        var legs = sizes.AddLegs(builder, "Leg");
        var rails = new Rails(sizes, legs, apron, Tall(apron), setback, joint);
        Around(rails, "apron", outside.Height.Value - rails.Tall, true, builder);
        crossing.Add(outside.Height.Value - rails.Tall, rails.Tall, builder);
        if (stretcher is not null)
            Around(rails with { Material = stretcher, Tall = Tall(stretcher) }, "stretcher", height, all, builder);
        var low = stretcher is null ? Length.Zero : height + Tall(stretcher);
        return Under(sizes, low, outside.Height.Value - rails.Tall, legs);
    }

    /// <summary>Extent of a rail that stands on edge; a rail from a sheet is four inches wide (common practice).</summary>
    internal static Length Tall(RoleMaterial material) => material.Width ?? Length.FromInches(4);

    private static void Around(Rails rails, string name, Length z, bool all, Builder builder)
    {
        rails.Left("End " + name, z, builder);
        rails.Right("End " + name, z, builder);
        if (!all)
            return;
        rails.Front("Long " + name, z, builder);
        rails.Back("Long " + name, z, builder);
    }

    private static Bay Under(LegSizes sizes, Length low, Length high, Legs legs)
    {
        var box = Box.Between(sizes.Lx, Length.Zero, low, sizes.Width - sizes.Lx, sizes.Depth, high);
        return new(box, box.With(Axis.Y, Length.Zero, Length.Zero)) { Left = legs.FrontLeft, Right = legs.FrontRight };
    }
}
