using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A fill: makes what fills or closes a bay.</summary>
internal interface IFill
{
    KindInfo Info { get; }

    /// <summary>True for a fill that closes the bay in front or behind: it is built before what lies within.</summary>
    bool Closes => false;

    /// <summary>True for doors and drawers that close the plane of the front: a member stands between two bays that have
    /// them.</summary>
    bool HasFront => false;

    /// <summary>How far it stands out in front of the frame: the thickness of an overlay door; nothing for most. The frame is
    /// built so much less deep.</summary>
    Length StandsOut(NodeReader members) => Length.Zero;

    /// <summary>Builds it, and says what bay is left for what comes after.</summary>
    Bay Build(NodeReader members, Bay bay, Builder builder);
}
