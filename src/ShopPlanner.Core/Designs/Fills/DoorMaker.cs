using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>A leaf of a door.</summary>
/// <param name="Hung">The stile, rail or slab that is hung.</param>
/// <param name="Box">The whole leaf.</param>
internal sealed record DoorLeaf(Draft Hung, Box Box);

/// <summary>The members of a door's frame.</summary>
internal sealed record DoorFrame(Draft Left, Draft Right, Draft Below, Draft Above)
{
    /// <summary>Those that stand.</summary>
    public Draft[] Stiles => [Left, Right];

    /// <summary>Those that lie.</summary>
    public Draft[] Rails => [Below, Above];
}

/// <summary>Makes the parts of doors, leaf by leaf from the left.</summary>
internal sealed class DoorMaker(DoorsAsked asked, DoorSizes sizes, Bay bay, Builder builder)
{
    private readonly List<DoorLeaf> leaves = [];

    /// <summary>What has been made.</summary>
    public IReadOnlyList<DoorLeaf> Leaves => leaves;

    private Length Thick => asked.Material.Thickness;

    private Length Y => asked.IsInset ? bay.Front.Y : bay.Front.Y - Thick;

    public void Add(int leaf)
    {
        // What two equal leaves leave over lies in the gap between them.
        var between = sizes.Width.Value + asked.Gap.Value + sizes.Rest;
        var edge = asked.IsInset ? asked.Gap.Value : -asked.Overlay.Value;
        var x = bay.Front.X + edge + (between * leaf);
        var z = bay.Front.Z + edge;
        var box = Box.Between(x, Y, z, x + sizes.Width.Value, Y + Thick, z + sizes.Height.Value);
        leaves.Add(new(asked.Make == DoorMake.Slab ? Slab(box) : Hung(Frame(box, leaf), leaf), box));
    }

    private Draft Hung(DoorFrame frame, int leaf) =>
        asked.Hang switch
        {
            DoorHang.Below => frame.Below,
            DoorHang.Above => frame.Above,
            _ => leaf == 0 ? frame.Left : frame.Right,
        };

    // The grain of a door stands, that of a flap lies.
    private Draft Slab(Box box)
    {
        var slab = builder.Add(
            new(asked.Name, "Door", asked.Material, box, asked.IsFlap ? Axis.X : Axis.Z, Axis.Y)
            {
                Length = asked.IsFlap ? sizes.Width : sizes.Height,
                Width = asked.IsFlap ? sizes.Height : sizes.Width,
                FacesToFinish = "both faces, all edges",
            }
        );
        EdgeMaker.TreatAll(slab, asked.Edge, builder);
        return slab;
    }

    private DoorFrame Frame(Box box, int leaf)
    {
        var along = Working.Given("Clearance above and below", Length.FromTicks(asked.Clearance.Value.Ticks / 2));
        var isGlass = asked.Make == DoorMake.Glass;
        var tongue = isGlass ? asked.Glass.Tongue(asked.Material, asked.Stile, builder.Unit) : asked.Groove;
        var parts = FrameDoor.Of(sizes.Width, sizes.Height, asked.Stile, asked.Stile, tongue, asked.Clearance, along);
        var frame = Members(box, parts, tongue.Value);
        foreach (var rail in frame.Rails)
        foreach (var stile in frame.Stiles)
            builder.Join(isGlass ? asked.Glass.Corner : JointKind.Groove, rail, stile, Axis.X, tongue.Value);
        var clear = box.Grown(Axis.X, -asked.Stile.Value, -asked.Stile.Value)
            .Grown(Axis.Z, -asked.Stile.Value, -asked.Stile.Value);
        if (isGlass)
            new GlassMaker(asked, sizes, builder).Add(clear, frame);
        else
            Panel(parts, clear, frame, along.Value);
        if (leaf == 0)
            Practice(frame.Below);
        return frame;
    }

    private DoorFrame Members(Box box, FrameDoor parts, Length tongue)
    {
        var wide = asked.Stile.Value;
        Draft Stile(Length x) => Member(" stile", box.With(Axis.X, x, x + wide), Axis.Z, parts.Stile, asked.CutLong);
        var rails = box.Grown(Axis.X, tongue - wide, tongue - wide);
        Draft Rail(Length z) => Member(" rail", rails.With(Axis.Z, z, z + wide), Axis.X, parts.Rail, Length.Zero);
        return new(Stile(box.X), Stile(box.EndX - wide), Rail(box.Z), Rail(box.EndZ - wide));
    }

    private Draft Member(string name, Box box, Axis along, Working<Length> length, Length longer) =>
        builder.Add(
            new(asked.Name + name, "Door", asked.Material, box, along, Axis.Y)
            {
                Length = length,
                CutLongBy = longer,
                FacesToFinish = "both faces, all edges",
            }
        );

    private void Panel(FrameDoor parts, Box clear, DoorFrame frame, Length along)
    {
        var (panel, across) = (asked.Panel!, asked.Groove.Value - asked.Clearance.Value);
        var upright = asked.Groove.Value - along;
        var y = Y + Length.FromTicks((Thick - panel.Thickness).Ticks / 2);
        var box = clear.Grown(Axis.X, across, across).Grown(Axis.Z, upright, upright).With(Axis.Y, y, y + panel.Thickness);
        var draft = builder.Add(
            new(asked.Name + " panel", "Door", panel, box, Axis.Z, Axis.Y)
            {
                Length = parts.PanelHeight,
                Width = parts.PanelWidth,
                FacesToFinish = "both faces, before it goes in",
            }
        );
        foreach (var stile in frame.Stiles)
            builder.Join(JointKind.Groove, draft, stile, Axis.X, across, asked.Clearance.Value);
        foreach (var rail in frame.Rails)
            builder.Join(JointKind.Groove, draft, rail, Axis.Z, upright, along);
    }

    private void Practice(Draft rail)
    {
        var name = asked.Make == DoorMake.Glass ? "Test piece for the corner joint" : "Test piece for groove and tongue";
        var box = new Box(Length.Zero, Length.Zero, Length.Zero, Length.FromInches(12), Thick, asked.Stile.Value);
        for (var i = 0; i < 2; i++)
            builder.Add(
                new(name, "Shop aids", asked.Material, box, Axis.X, Axis.Y) { Purpose = PartPurpose.Practice, PracticeFor = rail }
            );
    }
}
