using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;

namespace ShopPlanner.Core.Designs;

/// <summary>Changes of a design, each giving a new one. Places in it are named by their paths; a path that is not there changes
/// nothing.</summary>
public static class DesignEditing
{
    /// <summary>Path of the bay that the frame leaves.</summary>
    public const string WholeBay = "bays";

    private static readonly string[] ThinMembers = ["panel", "back", "bottom"];

    /// <summary>The design with values taken over for good: what a person saves as a design of their own.</summary>
    public static DesignDocument WithValues(this DesignDocument document, IReadOnlyDictionary<string, string> changed)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(changed);
        return document with
        {
            Dimensions =
            [
                .. document.Dimensions.Select(one =>
                    changed.TryGetValue(one.Name, out var text) ? one with { Value = text } : one
                ),
            ],
        };
    }

    /// <summary>Sets a member of a frame, top, split or fill; an empty text for a member with a default takes the
    /// default.</summary>
    public static DesignDocument WithMember(this DesignDocument document, string path, string member, string text) =>
        document.Change(
            path,
            node =>
                node with
                {
                    Members = IsUsual(node, member, text) ? node.Members.Remove(member) : node.Members.SetItem(member, text),
                }
        );

    /// <summary>Another frame; members of the same name and roles are kept.</summary>
    public static DesignDocument WithFrame(this DesignDocument document, string kind)
    {
        ArgumentNullException.ThrowIfNull(document);
        return document with { Frame = Node(document, kind, "frame", document.Frame) };
    }

    /// <summary>Another top, or none.</summary>
    public static DesignDocument WithTop(this DesignDocument document, string? kind)
    {
        ArgumentNullException.ThrowIfNull(document);
        return document with { Top = kind is null ? null : Node(document, kind, "top", document.Top) };
    }

    /// <summary>One more fill in a bay.</summary>
    public static DesignDocument AddFill(this DesignDocument document, string bay, string kind) =>
        document.ChangeBay(bay, one => one with { Fills = one.Fills.Add(Node(document, kind, "", null)) });

    /// <summary>Takes a fill out.</summary>
    public static DesignDocument RemoveFill(this DesignDocument document, string fill)
    {
        ArgumentNullException.ThrowIfNull(fill);
        var at = fill.LastIndexOf(".fills.", StringComparison.Ordinal);
        return at < 0
            ? document
            : document.ChangeBay(fill[..at], one => one with { Fills = one.Fills.RemoveAll(node => node.Path == fill) });
    }

    /// <summary>Splits a bay into equal ones; what filled it stays and closes it as a whole.</summary>
    /// <param name="document">The design.</param>
    /// <param name="bay">Path of the bay.</param>
    /// <param name="kind">The part that splits.</param>
    /// <param name="count">How many bays, two at least.</param>
    public static DesignDocument Split(this DesignDocument document, string bay, string kind, int count) =>
        document.ChangeBay(
            bay,
            one =>
                one with
                {
                    Split = Node(document, kind, "", one.Split),
                    Sizes = [.. Enumerable.Repeat("*", count)],
                    Bays = [.. Enumerable.Range(0, count).Select(i => i < one.Bays.Length ? one.Bays[i] : Empty)],
                }
        );

    /// <summary>Takes what splits a bay out, and all that was in the smaller bays.</summary>
    public static DesignDocument Unsplit(this DesignDocument document, string bay) =>
        document.ChangeBay(bay, one => one with { Split = null, Sizes = [], Bays = [] });

    /// <summary>Sets the clear size of one of the smaller bays; empty for an equal share.</summary>
    public static DesignDocument WithSize(this DesignDocument document, string bay, int index, string text) =>
        document.ChangeBay(
            bay,
            one =>
                index < one.Sizes.Length
                    ? one with
                    {
                        Sizes = one.Sizes.SetItem(index, string.IsNullOrWhiteSpace(text) ? "*" : text),
                    }
                    : one
        );

    /// <summary>Another material for a role, or one more role.</summary>
    public static DesignDocument WithMaterial(this DesignDocument document, RoleMaterial material)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(material);
        var at = document.Materials.ToList().FindIndex(one => one.Role == material.Role);
        return document with { Materials = at < 0 ? document.Materials.Add(material) : document.Materials.SetItem(at, material) };
    }

    /// <summary>Takes a role out that nothing uses.</summary>
    public static DesignDocument RemoveMaterial(this DesignDocument document, string role)
    {
        ArgumentNullException.ThrowIfNull(document);
        return document.Uses(role)
            ? document
            : document with
            {
                Materials = document.Materials.RemoveAll(one => one.Role == role),
            };
    }

    /// <summary>True where a frame, fill, top or part is made of the role.</summary>
    public static bool Uses(this DesignDocument document, string role)
    {
        ArgumentNullException.ThrowIfNull(document);
        return document.Parts.Any(part => part.Role == role || part.Edges.Any(edge => edge.Members.ContainsValue(role)))
            || document.Nodes().Any(node => UsesRole(node, role));
    }

    /// <summary>Frame, top, and all that splits or fills the bays.</summary>
    public static IEnumerable<DesignNode> Nodes(this DesignDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return new[] { document.Frame }
            .Concat(document.Top is { } top ? [top] : [])
            .Concat(document.AllBays().SelectMany(bay => bay.Split is { } split ? bay.Fills.Add(split) : bay.Fills));
    }

    /// <summary>The bays, each before the smaller ones within it; the whole inside first.</summary>
    public static IEnumerable<BayNode> AllBays(this DesignDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Within(document.Bays ?? Empty with { Path = WholeBay });
    }

    private static BayNode Empty => new([], null, [], [], "");

    private static IEnumerable<BayNode> Within(BayNode bay) => bay.Bays.SelectMany(Within).Prepend(bay);

    private static bool UsesRole(DesignNode node, string role) =>
        DesignKinds.Find(node.Kind) is { } kind
        && kind.Members.Any(member =>
            member.Type == MemberType.Role && (node.Members.GetValueOrDefault(member.Name) ?? member.Default) == role
        );

    private static bool IsUsual(DesignNode node, string member, string text) =>
        string.IsNullOrWhiteSpace(text)
        && DesignKinds.Find(node.Kind)?.Members.FirstOrDefault(one => one.Name == member)?.Default is not null;

    private static DesignDocument Change(this DesignDocument document, string path, Func<DesignNode, DesignNode> change)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Frame.Path == path)
            return document with { Frame = change(document.Frame) };
        if (document.Top?.Path == path)
            return document with { Top = change(document.Top) };
        return document.Bays is { } bays ? document with { Bays = Change(bays, path, change) } : document;
    }

    private static BayNode Change(BayNode bay, string path, Func<DesignNode, DesignNode> change) =>
        bay with
        {
            Fills = [.. bay.Fills.Select(fill => fill.Path == path ? change(fill) : fill)],
            Split = bay.Split?.Path == path ? change(bay.Split) : bay.Split,
            Bays = [.. bay.Bays.Select(inner => Change(inner, path, change))],
        };

    internal static DesignDocument ChangeBay(this DesignDocument document, string path, Func<BayNode, BayNode> change)
    {
        ArgumentNullException.ThrowIfNull(document);
        var changed = ChangeBay(document.Bays ?? Empty with { Path = WholeBay }, path, change);
        var isEmpty = changed is { Fills.IsEmpty: true, Split: null, Bays.IsEmpty: true };
        return document with { Bays = isEmpty ? null : Numbered(changed, WholeBay) };
    }

    private static BayNode ChangeBay(BayNode bay, string path, Func<BayNode, BayNode> change) =>
        bay.Path == path ? change(bay) : bay with { Bays = [.. bay.Bays.Select(inner => ChangeBay(inner, path, change))] };

    // Paths as a document that is read has them.
    private static BayNode Numbered(BayNode bay, string path) =>
        bay with
        {
            Path = path,
            Fills = [.. bay.Fills.Select((fill, i) => fill with { Path = FormattableString.Invariant($"{path}.fills.{i}") })],
            Split = bay.Split is { } split ? split with { Path = path + ".split" } : null,
            Bays = [.. bay.Bays.Select((inner, i) => Numbered(inner, FormattableString.Invariant($"{path}.bays.{i}")))],
        };

    private static DesignNode Node(DesignDocument document, string kind, string path, DesignNode? before)
    {
        var members = (DesignKinds.Find(kind)?.Members ?? []).Select(member =>
            (member.Name, Text: before?.Members.GetValueOrDefault(member.Name) ?? Usual(document, member))
        );
        return new(
            kind,
            members.Where(one => one.Text is not null).ToImmutableDictionary(one => one.Name, one => one.Text!),
            path
        );
    }

    // A role that must be given: a thin sheet for a panel, else what the frame is made of; it can be changed at once.
    private static string? Usual(DesignDocument document, MemberInfo member)
    {
        if (member.Type != MemberType.Role || document.Materials.IsEmpty)
            return null;
        if (
            ThinMembers.Contains(member.Name)
            && document.Materials.Where(one => one.Form == MaterialForm.Sheet).MinBy(one => one.Thickness) is { } thin
        )
            return thin.Role;
        return member.Default is null ? document.Materials[0].Role : null;
    }
}
