using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Fills;
using ShopPlanner.Core.Designs.Frames;

namespace ShopPlanner.Core.Designs;

/// <summary>All kinds that a design can name.</summary>
internal static class Kinds
{
    public static readonly ImmutableArray<IFrame> Frames = FrameList.All;

    public static readonly ImmutableArray<ISplit> Splits = FillList.Splits;

    public static readonly ImmutableArray<IFill> Fills = FillList.Fills;

    public static readonly ImmutableArray<ITop> Tops = FrameList.Tops;
}
