using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>The sides of a post cabinet: a thick panel between the posts, flush with their inner faces, or a thin one inset in
/// grooves of posts and side rails.</summary>
internal sealed record PostSides(RoleMaterial Panel, bool IsFlush, Length Groove, Length Clearance)
{
    /// <summary>Reads them; null after a fault.</summary>
    public static PostSides? Read(NodeReader members, LegSizes sizes, RoleMaterial rail, RoleMaterial panel)
    {
        var sides = new PostSides(
            panel,
            members.Choice("side_fit") == "flush",
            members.Length("groove").Value,
            members.Length("clearance").Value
        );
        if (members.Failed)
            return null;
        if (sides.IsFlush && panel.Thickness > sizes.Lx)
            members.Fail("side", panel.Name, "is thicker than the posts: use a thinner panel, or thicker posts");
        if (!sides.IsFlush && panel.Thickness >= rail.Thickness)
            members.Fail(
                "side",
                panel.Name,
                "is as thick as the rails: the groove can't take it. Use a thin panel, or flush sides"
            );
        if (!sides.IsFlush && sides.Clearance >= sides.Groove)
            members.Fail(
                "clearance",
                LengthFormat.WithUnit(sides.Clearance, members.Unit),
                "is as much as the groove is deep: the panel would fall out"
            );
        if (!sides.IsFlush && sides.Groove * 2 > Length.Min(sizes.Ly, sizes.Lx))
            members.Fail(
                "groove",
                LengthFormat.WithUnit(sides.Groove, members.Unit),
                "is more than half of a post: at most "
                    + LengthFormat.WithUnit(Length.FromTicks(Length.Min(sizes.Ly, sizes.Lx).Ticks / 2), members.Unit)
            );
        return members.Failed ? null : sides;
    }

    /// <summary>Adds both.</summary>
    /// <param name="rails">The cabinet's.</param>
    /// <param name="foot">Height of the lower rails.</param>
    /// <param name="builder">Takes the parts.</param>
    public void Add(Rails rails, Working<Length> foot, Builder builder)
    {
        foreach (var isLeft in new[] { true, false })
            if (IsFlush)
                Flush(rails, foot, isLeft, builder);
            else
                Inset(rails, foot.Value, isLeft, builder);
    }

    private void Flush(Rails rails, Working<Length> foot, bool isLeft, Builder builder)
    {
        var sizes = rails.Sizes;
        var x = isLeft ? sizes.Lx - Panel.Thickness : sizes.Width - sizes.Lx;
        var box = Box.Between(x, sizes.Ly, foot.Value, x + Panel.Thickness, sizes.Depth - sizes.Ly, sizes.Outside.Height.Value);
        var panel = builder.Add(
            new("Side", "Frame", Panel, box, Axis.Z, Axis.X)
            {
                Length = Working.Of(
                    "Height of a side",
                    box.Dz,
                    "{height} − {foot}",
                    Working.Geometry,
                    ("height", sizes.Outside.Height),
                    ("foot", foot)
                ),
                Width = sizes.Between(Axis.Y, RailJoint.Butted(JointKind.PocketScrew).Tongue),
                FacesToFinish = "both faces, lower edge",
            }
        );
        foreach (var post in Posts(rails, isLeft))
            builder.Join(ButtJoint.Hidden(panel, post, Axis.Y), panel, post, Axis.Y);
    }

    private void Inset(Rails rails, Length low, bool isLeft, Builder builder)
    {
        var (sizes, high) = (rails.Sizes, rails.Sizes.Outside.Height.Value - rails.Tall);
        Draft Rail(Length z) => isLeft ? rails.Left("Side rail", z, builder) : rails.Right("Side rail", z, builder);
        var (below, above) = (Rail(low), Rail(high));
        var from = Length.FromTicks((rails.Material.Thickness - Panel.Thickness).Ticks / 2);
        var x = isLeft ? from : sizes.Width - from - Panel.Thickness;
        var (clear, tongue) = (
            Box.Between(x, sizes.Ly, low + rails.Tall, x + Panel.Thickness, sizes.Depth - sizes.Ly, high),
            Groove - Clearance
        );
        var panel = builder.Add(
            new("Side panel", "Frame", Panel, clear.Grown(Axis.Y, tongue, tongue).Grown(Axis.Z, tongue, tongue), Axis.Z, Axis.X)
            {
                Length = GroovedPanel.Size("Panel height", clear.Dz, Groove, Clearance),
                Width = GroovedPanel.Size("Panel width", clear.Dy, Groove, Clearance),
                FacesToFinish = "both faces, before it goes in",
            }
        );
        foreach (var post in Posts(rails, isLeft))
            builder.Join(JointKind.Groove, panel, post, Axis.Y, tongue, Clearance);
        foreach (var rail in new[] { below, above })
            builder.Join(JointKind.Groove, panel, rail, Axis.Z, tongue, Clearance);
    }

    private static Draft[] Posts(Rails rails, bool isLeft) =>
        isLeft ? [rails.Legs.FrontLeft, rails.Legs.BackLeft] : [rails.Legs.FrontRight, rails.Legs.BackRight];
}
