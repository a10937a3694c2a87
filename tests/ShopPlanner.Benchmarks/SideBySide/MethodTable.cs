using System.Globalization;

namespace ShopPlanner.Benchmarks;

/// <summary>A table with a row for each set and method, and for all sets together.</summary>
/// <param name="title">What is counted and what to bear in mind.</param>
public sealed class MethodTable(string title)
{
    private static readonly int[] Widths = [-20, -24, 6, 9, 8, 9, 11, 11, 11, 10, 7, 7, 10, 9, 10];
    private readonly List<MethodOutcome> outcomes = [];

    public void Add(IEnumerable<MethodOutcome> outcomes) => this.outcomes.AddRange(outcomes);

    /// <summary>
    /// Prints it, nothing when there is nothing. A row's "value", "planner's" and "best" are sums over the instances which that
    /// row's method answered, so they compare with each other, not with another row's ("best" takes the planner's where nothing
    /// is published); "fewer" and "more" are instances where it
    /// uses less or more than the planner, the first of the methods.
    /// </summary>
    public void Print(TextWriter to)
    {
        if (outcomes.Count == 0)
            return;
        to.WriteLine(title);
        Write(
            to,
            "set",
            "method",
            "count",
            "answered",
            "proven",
            "cuttable",
            "value",
            "planner's",
            "best",
            "at best",
            "fewer",
            "more",
            "median s",
            "max s",
            "all s"
        );
        foreach (var set in outcomes.GroupBy(outcome => outcome.Set))
            Print(to, set.Key, [.. set]);
        Print(to, "all", outcomes);
    }

    private static void Print(TextWriter to, string set, List<MethodOutcome> outcomes)
    {
        var byMethod = outcomes.GroupBy(outcome => outcome.Method).ToList();
        var planner = byMethod[0].ToDictionary(Instance, outcome => outcome.Value);
        foreach (var method in byMethod)
            Print(to, set, [.. method], outcome => planner[Instance(outcome)]);
    }

    private static void Print(TextWriter to, string set, List<MethodOutcome> method, Func<MethodOutcome, double?> planner)
    {
        var answered = method.FindAll(outcome => outcome.Value is not null);
        var seconds = method.Select(outcome => outcome.Seconds).Order().ToList();
        Write(
            to,
            set,
            method[0].Method,
            method.Count,
            answered.Count,
            method.Count(o => o.Proven),
            method.Exists(o => o.Cuttable is not null) ? method.Count(o => o.Cuttable == true) : "-",
            answered.Sum(o => o.Value),
            answered.Sum(planner),
            answered.Sum(o => o.Best ?? planner(o)),
            answered.Count(o => o.Value <= o.Best),
            answered.Count(o => o.Value < planner(o)),
            answered.Count(o => o.Value > planner(o)),
            Seconds(seconds[(seconds.Count - 1) / 2]),
            Seconds(seconds[^1]),
            Seconds(seconds.Sum())
        );
    }

    private static string Instance(MethodOutcome outcome) => $"{outcome.Set}/{outcome.Name}";

    private static string Seconds(double seconds) => seconds.ToString("0.000", CultureInfo.InvariantCulture);

    private static void Write(TextWriter to, params object?[] cells) =>
        to.WriteLine(string.Concat(cells.Select((cell, i) => Padded(cell, Widths[i]))));

    private static string Padded(object? cell, int width)
    {
        var text = Convert.ToString(cell, CultureInfo.InvariantCulture) ?? "";
        return width < 0 ? text.PadRight(-width) : text.PadLeft(width);
    }
}
