using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Which units lie on others and cover them from one side: a top on its aprons, a back on a case. They go on after what
/// they cover.</summary>
internal sealed class Covers
{
    /// <summary>Nothing stands.</summary>
    public static readonly Covers None = new();

    // A cover rests on edges that reach over at least this much of its face, in both directions (our limit).
    private const double Spanned = 0.6;

    private static readonly bool[] Sides = [true, false];

    private readonly Dictionary<Unit, HashSet<Unit>> over = [];

    private Covers() { }

    public Covers(Solids solids, Contacts contacts, IReadOnlyDictionary<int, Unit> owner, IReadOnlyList<Unit> standing)
    {
        foreach (var unit in standing)
            if (
                unit is { Kind: UnitKind.Part or UnitKind.Panel or UnitKind.Fitted }
                && Find(solids, contacts, owner, unit) is { } found
            )
                over[unit] = found;
    }

    /// <summary>Whether it covers others.</summary>
    public bool IsCover(Unit unit) => over.ContainsKey(unit);

    /// <summary>How many covers lie on a unit, those that leave with it left out.</summary>
    public int Over(Unit unit, HashSet<Unit> gone) => over.Count(one => !gone.Contains(one.Key) && one.Value.Contains(unit));

    // What it covers; null where it covers nothing.
    private static HashSet<Unit>? Find(Solids solids, Contacts contacts, IReadOnlyDictionary<int, Unit> owner, Unit unit)
    {
        var flat = unit.Copies.Select(copy => solids.All[copy].Copy).MaxBy(copy => Face(copy.Box, copy.Flat))!.Flat;
        var whole = solids.Around(unit.Copies);
        var touched = unit
            .Copies.SelectMany(copy => contacts.Of(copy).Select(contact => (copy, contact)))
            .Where(one => owner.TryGetValue(one.contact.By, out var other) && other != unit)
            .ToList();
        var met = Sides.Select(forward => touched.Where(one => IsOn(solids, one, flat, forward)).ToList()).ToList();
        if (met[0].Count > 0 == met[1].Count > 0)
            return null;
        var side = met[0].Count > 0 ? met[0] : met[1];
        var edges = side.Where(one => IsEdge(solids, one, flat)).Select(one => one.contact.Where).ToList();
        return edges.Count > 0 && IsSpanned(edges.Aggregate((one, other) => one.Around(other)), whole, flat)
            ? [.. side.Select(one => owner[one.contact.By])]
            : null;
    }

    private static double Face(Box box, Axis flat) =>
        Way.Axes.Where(axis => axis != flat).Aggregate(1.0, (area, axis) => area * box.Extent(axis).Ticks);

    // What stands on edge under it, or lies flat and is smaller: not an end, and not what covers it in turn.
    private static bool IsEdge(Solids solids, (int Copy, Contact Contact) one, Axis flat)
    {
        var under = solids.All[one.Contact.By].Copy;
        return under.Along != flat && (under.Flat != flat || Face(under.Box, flat) < Face(solids.Box(one.Copy), flat));
    }

    // Face to face; what lies in a rabbet lies on it too.
    private static bool IsOn(Solids solids, (int Copy, Contact Contact) one, Axis flat, bool forward)
    {
        var way = new Way(flat, forward);
        var (box, other) = (solids.Box(one.Copy), solids.Box(one.Contact.By));
        if (one.Contact.Where.Extent(flat) == Length.Zero)
            return way.Behind(other) == way.Ahead(box);
        return way.Middle(other) > way.Middle(box)
            && solids.Between(one.Copy, one.Contact.By).Any(link => link.Kind == JointKind.Rabbet && link.Along != flat);
    }

    private static bool IsSpanned(Box edges, Box whole, Axis flat) =>
        Way.Axes.All(axis => axis == flat || edges.Extent(axis).Ticks >= Spanned * whole.Extent(axis).Ticks);
}
