using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A frame: makes the members that hold the piece up, and says what bay they leave.</summary>
internal interface IFrame
{
    KindInfo Info { get; }

    /// <summary>How high a base lifts it: the frame is built so much lower, from its own foot up, and the base below
    /// that.</summary>
    Length Lift(NodeReader members) => Length.Zero;

    /// <summary>The bay within; null where the frame leaves none.</summary>
    Bay? Build(NodeReader members, Outside outside, Builder builder);
}
