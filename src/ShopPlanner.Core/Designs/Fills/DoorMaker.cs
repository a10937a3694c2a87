using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Makes the parts of doors, leaf by leaf from the left.</summary>
internal sealed class DoorMaker(DoorsAsked asked, DoorSizes sizes, Bay bay, Builder builder)
{
    private readonly List<Draft> hung = [];

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
        hung.Add(asked.IsFrame ? Frame(box, leaf) : Slab(box));
    }

    /// <summary>Hinges and pulls, and what is to be watched.</summary>
    public void Hang()
    {
        var count = Hinges.ByHeight(sizes.Height);
        if (StrengthTable.Find(asked.Material.Species ?? "") is { } row)
        {
            var density = Weight.Density(row, Working.Given("Moisture", 8, QuantityKind.Percent, 0));
            count = Hinges.Count(sizes.Height, Weight.Of(Area.Of(sizes.Width.Value, sizes.Height.Value) * Thick, density));
        }

        builder.Buy(asked.IsInset ? "Hinge for an inset door" : "Hinge for an overlay door", count.Value * asked.Leaves);
        builder.Buy("Pull or knob", asked.Leaves);
        var places = Hinges.Places(sizes.Height, count).Value;
        if (places[^1] - places[0] <= sizes.Width.Value)
            builder.Warn(
                Severity.Watch,
                "A door is as wide as its hinges are apart, so it will sag. Use two doors, or a taller one.",
                hung[0],
                sizes.Width
            );
        if (!Hinges.Fit(sizes.Height.Value, count.Value))
            builder.Warn(
                Severity.Fails,
                $"A door is too low for its {count.Value} cup hinges. Use butt hinges, or a taller door.",
                hung[0],
                sizes.Height
            );
        if (count.OutsideRange is { } reason)
            builder.Warn(Severity.Fails, "A door is too heavy for cup hinges: " + reason + ".", hung[0], count);
        for (var leaf = 0; leaf < hung.Count; leaf++)
            if ((leaf == 0 ? bay.Left : bay.Right) is { } side)
                builder.Join(JointKind.Hinged, hung[leaf], side, Axis.X);
    }

    private Draft Slab(Box box) =>
        builder.Add(
            new("Door", "Door", asked.Material, box, Axis.Z, Axis.Y)
            {
                Length = sizes.Height,
                Width = sizes.Width,
                FacesToFinish = "both faces, all edges",
            }
        );

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
        builder.Join(JointKind.Groove, draft, frame.Left, Axis.X, across);
        builder.Join(JointKind.Groove, draft, frame.Right, Axis.X, across);
        builder.Join(JointKind.Groove, draft, frame.Below, Axis.Z, upright);
        builder.Join(JointKind.Groove, draft, frame.Above, Axis.Z, upright);
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
