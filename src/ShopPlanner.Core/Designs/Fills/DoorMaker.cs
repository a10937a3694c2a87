using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Makes the parts of doors, leaf by leaf from the left.</summary>
internal sealed class DoorMaker(DoorsAsked asked, DoorSizes sizes, Bay bay, Builder builder)
{
    // The stile or slab that is hung, and the box of the whole leaf.
    private readonly List<(Draft Hung, Box Leaf)> leaves = [];

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
        leaves.Add((asked.IsFrame ? Frame(box, leaf) : Slab(box), box));
    }

    /// <summary>Hinges and pulls, and what is to be watched.</summary>
    public void Hang()
    {
        var count = DoorHinges.Count(sizes.Width, sizes.Height, Thick, asked.Material.Species);
        for (var leaf = 0; leaf < leaves.Count; leaf++)
            Hang(leaf, count.Value);
        builder.Buy("Pull or knob", asked.Leaves);
        var places = Hinges.Places(sizes.Height, count).Value;
        if (places[^1] - places[0] <= sizes.Width.Value)
            builder.Warn(
                Severity.Watch,
                "A door is as wide as its hinges are apart, so it will sag. Use two doors, or a taller one.",
                leaves[0].Hung,
                sizes.Width
            );
        if (!Hinges.Fit(sizes.Height.Value, count.Value))
            builder.Warn(
                Severity.Fails,
                $"A door is too low for its {count.Value} cup hinges. Use butt hinges, or a taller door.",
                leaves[0].Hung,
                sizes.Height
            );
        if (count.OutsideRange is { } reason)
            builder.Warn(Severity.Fails, "A door is too heavy for cup hinges: " + reason + ".", leaves[0].Hung, count);
    }

    // The left leaf hangs at its left, the right one at its right.
    private void Hang(int leaf, int hinges)
    {
        var (hung, box) = leaves[leaf];
        if (Carrier(box, leaf == 0) is not { } carrier)
        {
            builder.WarnOfNothing(hung, leaf == 0 ? " at its left" : " at its right", "Set the part beside it back less.");
            return;
        }

        builder.Join(JointKind.Hinged, hung, carrier, Axis.X);
        builder.Buy(HingeName(carrier), hinges);
    }

    // An overlay door lies on the upright that carries it, an inset one stands beside it.
    private Draft? Carrier(Box leaf, bool isLeft)
    {
        if (asked.IsInset)
            return
                (isLeft ? bay.FaceLeft ?? bay.Left : bay.FaceRight ?? bay.Right) is { } beside
                && beside.Box.Y < leaf.EndY
                && beside.Box.EndY > leaf.Y
                ? beside
                : null;
        var behind = builder.Touching(leaf, Axis.Y, true).Where(one => one.Along == Axis.Z).ToList();
        return isLeft
            ? behind.Where(one => one.Box.X <= leaf.X + asked.Overlay.Value).MinBy(one => one.Box.X.Ticks)
            : behind.Where(one => one.Box.EndX >= leaf.EndX - asked.Overlay.Value).MaxBy(one => one.Box.EndX.Ticks);
    }

    // A face frame takes cup hinges with a plate of their own.
    private string HingeName(Draft carrier)
    {
        var fit = asked.IsInset ? "an inset door" : "an overlay door";
        return bay.Face is not null ? $"Face-frame hinge for {fit}"
            : Hinges.TakesPlate(carrier.Box.Dy, asked.IsInset ? Thick : Length.Zero) ? $"Hinge for {fit}"
            : $"Butt hinge for {fit}";
    }

    private Draft Slab(Box box)
    {
        var slab = builder.Add(
            new("Door", "Door", asked.Material, box, Axis.Z, Axis.Y)
            {
                Length = sizes.Height,
                Width = sizes.Width,
                FacesToFinish = "both faces, all edges",
            }
        );
        EdgeMaker.TreatAll(slab, asked.Edge, builder);
        return slab;
    }

    private Draft Frame(Box box, int leaf)
    {
        var along = Working.Given("Clearance above and below", Length.FromTicks(asked.Clearance.Value.Ticks / 2));
        var parts = FrameDoor.Of(sizes.Width, sizes.Height, asked.Stile, asked.Stile, asked.Groove, asked.Clearance, along);
        var (wide, tongue) = (asked.Stile.Value, asked.Groove.Value);
        var left = Member("Door stile", box.With(Axis.X, box.X, box.X + wide), Axis.Z, parts.Stile, asked.CutLong);
        var right = Member("Door stile", box.With(Axis.X, box.EndX - wide, box.EndX), Axis.Z, parts.Stile, asked.CutLong);
        var inner = box.With(Axis.X, box.X + wide, box.EndX - wide);
        var rails = inner.Grown(Axis.X, tongue, tongue);
        var below = Member("Door rail", rails.With(Axis.Z, box.Z, box.Z + wide), Axis.X, parts.Rail, Length.Zero);
        var above = Member("Door rail", rails.With(Axis.Z, box.EndZ - wide, box.EndZ), Axis.X, parts.Rail, Length.Zero);
        foreach (var rail in new[] { below, above })
        foreach (var stile in new[] { left, right })
            builder.Join(JointKind.Groove, rail, stile, Axis.X, tongue);
        Panel(parts, inner.With(Axis.Z, box.Z + wide, box.EndZ - wide), (left, right, below, above), along.Value);
        if (leaf == 0)
            Practice(below);
        return leaf == 0 ? left : right;
    }

    private Draft Member(string name, Box box, Axis along, Working<Length> length, Length longer) =>
        builder.Add(
            new(name, "Door", asked.Material, box, along, Axis.Y)
            {
                Length = length,
                CutLongBy = longer,
                FacesToFinish = "both faces, all edges",
            }
        );

    private void Panel(FrameDoor parts, Box clear, (Draft Left, Draft Right, Draft Below, Draft Above) frame, Length along)
    {
        var (panel, across) = (asked.Panel!, asked.Groove.Value - asked.Clearance.Value);
        var upright = asked.Groove.Value - along;
        var y = Y + Length.FromTicks((Thick - panel.Thickness).Ticks / 2);
        var box = clear.Grown(Axis.X, across, across).Grown(Axis.Z, upright, upright).With(Axis.Y, y, y + panel.Thickness);
        var draft = builder.Add(
            new("Door panel", "Door", panel, box, Axis.Z, Axis.Y)
            {
                Length = parts.PanelHeight,
                Width = parts.PanelWidth,
                FacesToFinish = "both faces, before it goes in",
            }
        );
        builder.Join(JointKind.Groove, draft, frame.Left, Axis.X, across, asked.Clearance.Value);
        builder.Join(JointKind.Groove, draft, frame.Right, Axis.X, across, asked.Clearance.Value);
        builder.Join(JointKind.Groove, draft, frame.Below, Axis.Z, upright, along);
        builder.Join(JointKind.Groove, draft, frame.Above, Axis.Z, upright, along);
    }

    private void Practice(Draft rail)
    {
        var box = new Box(Length.Zero, Length.Zero, Length.Zero, Length.FromInches(12), Thick, asked.Stile.Value);
        for (var i = 0; i < 2; i++)
            builder.Add(
                new("Test piece for groove and tongue", "Shop aids", asked.Material, box, Axis.X, Axis.Y)
                {
                    Purpose = PartPurpose.Practice,
                    PracticeFor = rail,
                }
            );
    }
}
