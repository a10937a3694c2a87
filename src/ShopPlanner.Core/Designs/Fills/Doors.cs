using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Doors across the opening of a bay: frame and panel or slab, one leaf or two, in the opening or on the face around
/// it.</summary>
internal sealed class Doors : IFill
{
    public KindInfo Info { get; } =
        new(
            "doors",
            "Doors",
            "One or two doors, frame-and-panel or slab, inset in the opening or overlay on the face.",
            [
                new("make", "Construction", MemberType.Choice, "frame", "frame", "slab"),
                new("material", "Stiles and rails, or slab", MemberType.Role, null),
                new("panel", "Panels", MemberType.Role, ""),
                new("leaves", "Doors", MemberType.Count, "1"),
                new("fit", "Fit", MemberType.Choice, "overlay", "overlay", "inset"),
                new("gap", "Gap", MemberType.Length, "3/32 in"),
                new("overlay", "Overlay at each side", MemberType.Length, "1/2 in"),
                new("stile", "Stile and rail width (sheet stock)", MemberType.Length, "2 1/4 in"),
                new("groove", "Depth of the groove", MemberType.Length, "3/8 in"),
                new("clearance", "Clearance for the panel at each side", MemberType.Length, "1/16 in"),
                new("cut_long", "Stiles cut long by", MemberType.Length, "1/2 in"),
                .. EdgeAsked.ThinMembers("Edges of a slab"),
            ]
        );

    public bool Closes => true;

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
        maker.Hang();
        var behind = Length.Max(bay.Box.Y, bay.Front.Y + asked.Material.Thickness);
        return asked.IsInset ? bay with { Box = bay.Box.With(Axis.Y, behind, bay.Box.EndY) } : bay;
    }
}

/// <summary>What is asked of doors.</summary>
internal sealed record DoorsAsked(
    bool IsFrame,
    bool IsInset,
    RoleMaterial Material,
    RoleMaterial? Panel,
    int Leaves,
    Working<Length> Gap,
    Working<Length> Overlay,
    Working<Length> Stile,
    Working<Length> Groove,
    Working<Length> Clearance,
    Length CutLong,
    EdgeAsked Edge
)
{
    /// <summary>Why doors and drawers beside a divider behind a face frame are refused.</summary>
    public const string StileLacking =
        "has no stile beside it: the face frame is open before the divider. Fill the whole opening, or leave off the face frame";

    public static DoorsAsked? Read(NodeReader members)
    {
        var material = members.Role("material");
        var asked = new DoorsAsked(
            members.Choice("make") == "frame",
            members.Choice("fit") == "inset",
            material,
            members.MaybeRole("panel"),
            members.Count("leaves"),
            members.Length("gap"),
            members.Length("overlay"),
            material.Width is { } own ? Working.Given("Stile", own) : members.Length("stile"),
            members.Length("groove"),
            members.Length("clearance"),
            members.Length("cut_long").Value,
            EdgeAsked.Read(members, material)
        );
        if (members.Failed)
            return null;
        if (asked.Leaves is < 1 or > 2)
            members.Fail("leaves", $"{asked.Leaves}", "must be 1 or 2 doors");
        if (asked is { IsFrame: true, Edge.Work: not null })
            members.Fail("edge", members.Choice("edge"), "is for slabs: leave the edges of a frame and panel plain");
        if (asked is { IsFrame: true, Panel: null })
            members.Fail("panel", "", "is missing: a frame needs a panel");
        if (asked is { IsFrame: true, Panel: { } panel } && panel.Thickness >= material.Thickness)
            members.Fail("panel", panel.Name, "is as thick as the frame: the groove can't take it");
        if (asked.IsFrame && asked.Clearance.Value >= asked.Groove.Value)
            members.Fail(
                "clearance",
                Text(members, asked.Clearance.Value),
                "is as much as the groove is deep: the panel would fall out"
            );
        return members.Failed ? null : asked;
    }

    public bool Fits(NodeReader members, Bay bay)
    {
        var least = Length.Min(Length.Min(bay.CoverLeft, bay.CoverRight), Length.Min(bay.CoverBottom, bay.CoverTop));
        if (bay.LacksStile)
            members.Fail("fit", IsInset ? "inset" : "overlay", StileLacking);
        if (!IsInset && Overlay.Value > least)
            members.Fail(
                "overlay",
                Text(members, Overlay.Value),
                $"is more than the face beside the opening has: at most {Text(members, least)}"
            );
        return !members.Failed;
    }

    public DoorSizes Sizes(Bay bay)
    {
        var (width, height) = (Working.Given("Opening width", bay.Front.Dx), Working.Given("Opening height", bay.Front.Dz));
        return IsInset ? DoorSizes.Inset(width, height, Leaves, Gap) : DoorSizes.Overlay(width, height, Leaves, Overlay, Gap);
    }

    public bool Holds(NodeReader members, DoorSizes sizes)
    {
        var least = IsFrame ? Stile.Value * 2 : Length.Zero;
        if (sizes.Width.Value <= least || sizes.Height.Value <= least)
            members.Fail(
                "leaves",
                $"{Leaves}",
                $"leave doors of {Text(members, sizes.Width.Value)} by {Text(members, sizes.Height.Value)}: too "
                    + $"small for their stiles and rails"
            );
        return !members.Failed;
    }

    private static string Text(NodeReader members, Length length) => LengthFormat.WithUnit(length, members.Unit);
}
