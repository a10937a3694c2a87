using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Hangs doors: finds what carries each leaf, and buys hinges, pulls and stays.</summary>
internal sealed class DoorHanger(DoorsAsked asked, DoorSizes sizes, Bay bay, Builder builder)
{
    // Stays on both sides keep a flap from twisting (common practice).
    private const int Stays = 2;

    // Hinges stand along the edge that hangs.
    private Working<Length> HungEdge => asked.IsFlap ? sizes.Width : sizes.Height;

    private Working<Length> Swing => asked.IsFlap ? sizes.Height : sizes.Width;

    /// <summary>Hinges and pulls, and what is to be watched.</summary>
    public void Hang(IReadOnlyList<DoorLeaf> leaves)
    {
        var count = DoorHinges.Count(Swing, HungEdge, asked.Material.Thickness, asked.Material.Species);
        for (var leaf = 0; leaf < leaves.Count; leaf++)
            Hang(leaves[leaf], leaf == 0, count.Value);
        builder.Buy("Pull or knob", asked.Leaves);
        if (asked.IsFlap)
            Stay();
        Judge(leaves[0].Hung, count);
    }

    private void Judge(Draft hung, Working<int> count)
    {
        var places = Hinges.Places(HungEdge, count).Value;
        if (!asked.IsFlap && places[^1] - places[0] <= sizes.Width.Value)
            builder.Warn(
                Severity.Watch,
                "A door is as wide as its hinges are apart, so it will sag. Use two doors, or a taller one.",
                hung,
                sizes.Width
            );
        if (!Hinges.Fit(HungEdge.Value, count.Value))
            builder.Warn(
                Severity.Fails,
                asked.IsFlap
                    ? $"A flap is too narrow for its {count.Value} hinges. Use a wider opening."
                    : $"A door is too low for its {count.Value} cup hinges. Use butt hinges, or a taller door.",
                hung,
                HungEdge
            );
        if (count.OutsideRange is { } reason)
            builder.Warn(Severity.Fails, "A door is too heavy for cup hinges: " + reason + ".", hung, count);
    }

    private void Stay()
    {
        builder.Buy("Flap stay for the weight of the flap", Stays);
        if (asked.Hang == DoorHang.Below)
            builder.Buy("Magnetic catch", 1);
        builder.Steps.Add(
            "Fit a stay at each side of the flap, and set both as their maker says, so that it opens level and doesn't drop."
        );
        builder.Warn(
            Severity.Safety,
            asked.Hang == DoorHang.Below
                ? "A flap that drops can hurt hands and heads. Fit stays that brake it, and don't lean on it when it is open."
                : "A flap that falls shut can crush fingers. Fit stays that hold it open, matched to its weight as their maker "
                    + "says.",
            null,
            Swing
        );
    }

    // The left leaf hangs at its left, the right one at its right.
    private void Hang(DoorLeaf leaf, bool isFirst, int hinges)
    {
        var carrier = asked.IsFlap ? FlapCarrier(leaf.Box) : SideCarrier(leaf.Box, isFirst);
        if (carrier is null)
        {
            builder.WarnOfNothing(leaf.Hung, Where(isFirst), Remedy);
            return;
        }

        builder.Join(JointKind.Hinged, leaf.Hung, carrier, asked.IsFlap ? Axis.Z : Axis.X);
        builder.Buy(HingeName(carrier), hinges);
    }

    private string Where(bool isFirst) =>
        asked.Hang switch
        {
            DoorHang.Below => " below",
            DoorHang.Above => " above",
            _ => isFirst ? " at its left" : " at its right",
        };

    private string Remedy =>
        asked.IsFlap ? "Use a case with a bottom and a top, or a frame with rails." : "Set the part beside it back less.";

    // An overlay door lies on the upright that carries it, an inset one stands beside it.
    private Draft? SideCarrier(Box leaf, bool isLeft)
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

    // An overlay flap lies on the level part that carries it, an inset one stands on it or hangs from it.
    private Draft? FlapCarrier(Box leaf)
    {
        var isBelow = asked.Hang == DoorHang.Below;
        if (asked.IsInset)
            return builder
                .Touching(leaf.Grown(Axis.Z, asked.Gap.Value, asked.Gap.Value), Axis.Z, !isBelow)
                .Where(one => one.Along == Axis.X)
                .MaxBy(one => one.Box.Dx.Ticks);
        var behind = builder.Touching(leaf, Axis.Y, true).Where(one => one.Along == Axis.X).ToList();
        return isBelow
            ? behind.Where(one => one.Box.Z <= leaf.Z + asked.Overlay.Value).MinBy(one => one.Box.Z.Ticks)
            : behind.Where(one => one.Box.EndZ >= leaf.EndZ - asked.Overlay.Value).MaxBy(one => one.Box.EndZ.Ticks);
    }

    // A face frame takes cup hinges with a plate of their own.
    private string HingeName(Draft carrier)
    {
        if (asked.IsFlap)
            return asked.IsInset ? "Flap hinge for an inset flap" : "Flap hinge for an overlay flap";
        var fit = asked.IsInset ? "an inset door" : "an overlay door";
        return bay.Face is not null ? $"Face-frame hinge for {fit}"
            : Hinges.TakesPlate(carrier.Box.Dy, asked.IsInset ? asked.Material.Thickness : Length.Zero) ? $"Hinge for {fit}"
            : $"Butt hinge for {fit}";
    }
}
