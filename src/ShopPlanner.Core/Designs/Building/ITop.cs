using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A top: lies on the frame.</summary>
internal interface ITop
{
    KindInfo Info { get; }

    /// <summary>How much of the outside height it takes, so that the frame is built so much lower.</summary>
    Length Thickness(NodeReader members);

    /// <summary>How far it stands out over the frame at each end, in front and behind; the outside size is the top's.</summary>
    Overhang Overhang(NodeReader members);

    /// <param name="members">Of the top.</param>
    /// <param name="outside">Outside size of the whole piece, the top included.</param>
    /// <param name="builder">Takes the parts; holds the frame's already.</param>
    void Build(NodeReader members, Outside outside, Builder builder);
}
