using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A part that splits a bay.</summary>
internal interface ISplit
{
    KindInfo Info { get; }

    /// <summary>The smaller bays.</summary>
    /// <param name="members">Of the splitting part.</param>
    /// <param name="bay">The bay that is split.</param>
    /// <param name="sizes">Clear sizes from the left or from below; null for an equal share of the rest.</param>
    /// <param name="builder">Takes the parts.</param>
    ImmutableArray<Bay> Build(NodeReader members, Bay bay, ImmutableArray<Working<Length>?> sizes, Builder builder);
}
