using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>No frame at all: the piece is made of parts that stand by themselves in the design.</summary>
internal sealed class NoFrame : IFrame
{
    public KindInfo Info { get; } = new("none", "None: extra parts only", "The piece is made of its extra parts alone.", []);

    public Bay? Build(NodeReader members, Outside outside, Builder builder) => null;
}
