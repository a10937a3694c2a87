using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Brackets that hold a standing piece to the wall: hardware alone, no part.</summary>
internal sealed class AntiTip : IFill
{
    public KindInfo Info { get; } =
        new(
            "anti-tip",
            "Anti-tip brackets",
            "Brackets at the top of the back, screwed into wall studs, so the piece can't tip forward.",
            [new("count", "Brackets", MemberType.Count, "2")]
        );

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var count = members.Count("count");
        if (members.Failed)
            return bay;
        if (count < 1)
        {
            members.Fail("count", count.ToString(CultureInfo.InvariantCulture), "must be at least 1 bracket");
            return bay;
        }

        builder.IsFixedToWall = true;
        builder.Buy("Anti-tip bracket with screws", count);
        builder.Warn(
            Severity.Safety,
            "Screw the anti-tip brackets into studs or solid masonry, as their maker says. Ask a professional if you are not "
                + "sure."
        );
        return bay;
    }
}
