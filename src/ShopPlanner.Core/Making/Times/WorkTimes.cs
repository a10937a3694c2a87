namespace ShopPlanner.Core.Making.Times;

/// <summary>Estimates that learn from what work took: for each kind and size of work the median of logged to estimated time,
/// drawn toward what is known of the kind, and that toward the usual estimate, the fewer logs the more. One wild log moves a
/// median little, and no estimate leaves a quarter to four times the usual. Immutable.</summary>
public sealed class WorkTimes
{
    /// <summary>The kind of work at the saw: breaking down boards and sheets to parts.</summary>
    public const string Cutting = "cut";

    // Our own figures: so many logs weigh as much as the estimate that was there before them.
    private const double Prior = 3;

    // A log further off was another job, or a timer that was left on.
    private static readonly double Widest = Math.Log(4);

    // Up to so many minutes by the usual estimate, work is short or middling; above, long. Small jobs have their own share of
    // setting up.
    private static readonly int[] Edges = [20, 60];

    private readonly Dictionary<string, Kind> kinds;

    private WorkTimes(Dictionary<string, Kind> kinds) => this.kinds = kinds;

    /// <summary>The usual estimates.</summary>
    public static WorkTimes Usual { get; } = new([]);

    /// <summary>Returns what logs teach. Those without an estimate or a time teach nothing.</summary>
    /// <param name="logs">In any order.</param>
    public static WorkTimes Of(IEnumerable<LoggedTime> logs)
    {
        ArgumentNullException.ThrowIfNull(logs);
        return new(
            logs.Where(log => log is { Usual: > 0, Took: > 0 })
                .GroupBy(log => log.Kind, StringComparer.Ordinal)
                .ToDictionary(same => same.Key, same => Learn([.. same]), StringComparer.Ordinal)
        );
    }

    /// <summary>Returns the estimate for work of a kind.</summary>
    /// <param name="kind">As logs name it.</param>
    /// <param name="usual">The usual estimate, minutes; zero or more.</param>
    public LearnedTime Estimate(string kind, int usual)
    {
        if (usual <= 0 || !kinds.TryGetValue(kind, out var known))
            return new(usual, usual, 0);
        var size = SizeOf(usual);
        var minutes = usual * known.Ratios[size];
        // More work is never estimated shorter than less work, though the sizes learn apart.
        for (var smaller = 0; smaller < size; smaller++)
            minutes = Math.Max(minutes, Edges[smaller] * known.Ratios[smaller]);
        return new(Math.Max(1, (int)Math.Round(minutes, MidpointRounding.AwayFromZero)), usual, known.Logs);
    }

    private static Kind Learn(List<LoggedTime> logs)
    {
        var all = Drawn(logs, toward: 0);
        var ratios = Enumerable
            .Range(0, Edges.Length + 1)
            .Select(size => Math.Exp(Drawn([.. logs.Where(log => SizeOf(log.Usual) == size)], all)));
        return new([.. ratios], logs.Count);
    }

    // Ratios are averaged as logarithms: twice as long and half as long are equally far off.
    private static double Drawn(List<LoggedTime> logs, double toward)
    {
        if (logs.Count == 0)
            return toward;
        var off = logs.Select(log => Math.Clamp(Math.Log((double)log.Took / log.Usual), -Widest, Widest)).Order().ToList();
        var median = (off[(off.Count - 1) / 2] + off[off.Count / 2]) / 2;
        return ((logs.Count * median) + (Prior * toward)) / (logs.Count + Prior);
    }

    private static int SizeOf(int usual) => Edges.Count(edge => usual > edge);

    private sealed record Kind(double[] Ratios, int Logs);
}
