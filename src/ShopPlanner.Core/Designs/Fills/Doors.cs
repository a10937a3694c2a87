using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Doors across the opening of a bay: frame and panel, slab or glass, one leaf or two or a flap, in the opening or on
/// the face around it.</summary>
internal sealed class Doors : IFill
{
    public KindInfo Info { get; } =
        new(
            "doors",
            "Doors",
            "One or two doors or a flap: frame-and-panel, slab or glass, inset in the opening or overlay on the face.",
            [
                new("make", "Construction", MemberType.Choice, "frame", "frame", "slab", "glass"),
                new("material", "Stiles and rails, or slab", MemberType.Role, null),
                new("panel", "Panels", MemberType.Role, ""),
                new("leaves", "Doors", MemberType.Count, "1"),
                new("hang", "Hinged", MemberType.Choice, "sides", "sides", "below", "above"),
                new("fit", "Fit", MemberType.Choice, "overlay", "overlay", "inset"),
                new("gap", "Gap", MemberType.Length, "3/32 in"),
                new("overlay", "Overlay at each side", MemberType.Length, "1/2 in"),
                new("stile", "Stile and rail width (sheet stock)", MemberType.Length, "2 1/4 in"),
                new("groove", "Depth of the groove", MemberType.Length, "3/8 in"),
                new("clearance", "Clearance for the panel or glass at each side", MemberType.Length, "1/16 in"),
                new("cut_long", "Stiles cut long by", MemberType.Length, "1/2 in"),
                .. GlassAsked.Members,
                .. EdgeAsked.ThinMembers("Edges of a slab"),
            ]
        );

    public bool Closes => true;

    public bool HasFront => true;

    public Length StandsOut(NodeReader members) =>
        members.Choice("fit") == "overlay" ? members.Role("material").Thickness : Length.Zero;

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var asked = DoorsAsked.Read(members);
        if (asked is null || !asked.Fits(members, bay))
            return bay;
        var sizes = asked.Sizes(bay);
        if (!asked.Holds(members, sizes))
            return bay;
        var maker = new DoorMaker(asked, sizes, bay, builder);
        for (var leaf = 0; leaf < asked.Leaves; leaf++)
            maker.Add(leaf);
        new DoorHanger(asked, sizes, bay, builder).Hang(maker.Leaves);
        var behind = Length.Max(bay.Box.Y, bay.Front.Y + asked.Material.Thickness);
        return asked.IsInset ? bay with { Box = bay.Box.With(Axis.Y, behind, bay.Box.EndY) } : bay;
    }
}
