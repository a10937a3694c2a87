using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>A stack of drawers, equal or taller towards the bottom, on side-mounted slides.</summary>
internal sealed class Drawers : IFill
{
    // A side-mounted slide is 1 3/4 in high (common practice).
    private static readonly Length LowestBox = Length.FromInches(2);

    public KindInfo Info { get; } =
        new(
            "drawers",
            "Drawers",
            "A stack of drawers on side-mount slides, equal or taller toward the bottom.",
            [
                new("count", "Drawers", MemberType.Count, "3"),
                new("heights", "Heights", MemberType.Choice, "equal", "equal", "graded"),
                new("front", "Fronts", MemberType.Role, null),
                new("box", "Boxes", MemberType.Role, null),
                new("bottom", "Bottoms", MemberType.Role, null),
                new("fit", "Fit", MemberType.Choice, "inset", "inset", "overlay"),
                new("gap", "Gap", MemberType.Length, "1/8 in"),
                new("overlay", "Overlay at each side", MemberType.Length, "1/2 in"),
                new("slide", "Clearance for a slide at each side", MemberType.Length, "1/2 in"),
                new("joint", "Corners of the boxes", MemberType.Choice, "rabbet", "rabbet", "butt", "dado", "dovetail"),
                new("groove", "Depth of the bottom's groove", MemberType.Length, "1/4 in"),
                new("room", "Box shorter than its front by", MemberType.Length, "1 in"),
                .. EdgeAsked.ThinMembers("Edges of the fronts"),
            ]
        );

    public bool Closes => true;

    public bool HasFront => true;

    public Length StandsOut(NodeReader members) =>
        members.Choice("fit") == "overlay" ? members.Role("front").Thickness : Length.Zero;

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var asked = DrawersAsked.Read(members);
        if (asked is null)
            return bay;
        if (bay.LacksStile)
        {
            members.Fail("fit", asked.IsInset ? "inset" : "overlay", DoorsAsked.StileLacking);
            return bay;
        }

        if (!asked.IsInset)
            DoorsAsked.CheckOverlay(members, bay, asked.Overlay);
        if (members.Failed)
            return bay;

        var (z, y) = (
            asked.IsInset ? bay.Front.Z + asked.Gap : bay.Front.Z - asked.Overlay,
            asked.IsInset ? bay.Front.Y : bay.Front.Y - asked.Front.Thickness
        );
        foreach (
            var height in asked.Heights(
                asked.IsInset ? bay.Front.Dz - (asked.Gap * 2) : bay.Front.Dz + (asked.Overlay * 2),
                members.Unit
            )
        )
        {
            if (height - asked.Room < LowestBox)
                members.Fail(
                    "count",
                    asked.Count.ToString(CultureInfo.InvariantCulture),
                    $"drawers leave boxes of {Text(Length.Max(height - asked.Room, Length.Zero), members)}: a slide and a bottom "
                        + $"need at least {Text(LowestBox, members)}"
                );
            if (members.Failed)
                return bay;
            var front = Front(asked, bay, y, z, height, builder);
            DrawerMaker.Add(asked, members, bay, front, builder);
            z += height + asked.Gap;
        }

        builder.Buy("Pull or knob", asked.Count);
        builder.Warn(
            Severity.Watch,
            "Open drawers can pull a piece over. Anchor it to the wall, and let only one drawer open at a time where there are "
                + "children."
        );
        return bay;
    }

    private static string Text(Length length, NodeReader members) => LengthFormat.WithUnit(length, members.Unit);

    private static Draft Front(DrawersAsked asked, Bay bay, Length y, Length z, Length height, Builder builder)
    {
        var more = asked.IsInset ? -asked.Gap : asked.Overlay;
        var box = Box.Between(bay.Front.X - more, y, z, bay.Front.EndX + more, y + asked.Front.Thickness, z + height);
        var front = builder.Add(
            new("Drawer front", "Drawer", asked.Front, box, Axis.X, Axis.Y)
            {
                Length = Working.Of(
                    "Front length",
                    box.Dx,
                    "{opening} + 2 × {more}",
                    Working.Geometry,
                    ("opening", Working.Given("opening", bay.Front.Dx)),
                    ("more", Working.Given("overlay, or less the gap", more))
                ),
                FacesToFinish = "front face, all edges",
            }
        );
        EdgeMaker.TreatAll(front, asked.Edge, builder);
        return front;
    }
}

/// <summary>What is asked of drawers.</summary>
internal sealed record DrawersAsked(
    int Count,
    bool IsGraded,
    RoleMaterial Front,
    RoleMaterial Box,
    RoleMaterial Bottom,
    bool IsInset,
    Length Gap,
    Length Overlay,
    Working<Length> Slide,
    DrawerJoint Joint,
    Working<Length> Groove,
    Length Room,
    EdgeAsked Edge
)
{
    public static DrawersAsked? Read(NodeReader members)
    {
        var front = members.Role("front");
        var asked = new DrawersAsked(
            members.Count("count"),
            members.Choice("heights") == "graded",
            front,
            members.Role("box"),
            members.Role("bottom"),
            members.Choice("fit") == "inset",
            members.Length("gap").Value,
            members.Length("overlay").Value,
            members.Length("slide"),
            Enum.Parse<DrawerJoint>(members.Choice("joint"), true),
            members.Length("groove"),
            members.Length("room").Value,
            EdgeAsked.Read(members, front)
        );
        if (members.Failed)
            return null;
        if (asked.Count < 1)
            members.Fail("count", "0", "must be at least 1 drawer");
        if (!asked.Groove.Value.IsPositive)
            members.Fail("groove", LengthFormat.WithUnit(asked.Groove.Value, members.Unit), "holds no bottom: at least 1/8 in");
        if (asked.Groove.Value >= asked.Box.Thickness)
            members.Fail("groove", LengthFormat.WithUnit(asked.Groove.Value, members.Unit), "goes through the sides of the box");
        return members.Failed ? null : asked;
    }

    /// <summary>Heights of the fronts from below, gaps between them taken off; a graded one is a quarter of the top one's height
    /// taller than the one above it, and the lowest takes what the steps of a rule leave over.</summary>
    public IEnumerable<Length> Heights(Length clear, LengthUnit unit)
    {
        var free = clear - (Gap * (Count - 1));
        return IsGraded ? Graded(free, Shares.Step(unit)) : Shares.Equal(free, Count, unit);
    }

    private IEnumerable<Length> Graded(Length free, long step)
    {
        var shares = Enumerable.Range(0, Count).Select(i => 4L + (Count - 1 - i)).ToList();
        var unitShare = free.Ticks / shares.Sum();
        var heights = shares.Select(share => share * unitShare / step * step).ToList();
        heights[0] += free.Ticks - heights.Sum();
        return heights.Select(Length.FromTicks);
    }
}
