using System.Collections.Immutable;

namespace ShopPlanner.Core.Designs.Shaping;

/// <summary>Shapes that a design can name.</summary>
internal static class ShapeList
{
    public static readonly ImmutableArray<IShape> All =
    [
        new HoleShape(),
        new GrooveShape(),
        new NotchShape(),
        new BevelShape(),
        new TaperShape(),
        new ArcShape(),
        new CornerShape(),
    ];
}
