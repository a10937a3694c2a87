using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Where a fault of a design is mended on the page.</summary>
/// <param name="Name">As a person finds it: <c>Bay 2, doors: fit</c>.</param>
/// <param name="Section">The page's section: <c>sizes</c>, <c>named</c>, <c>materials</c>, <c>frame</c>, <c>parts</c> or
/// <c>bays</c>; empty where no section has it.</param>
/// <param name="Bay">Path of the bay to choose; null for none.</param>
/// <param name="Key">The field; null where there is none.</param>
internal sealed record DesignPlace(string Name, string Section, string? Bay, string? Key)
{
    /// <summary>Finds the place of a fault by its field.</summary>
    public static DesignPlace Of(DesignDocument document, string field)
    {
        if (document.Dimensions.FirstOrDefault(one => IsOf(field, one.Name) || IsOf(field, "dimensions." + one.Name)) is { } size)
            return OfSize(size, field);
        if (field.StartsWith("materials", StringComparison.Ordinal))
            return new("Materials", "materials", null, null);
        if (document.Nodes().FirstOrDefault(one => IsOf(field, one.Path)) is { } node)
            return OfNode(node, field);
        if (document.Parts.FirstOrDefault(one => IsOf(field, one.Path)) is { } part)
            return OfPart(part, field);
        return document.AllBays().LastOrDefault(one => IsOf(field, one.Path)) is { } bay
            ? new(BayWords.Name(bay.Path), "bays", bay.Path, null)
            : new(field.Length == 0 ? "Design" : field, "", null, null);
    }

    // A limit is set with the named sizes, the value where the sizes are.
    private static DesignPlace OfSize(DesignDimension size, string field) =>
        field.EndsWith(".least", StringComparison.Ordinal) || field.EndsWith(".most", StringComparison.Ordinal)
            ? new($"{size.Label}: limits", "named", null, field)
            : new(size.Label, "sizes", null, "dimension " + size.Name);

    // A fault of the whole part, or of one figure of a corner, is shown beside the corners; one of a joint beside what it is
    // joined to.
    private static DesignPlace OfPart(FreePart part, string field)
    {
        if (part.Joints.FirstOrDefault(one => IsOf(field, one.Path)) is { } joint)
            return new($"{part.Name}: joint", "parts", null, field == joint.Path ? joint.Path + ".with" : field);
        if (field.StartsWith(part.Path + ".repeat.", StringComparison.Ordinal))
            return new($"{part.Name}: copies", "parts", null, field);
        var member = field == part.Path ? "at" : field[(part.Path.Length + 1)..].Split('.')[0];
        return new(part.Name, "parts", null, $"{part.Path}.{member}");
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
