using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Where what was bought is used up.</summary>
internal enum SupplyUse
{
    /// <summary>Glue.</summary>
    Glue,

    /// <summary>Hinges and lid supports.</summary>
    Hang,

    /// <summary>Slides.</summary>
    Drawer,

    /// <summary>Bolts.</summary>
    Bolt,

    /// <summary>Clips and buttons of a top.</summary>
    Top,

    /// <summary>Catches.</summary>
    Catch,

    /// <summary>Shelf pins.</summary>
    Pin,

    /// <summary>Pulls, knobs and handles.</summary>
    Pull,

    /// <summary>Brackets and screws for the wall.</summary>
    Wall,

    /// <summary>All else.</summary>
    Other,
}

/// <summary>Hands the piece's hardware out to the steps that use it up, so that all of it is used once.</summary>
internal sealed class Supplies
{
    // The first that the name contains decides; the order matters: a hinge for a door that is screwed on is a hinge.
    private static readonly (string Word, SupplyUse Use)[] Words =
    [
        ("glue", SupplyUse.Glue),
        ("hinge", SupplyUse.Hang),
        ("shelf support", SupplyUse.Pin),
        ("support", SupplyUse.Hang),
        ("slide", SupplyUse.Drawer),
        ("tip", SupplyUse.Wall),
        ("wall", SupplyUse.Wall),
        ("lag", SupplyUse.Wall),
        ("catch", SupplyUse.Catch),
        ("pin", SupplyUse.Pin),
        ("pull", SupplyUse.Pull),
        ("knob", SupplyUse.Pull),
        ("handle", SupplyUse.Pull),
        ("bolt", SupplyUse.Bolt),
        ("button", SupplyUse.Top),
        ("clip", SupplyUse.Top),
        ("figure", SupplyUse.Top),
        ("fastener", SupplyUse.Top),
    ];

    private readonly Dictionary<string, int> left = [];
    private readonly HashSet<int> bolted = [];
    private readonly Solids solids;

    public Supplies(Solids solids)
    {
        this.solids = solids;
        foreach (var item in solids.Piece.Hardware)
            left[item.Name] = left.GetValueOrDefault(item.Name) + item.Quantity;
        foreach (var item in solids.Links.SelectMany(link => Of(link)))
            left[item.Name] = left.GetValueOrDefault(item.Name) - item.Quantity;
    }

    /// <summary>What joints take, by name.</summary>
    public ImmutableArray<WorkItem> For(IEnumerable<Link> links) =>
        [
            .. links
                .SelectMany(link => Of(link))
                .GroupBy(item => item.Name)
                .Select(same => new WorkItem(same.Key, same.Sum(item => item.Quantity)))
                .OrderBy(item => item.Name, StringComparer.Ordinal),
        ];

    /// <summary>Takes a share of what is left for a use: as much of it as the parts served now are of those not served
    /// yet.</summary>
    /// <param name="use">What for.</param>
    /// <param name="served">Doors, drawers or joints that are served now.</param>
    /// <param name="waiting">Those and all that come after them.</param>
    public ImmutableArray<WorkItem> Take(SupplyUse use, int served, int waiting)
    {
        var taken = new List<WorkItem>();
        foreach (var (name, quantity) in left.Where(one => one.Value > 0 && Use(one.Key) == use).ToList())
        {
            var share = waiting <= served ? quantity : quantity * served / waiting;
            if (share == 0)
                continue;
            left[name] = quantity - share;
            taken.Add(new(name, share));
        }

        return [.. taken.OrderBy(item => item.Name, StringComparer.Ordinal)];
    }

    /// <summary>Takes the bolts of joints. Where there is a kind of bolt for each kind of part that is bolted, they go together
    /// in the order of the design; else all are shared out.</summary>
    public ImmutableArray<WorkItem> TakeBolts(IReadOnlyCollection<Link> links)
    {
        var all = solids.Links.Where(link => link.Kind == JointKind.Bolted).ToList();
        var names = all.Select(link => solids.All[link.From].Name).Distinct().ToList();
        var kinds = left.Keys.Where(name => Use(name) == SupplyUse.Bolt).ToList();
        var taken = new List<WorkItem>();
        foreach (var (kind, i) in kinds.Select((kind, i) => (kind, i)))
        {
            bool IsFor(Link link) => names.Count != kinds.Count || solids.All[link.From].Name == names[i];
            var (served, waiting) = (links.Count(IsFor), all.Count(link => IsFor(link) && !bolted.Contains(link.Index)));
            var share = served == 0 ? 0 : left[kind] * served / Math.Max(served, waiting);
            if (share > 0)
                taken.Add(new(kind, share));
            left[kind] -= share;
        }

        bolted.UnionWith(links.Select(link => link.Index));
        return [.. taken];
    }

    /// <summary>Takes all that no step has taken.</summary>
    public ImmutableArray<WorkItem> TakeRest() =>
        [
            .. left.Where(one => one.Value > 0)
                .Select(one => new WorkItem(one.Key, one.Value))
                .OrderBy(item => item.Name, StringComparer.Ordinal),
        ];

    private static SupplyUse Use(string name)
    {
        foreach (var (word, use) in Words)
            if (name.Contains(word, StringComparison.OrdinalIgnoreCase))
                return use;
        return SupplyUse.Other;
    }

    private IEnumerable<WorkItem> Of(Link link)
    {
        if (solids.Item(link) is { } item)
            yield return new(item.Name, item.Count);
    }
}
