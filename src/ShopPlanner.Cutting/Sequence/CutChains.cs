using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>Cuts that follow from one another at one setting, with nothing to set between them.</summary>
/// <param name="Setting">Its number.</param>
internal sealed record CutChain(int Setting)
{
    public List<SharedCut> Cuts { get; } = [];

    /// <summary>Chains whose pieces it gives.</summary>
    public List<CutChain> Next { get; } = [];
}

/// <summary>The cuts of layouts as chains, each with the chains that have to wait for it.</summary>
/// <typeparam name="T">What names a setting.</typeparam>
/// <param name="settingOf">The setting of a cut of the layout with an index.</param>
internal sealed class CutChains<T>(Func<int, Cut, T> settingOf)
    where T : notnull
{
    private readonly Dictionary<(bool AtHome, T At), int> numbers = [];
    private readonly List<bool> settings = [];
    private readonly List<CutChain> begin = [];
    private readonly List<(int Setting, SharedCut Cut)> inOrder = [];

    /// <summary>The fewest runs found, in order.</summary>
    public ImmutableArray<SharedRun> Runs()
    {
        var together = SettingOrder
            .Of(begin, settings)
            .ConvertAll(chains => Run(chains[0].Setting, chains.SelectMany(one => one.Cuts)));
        var apart = OneByOne();
        return [.. Changes(apart) < Changes(together) ? apart : together];
    }

    public void Add(Layout layout, int index)
    {
        var giver = new Dictionary<string, CutChain>();
        foreach (var cut in layout.Cuts)
        {
            var setting = Number((!cut.ByStore, settingOf(index, cut)));
            var chain = Chain(giver.GetValueOrDefault(cut.Piece), setting);
            var shared = new SharedCut(index, layout.Copies, cut.N);
            chain.Cuts.Add(shared);
            inOrder.Add((setting, shared));
            giver[cut.First] = chain;
            if (cut.Second is { } second)
                giver[second] = chain;
        }
    }

    // Board by board, each in its own order: never worse than that, whatever the search for better comes to.
    private List<SharedRun> OneByOne()
    {
        var runs = new List<(int Setting, List<SharedCut> Cuts)>();
        foreach (var (setting, cut) in inOrder.OrderBy(one => settings[one.Setting]))
            if (runs.Count > 0 && runs[^1].Setting == setting)
                runs[^1].Cuts.Add(cut);
            else
                runs.Add((setting, [cut]));
        return runs.ConvertAll(run => Run(run.Setting, run.Cuts));
    }

    private static int Changes(List<SharedRun> runs) => runs.Count(run => !run.ByStore);

    private SharedRun Run(int setting, IEnumerable<SharedCut> cuts) =>
        new(!settings[setting], [.. cuts.OrderBy(cut => cut.Layout).ThenBy(cut => cut.N)]);

    private CutChain Chain(CutChain? before, int setting)
    {
        if (before?.Setting == setting)
            return before;
        var chain = new CutChain(setting);
        (before?.Next ?? begin).Add(chain);
        return chain;
    }

    private int Number((bool AtHome, T At) setting)
    {
        if (numbers.TryGetValue(setting, out var number))
            return number;
        numbers.Add(setting, settings.Count);
        settings.Add(setting.AtHome);
        return settings.Count - 1;
    }
}
