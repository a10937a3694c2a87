using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Core.Designs;

/// <summary>Changes that carry one bay over to others.</summary>
public static class DesignBays
{
    /// <summary>Fills a bay, and splits it, as another one is. A bay cannot take one that it lies in.</summary>
    /// <param name="document">The design.</param>
    /// <param name="from">Path of the bay to copy.</param>
    /// <param name="to">Path of the bay that becomes like it.</param>
    public static DesignDocument CopyBay(this DesignDocument document, string from, string to)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        var source = document.AllBays().FirstOrDefault(bay => bay.Path == from);
        return source is null || IsWithin(to, from) || IsWithin(from, to)
            ? document
            : document.ChangeBay(to, bay => source with { Path = bay.Path });
    }

    /// <summary>The bays that a bay can be copied to: those beside it, in the order of the document.</summary>
    public static ImmutableArray<BayNode> Beside(this DesignDocument document, string bay)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(bay);
        var around = document.AllBays().FirstOrDefault(one => one.Bays.Any(inner => inner.Path == bay));
        return around is null ? [] : [.. around.Bays.Where(one => one.Path != bay)];
    }

    /// <summary>Turns the order of the smaller bays of a bay around, with their sizes: what was at the left is at the right, what
    /// was below is above.</summary>
    public static DesignDocument MirrorBays(this DesignDocument document, string bay)
    {
        ArgumentNullException.ThrowIfNull(document);
        return document.ChangeBay(bay, one => one with { Bays = [.. one.Bays.Reverse()], Sizes = [.. one.Sizes.Reverse()] });
    }

    private static bool IsWithin(string inner, string outer) =>
        inner == outer || inner.StartsWith(outer + ".", StringComparison.Ordinal);
}
