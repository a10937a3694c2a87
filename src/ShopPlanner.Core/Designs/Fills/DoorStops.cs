using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Strips that an inset door closes against, above and below, and a catch. Behind a rail as thick as the door a strip is
/// glued to the rail's back; elsewhere it is ripped and glued to what lies above or below.</summary>
internal sealed class DoorStops : IFill
{
    public KindInfo Info { get; } =
        new(
            "door-stops",
            "Door stops",
            "Strips behind an inset door that it closes against, with a catch.",
            [
                new("material", "Strips", MemberType.Role, null),
                new("door", "Material of the doors", MemberType.Role, null),
                new("reach", "Reach into the opening", MemberType.Length, "3/8 in"),
                new("where", "Where", MemberType.Choice, "both", "both", "top", "bottom"),
            ]
        );

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var (material, door, reach, where) = (
            members.Role("material"),
            members.Role("door"),
            members.Length("reach").Value,
            members.Choice("where")
        );
        if (members.Failed)
            return bay;
        if (!reach.IsPositive || reach >= Wide(material))
            members.Fail(
                "reach",
                LengthFormat.WithUnit(reach, members.Unit),
                "must be more than zero and less than the strip is wide, " + LengthFormat.WithUnit(Wide(material), members.Unit)
            );
        if (members.Failed)
            return bay;
        var behind = bay.Front.Y + door.Thickness;
        foreach (var isTop in new[] { true, false })
            if (where == "both" || where == (isTop ? "top" : "bottom"))
                Add(material, bay, behind, reach, isTop, builder);
        builder.Buy("Magnetic catch", 1);
        return bay;
    }

    private static Length Wide(RoleMaterial material) => material.Width ?? material.Thickness * 2;

    private static void Add(RoleMaterial material, Bay bay, Length y, Length reach, bool isTop, Builder builder)
    {
        var strip = builder.Add(
            new("Door stop", "Door stops", material, Place(material, bay, y, reach, isTop), Axis.X, Axis.Y)
            {
                Length = Working.Given("Clear width", bay.Box.Dx),
                FacesToFinish = "front face, edges",
            }
        );
        var held = Glue(strip, Axis.Z, isTop, builder) + Glue(strip, Axis.Y, false, builder);
        if (held == 0)
            builder.WarnOfNothing(strip, "", "Use a bottom, a top or rails beside the doors.");
    }

    // A rail flush with the door's back takes the whole strip on its back; the rest is ripped to its reach.
    private static Box Place(RoleMaterial material, Bay bay, Length y, Length reach, bool isTop)
    {
        var rail = isTop ? bay.ReachAbove : bay.ReachBelow;
        var high = rail.IsPositive && bay.Front.EndY == y ? Length.Min(Wide(material), reach + rail) : reach;
        var (low, top) = isTop
            ? (bay.Front.EndZ - reach, bay.Front.EndZ - reach + high)
            : (bay.Front.Z + reach - high, bay.Front.Z + reach);
        return bay.Box.With(Axis.Y, y, y + material.Thickness).With(Axis.Z, low, top);
    }

    private static int Glue(Draft strip, Axis axis, bool atEnd, Builder builder) =>
        builder.JoinAt(strip, strip.Box, axis, atEnd, _ => JointKind.Glued, Length.Zero);
}
