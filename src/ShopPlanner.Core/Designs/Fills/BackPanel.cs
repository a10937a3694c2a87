using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>A back within one bay, screwed to what bounds it.</summary>
internal sealed class BackPanel : IFill
{
    public KindInfo Info { get; } =
        new(
            "back",
            "Back",
            "A panel at the back of this bay, between the parts around it.",
            [new("material", "Material", MemberType.Role, null)]
        );

    public bool Closes => true;

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var material = members.Role("material");
        if (members.Failed)
            return bay;
        var back = builder.Add(
            new(
                "Back panel",
                "Carcass",
                material,
                bay.Box.With(Axis.Y, bay.Box.EndY - material.Thickness, bay.Box.EndY),
                Axis.Z,
                Axis.Y
            )
            {
                Length = Working.Given("Clear height", bay.Box.Dz),
                Width = Working.Given("Clear width", bay.Box.Dx),
                FacesToFinish = "front face",
            }
        );
        var held = builder.ButtAt(back, Axis.X, false) + builder.ButtAt(back, Axis.X, true);
        held += builder.ButtAt(back, Axis.Z, false) + builder.ButtAt(back, Axis.Z, true);
        if (held == 0)
            builder.WarnOfNothing(back, " at its edges", "Use a frame with panels, or deeper legs.");
        return bay with { Box = bay.Box.With(Axis.Y, bay.Box.Y, bay.Box.EndY - material.Thickness) };
    }
}
