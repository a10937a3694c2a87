using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Finds the kind that a node of a document names.</summary>
internal static class KindChoice
{
    /// <summary>The kind; null after a fault that lists what there is.</summary>
    public static T? Find<T>(IReadOnlyCollection<T> kinds, Func<T, KindInfo> info, DesignNode node, List<Fault> faults)
        where T : class
    {
        var kind = kinds.FirstOrDefault(one => info(one).Name == node.Kind);
        if (kind is null)
            faults.Add(
                Fault.Of(
                    node.Path + ".kind",
                    node.Kind,
                    "isn't a choice here: pick one of " + string.Join(", ", kinds.Select(one => info(one).Name))
                )
            );
        return kind;
    }
}
