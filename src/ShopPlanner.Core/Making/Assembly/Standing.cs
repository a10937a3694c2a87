namespace ShopPlanner.Core.Making.Assembly;

/// <summary>What still stands while a unit is taken apart.</summary>
internal sealed class Standing
{
    private readonly Solids solids;
    private readonly Blocking blocking;
    private readonly Ranking ranking;
    private List<Unit> all;
    private List<int> left;
    private int[,] ways;

    public Standing(Solids solids, Blocking blocking, Ranking ranking, IReadOnlyList<Unit> atoms)
    {
        (this.solids, this.blocking, this.ranking) = (solids, blocking, ranking);
        (all, left, ways) = ([], [], new int[0, 0]);
        Begin([.. atoms]);
    }

    public int Count => left.Count;

    public IReadOnlyList<Unit> Atoms => [.. left.Select(i => all[i])];

    /// <summary>Single units that can leave.</summary>
    public IEnumerable<Removal> Singles() =>
        from atom in left
        let held = Held(atom)
        from way in Way.All
        where (held & (1 << way.Index)) == 0
        select Of([atom], way);

    /// <summary>Sets of units that can leave together only.</summary>
    public IEnumerable<Removal> Groups() =>
        from way in Way.All
        from sink in Sinks.Of(left.Count, (one, other) => (ways[left[one], left[other]] & (1 << way.Index)) != 0)
        where sink.Count > 1 && sink.Count < left.Count
        select Of([.. sink.Select(i => left[i])], way);

    /// <summary>A single unit like the one that left, that leaves the same way and is no worse; null where none is.</summary>
    public Removal? Like(Removal last)
    {
        if (last.Atoms.Count > 1)
            return null;
        for (var i = left.Count - 1; i >= 0; i--)
            if (Named(all[left[i]]) == last.Name && (Held(left[i]) & (1 << last.Out.Index)) == 0)
            {
                var next = Of([left[i]], last.Out);
                if (next.Rank.IsNoWorse(last.Rank))
                    return next;
            }

        return null;
    }

    /// <summary>What stands before the screws that a removal would have driven last.</summary>
    public HashSet<Unit> Before(Removal removal) => ranking.Before(removal.Atoms);

    public void Remove(Removal removal)
    {
        left.RemoveAll(i => removal.Atoms.Contains(all[i]));
        ranking.See(Atoms);
    }

    /// <summary>Breaks units up where nothing can leave: those of the piece first, then what is fitted to it.</summary>
    /// <returns>Whether any could be.</returns>
    public bool Dissolve()
    {
        var atoms = Atoms;
        var broken = atoms.Where(one => one is { IsComposite: true, IsFitted: false }).ToHashSet();
        if (broken.Count == 0)
            broken = [.. atoms.Where(one => one.IsComposite)];
        if (broken.Count == 0)
            return false;
        Begin([.. atoms.SelectMany(one => broken.Contains(one) ? one.Insertions.Select(inner => inner.What) : [one])]);
        return true;
    }

    private void Begin(List<Unit> atoms)
    {
        all = atoms;
        left = [.. Enumerable.Range(0, atoms.Count)];
        ways = Ways();
        ranking.See(atoms);
    }

    private Removal Of(IReadOnlyList<int> chosen, Way way)
    {
        var leaving = chosen.Select(i => all[i]).ToList();
        return new(leaving, way, ranking.Of(leaving, way), leaving.Count == 1 && ranking.IsCover(leaving[0]))
        {
            Name = leaving.Count == 1 ? Named(leaving[0]) : "",
        };
    }

    private string Named(Unit unit) => $"{unit.Kind} {solids.All[unit.Copies[0]].Name} {unit.Copies.Length}";

    private int Held(int atom) => left.Aggregate(0, (held, other) => held | ways[atom, other]);

    // A door that swings is out of the way of all others.
    private int[,] Ways()
    {
        var between = new int[all.Count, all.Count];
        for (var one = 0; one < all.Count; one++)
        for (var other = 0; other < all.Count; other++)
            if (one != other && !all[other].Swings)
                foreach (var mover in all[one].Copies)
                foreach (var stop in all[other].Copies)
                    between[one, other] |= blocking.Ways(mover, stop);
        return between;
    }
}
