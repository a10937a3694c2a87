using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A frame: makes the members that hold the piece up, and says what bay they leave.</summary>
internal interface IFrame
{
    KindInfo Info { get; }

    /// <summary>The bay within; null where the frame leaves none.</summary>
    Bay? Build(NodeReader members, Outside outside, Builder builder);
}
