using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Frames and tops that a design can name.</summary>
internal static class FrameList
{
    public static readonly ImmutableArray<IFrame> All =
    [
        new SheetCarcass(),
        new PostAndRail(),
        new LegAndApron(),
        new OpenRack(),
        new PostCabinet(),
        new DrawerTable(),
        new FloatingShelf(),
        new LiddedBox(),
        new BedFrame(),
    ];

    public static readonly ImmutableArray<ITop> Tops = [new SheetTop(), new SolidTop(), new SlattedTop()];
}
