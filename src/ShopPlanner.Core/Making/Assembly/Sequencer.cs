namespace ShopPlanner.Core.Making.Assembly;

/// <summary>
/// Finds the order in which units go together by taking them apart: again and again what can leave in a straight move, the best
/// one to leave by <see cref="Ranking"/>. What can be taken apart whole can be taken apart after anything of it is gone, so no
/// choice leads astray: where an order exists, one is found (two-handed, single moves).
/// </summary>
internal sealed class Sequencer(Solids solids, Blocking blocking, Contacts contacts, Access access)
{
    /// <summary>Sets of copies that no straight move parts.</summary>
    public List<int[]> ShutIn { get; } = [];

    /// <summary>Works out how a unit goes together.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="atoms">Its units, each put together already.</param>
    public void Run(Unit unit, IReadOnlyList<Unit> atoms)
    {
        var state = new Standing(solids, blocking, new Ranking(solids, contacts, access), atoms);
        var reversed = new List<(Removal Removal, Unit What)>();
        while (state.Count > 1)
        {
            if (Next(state) is { } next)
                Take(state, next, reversed);
            else if (!state.Dissolve())
                break;
        }

        Write(unit, state, reversed);
    }

    // What stands before the screws of the best one leaves before it where it can: it is put in after they are driven.
    private static Removal? Next(Standing state)
    {
        var singles = state.Singles().ToList();
        var single = singles.MinBy(one => one.Rank.Eased());
        if (single is { Rank.Unreachable: > 0 })
            single = Clearing(state, singles, single) ?? single;

        if (single is { Rank.Split: 0 })
            return single;
        var group = state.Groups().MinBy(one => one.Rank);
        return group is not null && (single is null || group.Rank.IsBetter(single.Rank)) ? group : single;
    }

    private static Removal? Clearing(Standing state, List<Removal> singles, Removal first)
    {
        var before = state.Before(first);
        var clearing = singles.Where(one => one.Rank.IsPlain && before.Contains(one.Atoms[0])).MinBy(one => one.Rank);
        return clearing is null or { Rank.Covered: 0 } ? clearing : singles.MinBy(one => one.Rank);
    }

    // What is like the one chosen, leaves the same way and is no worse, leaves next: like parts go in together.
    private void Take(Standing state, Removal first, List<(Removal, Unit)> reversed)
    {
        for (Removal? next = first; next is not null && state.Count > 1; next = state.Like(first))
        {
            reversed.Add((next, Whole(next)));
            state.Remove(next);
        }
    }

    private Unit Whole(Removal removal)
    {
        if (removal.Atoms.Count == 1)
            return removal.Atoms[0];
        var group = new Unit(UnitKind.Group, [.. removal.Atoms.SelectMany(one => one.Copies).Order()]);
        Run(group, removal.Atoms);
        return group;
    }

    private void Write(Unit unit, Standing state, List<(Removal Removal, Unit What)> reversed)
    {
        var placed = new HashSet<int>();
        var rest = state.Atoms.OrderBy(one => one.Copies[0]).ToList();
        if (rest.Count > 1)
            ShutIn.Add([.. rest.SelectMany(one => one.Copies).Order()]);
        foreach (var one in rest)
            unit.Insertions.Add(new(one, null, Close(one, placed)) { IsShutIn = rest.Count > 1 });
        for (var i = reversed.Count - 1; i >= 0; i--)
        {
            var (removal, what) = reversed[i];
            unit.Insertions.Add(new(what, removal.Out, Close(what, placed)) { IsCover = removal.IsCover });
        }
    }

    private Link[] Close(Unit what, HashSet<int> placed)
    {
        var closed = what
            .Copies.SelectMany(copy => solids.Of(copy).Where(link => placed.Contains(link.Other(copy))))
            .OrderBy(link => link.Index)
            .ToArray();
        placed.UnionWith(what.Copies);
        return closed;
    }
}

/// <summary>Units that leave what stands together.</summary>
/// <param name="Atoms">The units.</param>
/// <param name="Out">The way in which they leave.</param>
/// <param name="Rank">How good it is that they leave now.</param>
/// <param name="IsCover">Whether they lie on what they leave.</param>
internal sealed record Removal(IReadOnlyList<Unit> Atoms, Way Out, Rank Rank, bool IsCover)
{
    /// <summary>The same for removals of like parts.</summary>
    public string Name { get; init; } = "";
}
