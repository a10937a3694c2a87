using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Frames and tops that a design can name.</summary>
internal static class FrameList
{
    public static readonly ImmutableArray<IFrame> All = [new SheetCarcass()];

    public static readonly ImmutableArray<ITop> Tops = [];
}
