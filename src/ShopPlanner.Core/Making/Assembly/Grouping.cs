using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Finds the units of the trade among copies: panels glued up of strips, crosses lapped over each other, parts with the
/// cleats that they alone hold, frames in one plane. Each is put together by itself before it joins the rest.</summary>
internal sealed class Grouping(Solids solids, bool cleatsFirst, Sequencer sequencer)
{
    // A cleat or an edging is less than this of what holds it (our limit).
    private const double Small = 0.5;

    /// <summary>Puts together a unit of more than one copy, and all units within it.</summary>
    public void Build(Unit unit)
    {
        var atoms = unit.Copies.Select(copy => new Unit(UnitKind.Part, [copy])).ToList();
        if (unit.Copies.Length > 2)
        {
            atoms = Merge(unit, atoms, UnitKind.Panel, Panels(unit));
            atoms = Merge(unit, atoms, UnitKind.Cross, Crosses(unit));
            if (cleatsFirst || unit.Kind != UnitKind.Piece)
                atoms = Merge(unit, atoms, UnitKind.Fitted, Fitted(atoms));
            if (unit.Kind is UnitKind.Piece or UnitKind.Group)
                atoms = Merge(unit, atoms, UnitKind.Frame, new Frames(solids, atoms).Find());
        }

        sequencer.Run(unit, atoms);
    }

    /// <summary>Puts together the piece with what is fitted to it.</summary>
    public Unit Piece(IReadOnlyList<Unit> bodies)
    {
        var (main, fitted) = (bodies[0], bodies.Skip(1).ToList());
        Build(main);
        if (fitted.Count == 0)
            return main;
        foreach (var unit in fitted.Where(unit => unit.IsComposite))
            Build(unit);
        var whole = new Unit(UnitKind.Piece, [.. bodies.SelectMany(body => body.Copies).Order()]);
        sequencer.Run(whole, [.. main.IsComposite ? main.Insertions.Select(one => one.What) : [main], .. fitted]);
        return whole;
    }

    // Sets that are more than one of the atoms, and less than the whole, become units.
    private List<Unit> Merge(Unit whole, List<Unit> atoms, UnitKind kind, IEnumerable<int[]> sets)
    {
        var owner = Unit.Owners(atoms);
        foreach (var set in sets)
        {
            var within = set.Select(copy => owner[copy]).Distinct().ToList();
            int[] copies = [.. within.SelectMany(atom => atom.Copies).Order()];
            if (within.Count < 2 || copies.Length == whole.Copies.Length)
                continue;
            var unit = new Unit(kind, copies);
            sequencer.Run(unit, within);
            foreach (var copy in copies)
                owner[copy] = unit;
        }

        return [.. owner.Values.Distinct().OrderBy(unit => unit.Copies[0])];
    }

    // Glued edge to edge or face to face, the grain of both the same way.
    private List<int[]> Panels(Unit unit)
    {
        var sets = new Clusters(unit.Copies);
        foreach (var link in Inner(unit).Where(link => link.Kind is JointKind.Glued or JointKind.Dowel))
            if (IsPanel(solids.All[link.From].Copy, solids.All[link.Into].Copy, link.Along))
                sets.Join(link.From, link.Into);
        return sets.All();
    }

    // Strips of one plane, or layers; a square strip lies in any plane. What stands square is a post, and no strip.
    private static bool IsPanel(PartCopy from, PartCopy into, Axis along) =>
        from.Along == into.Along
        && from.Along != along
        && (from.Flat == into.Flat || (from.Along != Axis.Z && (IsSquare(from) || IsSquare(into))));

    private static bool IsSquare(PartCopy copy) => copy.Box.Extent(copy.Across) == copy.Box.Extent(copy.Flat);

    private List<int[]> Crosses(Unit unit)
    {
        var sets = new Clusters(unit.Copies);
        foreach (var link in Inner(unit).Where(link => link.IsLet && IsLap(link)))
            sets.Join(link.From, link.Into);
        return sets.All();
    }

    // Each goes through the other, crosswise.
    private bool IsLap(Link link)
    {
        var (from, into) = (solids.All[link.From].Copy, solids.All[link.Into].Copy);
        return from.Along != into.Along
            && link.Along != from.Along
            && link.Along != into.Along
            && link.Fit.Joint.Depth == into.Box.Extent(link.Along)
            && link.Fit.Joint.Depth == from.Box.Extent(link.Along);
    }

    // Parts that are fastened to one unit only, and are small beside it.
    private List<int[]> Fitted(List<Unit> atoms)
    {
        var owner = Unit.Owners(atoms);
        var sets = new Clusters(owner.Keys);
        foreach (var atom in atoms.Where(atom => !atom.IsComposite))
        {
            var links = solids.Of(atom.Copies[0]).Where(link => owner.ContainsKey(link.Other(atom.Copies[0]))).ToList();
            var hosts = links.Select(link => owner[link.Other(atom.Copies[0])]).Distinct().ToList();
            if (hosts.Count == 1 && links.TrueForAll(link => IsPlain(link.Kind)) && IsSmall(atom, hosts[0]))
                sets.Join(atom.Copies[0], hosts[0].Copies[0]);
        }

        return sets.All();
    }

    private static bool IsPlain(JointKind kind) =>
        kind is JointKind.Glued or JointKind.Screwed or JointKind.PocketScrew or JointKind.Rabbet;

    private bool IsSmall(Unit unit, Unit host) => Wood(unit) < Small * Wood(host);

    private double Wood(Unit unit) => unit.Copies.Sum(copy => solids.All[copy].Wood);

    private IEnumerable<Link> Inner(Unit unit)
    {
        var within = unit.Copies.ToHashSet();
        return solids.Links.Where(link => within.Contains(link.From) && within.Contains(link.Into));
    }
}
