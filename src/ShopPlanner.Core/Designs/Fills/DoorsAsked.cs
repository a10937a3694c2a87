using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>What a door is made of.</summary>
internal enum DoorMake
{
    /// <summary>Stiles and rails around a panel in a groove.</summary>
    Frame,

    /// <summary>One piece.</summary>
    Slab,

    /// <summary>Stiles and rails around glass in a rabbet.</summary>
    Glass,
}

/// <summary>Where a door hangs.</summary>
internal enum DoorHang
{
    /// <summary>The left leaf at its left, the right one at its right.</summary>
    Sides,

    /// <summary>At its lower edge: a flap that opens downward.</summary>
    Below,

    /// <summary>At its upper edge.</summary>
    Above,
}

/// <summary>What is asked of doors.</summary>
internal sealed record DoorsAsked(
    DoorMake Make,
    DoorHang Hang,
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
    GlassAsked Glass,
    EdgeAsked Edge
)
{
    /// <summary>Why doors and drawers beside a divider without a stile before it are refused.</summary>
    public const string StileLacking =
        "has no stile beside it: the front is open before the divider. Let the divider have a stile in front of it";

    // What is seen of a panel or glass between stiles, and the narrowest slab, at least (common practice): less is a stick, no
    // door.
    private static readonly Length LeastPanel = Length.FromInches(1.5m);

    /// <summary>Whether it opens downward or upward.</summary>
    public bool IsFlap => Hang != DoorHang.Sides;

    /// <summary>What its parts are called.</summary>
    public string Name => IsFlap ? "Flap" : "Door";

    public static DoorsAsked? Read(NodeReader members)
    {
        var material = members.Role("material");
        var asked = new DoorsAsked(
            Enum.Parse<DoorMake>(members.Choice("make"), true),
            Enum.Parse<DoorHang>(members.Choice("hang"), true),
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
            GlassAsked.Read(members),
            EdgeAsked.Read(members, material)
        );
        if (!members.Failed)
            asked.Check(members);
        return members.Failed ? null : asked;
    }

    private void Check(NodeReader members)
    {
        if (Leaves is < 1 or > 2)
            members.Fail("leaves", $"{Leaves}", "must be 1 or 2 doors");
        if (IsFlap && Leaves != 1)
            members.Fail("leaves", $"{Leaves}", "must be 1 for a flap: it is hinged along the whole opening");
        if (Make != DoorMake.Slab && Edge.Work is not null)
            members.Fail("edge", members.Choice("edge"), "is for slabs: leave the edges of a frame plain");
        if (Make == DoorMake.Frame)
            CheckPanel(members);
        if (Make == DoorMake.Glass)
            Glass.Check(members, Material, Stile, Clearance.Value);
    }

    private void CheckPanel(NodeReader members)
    {
        if (Panel is null)
            members.Fail("panel", "", "is missing: a frame needs a panel");
        else if (Panel.Thickness >= Material.Thickness)
            members.Fail("panel", Panel.Name, "is as thick as the frame: the groove can't take it");
        if (Clearance.Value >= Groove.Value)
            members.Fail(
                "clearance",
                Text(members, Clearance.Value),
                "is as much as the groove is deep: the panel would fall out"
            );
    }

    public bool Fits(NodeReader members, Bay bay)
    {
        if (bay.LacksStile)
            members.Fail("fit", IsInset ? "inset" : "overlay", StileLacking);
        if (!IsInset)
            CheckOverlay(members, bay, Overlay.Value);
        return !members.Failed;
    }

    /// <summary>Refuses fronts that reach over more of the face than is theirs.</summary>
    public static void CheckOverlay(NodeReader members, Bay bay, Length overlay)
    {
        var least = Length.Min(Length.Min(bay.CoverLeft, bay.CoverRight), Length.Min(bay.CoverBottom, bay.CoverTop));
        if (overlay > least)
            members.Fail(
                "overlay",
                Text(members, overlay),
                $"is more than the face beside the opening has: at most {Text(members, RuleMarks.Down(least, members.Unit))}"
            );
    }

    public DoorSizes Sizes(Bay bay)
    {
        var (width, height) = (Working.Given("Opening width", bay.Front.Dx), Working.Given("Opening height", bay.Front.Dz));
        return IsInset ? DoorSizes.Inset(width, height, Leaves, Gap) : DoorSizes.Overlay(width, height, Leaves, Overlay, Gap);
    }

    public bool Holds(NodeReader members, DoorSizes sizes)
    {
        var least = Make == DoorMake.Slab ? LeastPanel : (Stile.Value * 2) + LeastPanel;
        if (sizes.Width.Value < least || sizes.Height.Value < least)
            members.Fail(
                "leaves",
                $"{Leaves}",
                $"leave doors of {Text(members, sizes.Width.Value)} by {Text(members, sizes.Height.Value)}: at "
                    + $"least {Text(members, least)} both ways. Use fewer doors, narrower stiles or a larger opening"
            );
        return !members.Failed;
    }

    private static string Text(NodeReader members, Length length) => LengthFormat.WithUnit(length, members.Unit);
}
