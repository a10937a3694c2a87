using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

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
internal sealed class CutChains
{
    private readonly Dictionary<(bool AtHome, CutKind Kind, Length At), int> numbers = [];
    private readonly List<(bool AtHome, CutKind Kind, Length At)> settings = [];
    private readonly List<CutChain> begin = [];

    /// <summary>Chains that need no other.</summary>
    public IReadOnlyList<CutChain> All => begin;

    /// <summary>True for each setting of the saw at home, false for the store's.</summary>
    public IReadOnlyList<bool> Settings => [.. settings.Select(setting => setting.AtHome)];

    public void Add(Layout layout, int index)
    {
        var giver = new Dictionary<string, CutChain>();
        foreach (var cut in layout.Cuts)
        {
            var chain = Chain(giver.GetValueOrDefault(cut.Piece), Number((!cut.ByStore, cut.Kind, cut.At)));
            chain.Cuts.Add(new(index, layout.Copies, cut.N));
            giver[cut.First] = chain;
            if (cut.Second is { } second)
                giver[second] = chain;
        }
    }

    /// <summary>Chains of one setting as a run.</summary>
    public SettingRun Run(IReadOnlyList<CutChain> chains)
    {
        var (atHome, kind, at) = settings[chains[0].Setting];
        return new(
            kind,
            at,
            !atHome,
            [.. chains.SelectMany(chain => chain.Cuts).OrderBy(cut => cut.Layout).ThenBy(cut => cut.N)]
        );
    }

    private CutChain Chain(CutChain? before, int setting)
    {
        if (before?.Setting == setting)
            return before;
        var chain = new CutChain(setting);
        (before?.Next ?? begin).Add(chain);
        return chain;
    }

    private int Number((bool AtHome, CutKind Kind, Length At) setting)
    {
        if (numbers.TryGetValue(setting, out var number))
            return number;
        numbers.Add(setting, settings.Count);
        settings.Add(setting);
        return settings.Count - 1;
    }
}
