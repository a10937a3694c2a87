namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>Two states whose counts add up to those of a third.</summary>
internal readonly record struct StatePair(int Whole, int First, int Second);

/// <summary>
/// How many pieces of some counted types may be cut: a state for every combination, in mixed radix, the last is all of them.
/// Counting a few types only is a relaxation of the state space (Christofides and Hadjiconstantinou, European Journal of
/// Operational Research 83, 1995).
/// </summary>
internal sealed class CountStates
{
    private readonly Dictionary<int, (int Step, int Radix)> places = [];

    private CountStates(IReadOnlyList<(int Type, int Most)> counted)
    {
        Count = 1;
        foreach (var (type, most) in counted)
        {
            places.Add(type, (Count, most + 1));
            Count *= most + 1;
        }
        Ways = [.. Enumerable.Range(0, Count).Select(WaysOf)];
        Pairs = Ways.Sum(w => w.Length);
    }

    /// <summary>Nothing is counted.</summary>
    public static CountStates None { get; } = new([]);

    public int Count { get; }

    /// <summary>For each state the ways to share it between two parts; both come no later than the state itself.</summary>
    public StatePair[][] Ways { get; }

    /// <summary>Ways of all states together.</summary>
    public int Pairs { get; }

    public static CountStates Of(IReadOnlyList<(int Type, int Most)> counted) => new(counted);

    /// <summary>How many ways states of such counts would have.</summary>
    public static double PairsFor(IEnumerable<int> most) => most.Aggregate(1.0, (n, m) => n * (m + 1.0) * (m + 2.0) / 2);

    /// <summary>False when the type is counted and the state has none of it.</summary>
    public bool Has(int state, int type) => !places.TryGetValue(type, out var place) || Digit(state, place) > 0;

    private StatePair[] WaysOf(int whole) =>
        [
            .. Enumerable
                .Range(0, whole + 1)
                .Where(part => IsWithin(part, whole))
                .Select(part => new StatePair(whole, part, whole - part)),
        ];

    private bool IsWithin(int part, int whole) => places.Values.All(p => Digit(part, p) <= Digit(whole, p));

    private static int Digit(int state, (int Step, int Radix) place) => state / place.Step % place.Radix;
}
