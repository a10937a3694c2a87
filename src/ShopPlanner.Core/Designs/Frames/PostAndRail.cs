using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Legs and rails with panels between them at the sides and the back; open in front.</summary>
internal sealed class PostAndRail : IFrame
{
    public KindInfo Info { get; } =
        new(
            "post-and-rail",
            "Posts and rails",
            "Four legs joined by rails above and below, with panels between them at the sides and back.",
            [
                new("leg", "Legs", MemberType.Role, null),
                new("wide_face", "Wide face of the legs", MemberType.Choice, "front", "front", "side"),
                new("rail", "Rails", MemberType.Role, null),
                new("panel", "Panels", MemberType.Role, ""),
                new("panel_fit", "Panel fit", MemberType.Choice, "inset", "inset", "flush"),
                new("groove", "Panel groove depth", MemberType.Length, "3/8 in"),
                new("clearance", "Clearance for a panel in its groove, each edge", MemberType.Length, "0 in"),
                new("foot", "Height of the lower rails", MemberType.Length, "4 in"),
                .. RailJoint.Members,
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        var (leg, rail, panel) = (members.Role("leg"), members.Role("rail"), members.MaybeRole("panel"));
        var (groove, clearance, foot) = (
            members.Length("groove").Value,
            members.Length("clearance").Value,
            members.Length("foot").Value
        );
        var (wide, inset) = (members.Choice("wide_face") == "front", members.Choice("panel_fit") == "inset");
        if (members.Failed || !Fits(members, rail, panel, groove, clearance, inset))
            return null;
        var sizes = new LegSizes(leg, wide, outside);
        if (RailJoint.Read(members, sizes, Length.Zero, rail.Thickness) is not { } joint)
            return null;
        var rails = new Rails(sizes, sizes.AddLegs(builder, "Leg"), rail, LegAndApron.Tall(rail), Length.Zero, joint);
        var (low, high) = (foot, outside.Height.Value - rails.Tall);
        var walls = new Walls(rails, panel, groove, clearance, inset, low, high);
        walls.Side(true, builder);
        walls.Side(false, builder);
        walls.Behind(builder);
        rails.Front("Front rail", low, builder);
        rails.Front("Front rail", high, builder);
        return Within(sizes, rails, low + rails.Tall, high) with
        {
            Left = rails.Legs.FrontLeft,
            Right = rails.Legs.FrontRight,
            Mid = rails.Mid,
            FaceLeft = rails.Legs.FrontLeft,
            FaceRight = rails.Legs.FrontRight,
            ReachBelow = rails.Tall,
            ReachAbove = rails.Tall,
        };
    }

    private static bool Fits(
        NodeReader members,
        RoleMaterial rail,
        RoleMaterial? panel,
        Length groove,
        Length clearance,
        bool inset
    )
    {
        if (panel is null)
            return true;
        if (inset && panel.Thickness >= rail.Thickness)
            members.Fail("panel", panel.Name, "is as thick as the rails: the groove can't take it");
        if (clearance >= groove)
            members.Fail(
                "clearance",
                LengthFormat.WithUnit(clearance, members.Unit),
                "is as much as the groove is deep: the panel would fall out"
            );
        return !members.Failed;
    }

    private static Bay Within(LegSizes sizes, Rails rails, Length low, Length high)
    {
        var thick = rails.Material.Thickness;
        var box = Box.Between(sizes.Lx, thick, low, sizes.Width - sizes.Lx, sizes.Depth - thick, high);
        return new(box, box.With(Axis.Y, Length.Zero, thick))
        {
            CoverLeft = sizes.Lx,
            CoverRight = sizes.Lx,
            CoverBottom = rails.Tall,
            CoverTop = rails.Tall,
        };
    }

    /// <summary>Two rails and a panel between legs.</summary>
    private sealed record Walls(
        Rails Rails,
        RoleMaterial? Panel,
        Length Groove,
        Length Clearance,
        bool Inset,
        Length Low,
        Length High
    )
    {
        private LegSizes Sizes => Rails.Sizes;

        public void Side(bool isLeft, Builder builder)
        {
            Draft Rail(Length z) => isLeft ? Rails.Left("Side rail", z, builder) : Rails.Right("Side rail", z, builder);
            var (below, above) = (Rail(Low), Rail(High));
            if (Panel is null)
                return;
            var deep = (Rails.Material.Thickness - Panel.Thickness).Ticks;
            var from = Length.FromTicks(Inset ? deep / 2 : 0);
            var x = isLeft ? from : Sizes.Width - from - Panel.Thickness;
            var box = Box.Between(x, Sizes.Ly, Low + Rails.Tall, x + Panel.Thickness, Sizes.Depth - Sizes.Ly, High);
            var (front, back) = isLeft
                ? (Rails.Legs.FrontLeft, Rails.Legs.BackLeft)
                : (Rails.Legs.FrontRight, Rails.Legs.BackRight);
            Add("Side panel", box, Axis.Y, Axis.X, front, back, below, above, builder);
        }

        public void Behind(Builder builder)
        {
            var (below, above) = (Rails.Back("Back rail", Low, builder), Rails.Back("Back rail", High, builder));
            if (Panel is null)
                return;
            var deep = (Rails.Material.Thickness - Panel.Thickness).Ticks;
            var y = Sizes.Depth - Length.FromTicks(Inset ? deep / 2 : 0) - Panel.Thickness;
            var box = Box.Between(Sizes.Lx, y, Low + Rails.Tall, Sizes.Width - Sizes.Lx, y + Panel.Thickness, High);
            Add("Back panel", box, Axis.X, Axis.Y, Rails.Legs.BackLeft, Rails.Legs.BackRight, below, above, builder);
        }

        private void Add(
            string name,
            Box clear,
            Axis across,
            Axis flat,
            Draft one,
            Draft other,
            Draft below,
            Draft above,
            Builder builder
        )
        {
            var tongue = Groove - Clearance;
            var panel = builder.Add(
                new(name, "Frame", Panel!, clear.Grown(across, tongue, tongue).Grown(Axis.Z, tongue, tongue), Axis.Z, flat)
                {
                    Length = GroovedPanel.Size("Panel height", clear.Dz, Groove, Clearance),
                    Width = GroovedPanel.Size("Panel width", clear.Extent(across), Groove, Clearance),
                    FacesToFinish = "both faces, before it goes in",
                }
            );
            var kind = Inset ? JointKind.Groove : JointKind.Rabbet;
            foreach (var leg in new[] { one, other })
                builder.Join(kind, panel, leg, across, tongue, Clearance);
            foreach (var rail in new[] { below, above })
                builder.Join(kind, panel, rail, Axis.Z, tongue, Clearance);
        }
    }
}
