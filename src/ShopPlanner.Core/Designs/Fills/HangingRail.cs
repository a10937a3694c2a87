using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>A rail under the top against the back, through which the piece is screwed to the wall.</summary>
internal sealed class HangingRail : IFill
{
    public KindInfo Info { get; } =
        new(
            "hanging-rail",
            "Hanging rail",
            "A rail against the back that you screw through into the wall.",
            [new("material", "Material", MemberType.Role, null), new("width", "Width of the rail", MemberType.Length, "3 1/2 in")]
        );

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var (material, width) = (members.Role("material"), members.Length("width"));
        if (members.Failed)
            return bay;
        if (material.Width is { } own)
            width = Working.Given("Width of the board", own);
        var box = bay
            .Box.With(Axis.Y, bay.Box.EndY - material.Thickness, bay.Box.EndY)
            .With(Axis.Z, bay.Box.EndZ - width.Value, bay.Box.EndZ);
        var rail = builder.Add(
            new("Hanging rail", "Carcass", material, box, Axis.X, Axis.Y)
            {
                Length = Working.Given("Clear width", bay.Box.Dx),
                Width = width,
                FacesToFinish = "front face",
            }
        );
        foreach (var side in new[] { bay.Left, bay.Right })
            if (side is not null)
                builder.Join(HoldsPockets(material, side) ? JointKind.PocketScrew : JointKind.Screwed, rail, side, Axis.X);
        if (bay.Top is { } top)
            builder.Join(JointKind.Screwed, rail, top, Axis.Z);
        builder.IsFixedToWall = true;
        builder.Warn(
            Severity.Safety,
            "Screw the hanging rail into studs or solid masonry, with fasteners made for the wall. Ask a professional if you are "
                + "not sure.",
            rail
        );
        return bay;
    }

    // From a pocket, the shortest screw would come out through a thin side.
    private static bool HoldsPockets(RoleMaterial rail, Draft side) =>
        ScrewChoice
            .Of(Working.Given("rail", rail.Thickness), Working.Given("side", side.Box.Extent(Axis.X)), ScrewJoint.Pocket)
            .Choice
            is not null;
}
