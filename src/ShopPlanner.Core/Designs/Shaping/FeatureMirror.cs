using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Shaping;

/// <summary>Mirrors what is cut out of a copy within the copy's box.</summary>
internal static class FeatureMirror
{
    /// <summary>The mirror image along an axis.</summary>
    public static PartFeature Of(PartFeature feature, Axis axis, Box whole)
    {
        var extent = whole.Extent(axis);
        return feature switch
        {
            Hole hole => Of(hole with { Face = Side(hole.Face, axis) }, axis, extent),
            Slot slot => Of(slot with { Face = Side(slot.Face, axis) }, axis, extent),
            Notch notch => Of(notch, axis, extent),
            Bevel bevel => bevel with { Edge = Side(bevel.Edge, axis), Keeps = Side(bevel.Keeps, axis) },
            Taper taper => taper with { Face = Side(taper.Face, axis), End = Side(taper.End, axis) },
            Arc arc when arc.Run == axis => arc with { From = extent - arc.To, To = extent - arc.From },
            Arc arc => arc with { Edge = Side(arc.Edge, axis) },
            Corner corner => corner with { First = Side(corner.First, axis), Second = Side(corner.Second, axis) },
            _ => throw new InvalidOperationException($"{feature.GetType().Name} has no mirror image"),
        };
    }

    private static BoxSide Side(BoxSide side, Axis axis) => side.Axis() == axis ? side.Opposite() : side;

    private static Hole Of(Hole hole, Axis axis, Length extent) =>
        hole.Axes.First == axis ? hole with { First = extent - hole.First }
        : hole.Axes.Second == axis ? hole with { Second = extent - hole.Second }
        : hole;

    private static Slot Of(Slot slot, Axis axis, Length extent) =>
        slot.Across == axis ? slot with { From = extent - slot.From - slot.Width }
        : slot.Run == axis
            ? slot with
            {
                Start = slot.End is { } end ? extent - end : Length.Zero,
                End = slot.Start == Length.Zero ? null : extent - slot.Start,
            }
        : slot;

    private static Notch Of(Notch notch, Axis axis, Length extent) =>
        notch.Axes.First == axis ? notch with { From = extent - notch.To, To = extent - notch.From }
        : notch.Axes.Second == axis ? notch with { SecondFrom = extent - notch.SecondTo, SecondTo = extent - notch.SecondFrom }
        : notch;
}
