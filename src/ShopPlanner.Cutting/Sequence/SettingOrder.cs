namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// The order of settings: one that is done with for good when it is set now is set first, since it has to be set once anyhow;
/// where there is none, each is tried, the rest played through without trying, and the one with the fewest changes chosen. The
/// fewest of all is a hard problem (a shortest common supersequence is one of its kind), so this is not claimed.
/// </summary>
internal sealed class SettingOrder
{
    // Settings tried where none is done with, the nearest to it first.
    private const int MostTried = 12;

    // Choices after the first that are tried too.
    private const int LookAhead = 2;

    // Settings looked at while playing; after so many the nearest setting is chosen untried.
    private const long MostPlayed = 200_000;

    private readonly IReadOnlyList<bool> atHome;
    private readonly List<CutChain>[] ready;
    private readonly int[] left;

    // Settings with something ready: the store's as long as there are any, the nearest to done first, then the one with most
    // ready.
    private readonly SortedSet<(bool AtHome, int Missing, int Unready, int Setting)> open;
    private int waiting;

    private SettingOrder(IReadOnlyList<CutChain> begin, IReadOnlyList<bool> atHome)
    {
        this.atHome = atHome;
        ready = [.. atHome.Select(_ => new List<CutChain>())];
        left = new int[atHome.Count];
        var all = new Stack<CutChain>(begin);
        while (all.TryPop(out var chain))
        {
            left[chain.Setting]++;
            waiting++;
            foreach (var next in chain.Next)
                all.Push(next);
        }

        open = [];
        foreach (var chain in begin)
            MakeReady(chain);
    }

    private SettingOrder(SettingOrder other)
    {
        (atHome, waiting) = (other.atHome, other.waiting);
        ready = [.. other.ready.Select(list => new List<CutChain>(list))];
        left = [.. other.left];
        open = new(other.open);
    }

    /// <summary>The chains of each run, in order.</summary>
    /// <param name="begin">Chains that need no other.</param>
    /// <param name="atHome">For each setting, false where it is the store's: those come first.</param>
    public static List<List<CutChain>> Of(IReadOnlyList<CutChain> begin, IReadOnlyList<bool> atHome)
    {
        var order = new SettingOrder(begin, atHome);
        var runs = new List<List<CutChain>>();
        var played = 0L;
        while (order.waiting > 0)
            runs.Add(order.Set(order.Done() ?? order.Tried(ref played)));
        return runs;
    }

    // Cuts everything that is ready at the setting.
    private List<CutChain> Set(int setting)
    {
        var chains = ready[setting];
        open.Remove(Rank(setting));
        ready[setting] = [];
        left[setting] -= chains.Count;
        waiting -= chains.Count;
        foreach (var next in chains.SelectMany(chain => chain.Next))
            MakeReady(next);
        return chains;
    }

    private void MakeReady(CutChain chain)
    {
        open.Remove(Rank(chain.Setting));
        ready[chain.Setting].Add(chain);
        open.Add(Rank(chain.Setting));
    }

    private (bool AtHome, int Missing, int Unready, int Setting) Rank(int setting) =>
        (atHome[setting], left[setting] - ready[setting].Count, -ready[setting].Count, setting);

    private int? Done() => open.Count == 0 || open.Min is not { Missing: 0, Setting: var setting } ? null : setting;

    // What can be set now: with the store as long as it has to do.
    private List<int> Choices()
    {
        var atStore = !open.Min.AtHome;
        return [.. open.TakeWhile(one => one.AtHome != atStore).Take(MostTried).Select(one => one.Setting)];
    }

    private int Tried(ref long played)
    {
        var choices = Choices();
        if (choices.Count == 1 || played > MostPlayed)
            return choices[0];
        var (best, fewest) = (choices[0], int.MaxValue);
        foreach (var setting in choices)
        {
            var changes = new SettingOrder(this).Play(setting, LookAhead, ref played);
            if (changes < fewest)
                (best, fewest) = (setting, changes);
        }

        return best;
    }

    // Settings until nothing waits, from this one on; so many choices on the way are tried in turn, then the nearest is taken.
    private int Play(int setting, int choices, ref long played)
    {
        Set(setting);
        var changes = 1;
        for (; waiting > 0; changes++)
        {
            played += left.Length;
            var next = Done();
            if (next is null && choices > 0 && played < MostPlayed)
                return changes + FewestAfter(choices - 1, ref played);
            Set(next ?? open.Min.Setting);
        }

        return changes;
    }

    private int FewestAfter(int choices, ref long played)
    {
        var fewest = int.MaxValue;
        foreach (var setting in Choices())
            fewest = Math.Min(fewest, new SettingOrder(this).Play(setting, choices, ref played));
        return fewest;
    }
}
