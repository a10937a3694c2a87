using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Where a fault of a design is mended on the page.</summary>
/// <param name="Name">As a person finds it: <c>Bay 2, doors: fit</c>.</param>
/// <param name="Section">The page's section: <c>sizes</c>, <c>materials</c>, <c>frame</c> or <c>bays</c>; empty where no section
/// has it.</param>
/// <param name="Bay">Path of the bay to choose; null for none.</param>
/// <param name="Key">The field; null where there is none.</param>
internal sealed record DesignPlace(string Name, string Section, string? Bay, string? Key)
{
    /// <summary>Finds the place of a fault by its field.</summary>
    public static DesignPlace Of(DesignDocument document, string field)
    {
        if (document.Dimensions.FirstOrDefault(one => IsOf(field, one.Name) || IsOf(field, "dimensions." + one.Name)) is { } size)
            return new(size.Label, "sizes", null, "dimension " + size.Name);
        if (field.StartsWith("materials", StringComparison.Ordinal))
            return new("Materials", "materials", null, null);
        if (document.Nodes().FirstOrDefault(one => IsOf(field, one.Path)) is { } node)
            return OfNode(node, field);
        return document.AllBays().LastOrDefault(one => IsOf(field, one.Path)) is { } bay
            ? new(BayWords.Name(bay.Path), "bays", bay.Path, null)
            : new(field.Length == 0 ? "Design" : field, "", null, null);
    }

    private static DesignPlace OfNode(DesignNode node, string field)
    {
        var kind = DesignKinds.Find(node.Kind);
        var member = kind?.Members.FirstOrDefault(one => field == node.Path + "." + one.Name);
        var bay = BayOf(node.Path);
        var title = bay is null
            ? (node.Path == "top" ? "Top" : "Frame")
            : $"{BayWords.Name(bay)}, {BayWords.Title(node.Kind).ToLowerInvariant()}";
        return new(
            member is null ? title : $"{title}: {member.Label.ToLowerInvariant()}",
            bay is null ? "frame" : "bays",
            bay,
            member is null ? null : field
        );
    }

    // A fill or a split lies in the bay before it in the path.
    private static string? BayOf(string path)
    {
        var at = Math.Max(
            path.LastIndexOf(".fills.", StringComparison.Ordinal),
            path.LastIndexOf(".split", StringComparison.Ordinal)
        );
        return at < 0 ? null : path[..at];
    }

    private static bool IsOf(string field, string path) =>
        field == path || field.StartsWith(path + ".", StringComparison.Ordinal);
}
