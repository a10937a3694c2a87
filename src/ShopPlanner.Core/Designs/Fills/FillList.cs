using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Fills and splits that a design can name.</summary>
internal static class FillList
{
    public static readonly ImmutableArray<IFill> Fills =
    [
        new Doors(),
        new Drawers(),
        new AdjustableShelves(),
        new CleatShelf(),
        new BackPanel(),
        new HangingRail(),
        new AntiTip(),
        new Slats(),
        new DropInBottom(),
        new DoorStops(),
        new SlidingDoors(),
    ];

    public static readonly ImmutableArray<ISplit> Splits = [new Divider(), new FixedShelf()];
}
