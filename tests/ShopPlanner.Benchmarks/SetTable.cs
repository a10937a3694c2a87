using System.Diagnostics;
using System.Globalization;

namespace ShopPlanner.Benchmarks;

/// <summary>What came of one instance. Values and bounds are in the set's own unit: stocks used, cost or sheets.</summary>
/// <param name="Best">Best value published; null where none is.</param>
public sealed record Outcome(string Set, string Name, double Value, double? Best, double Bound, bool Proven, double Seconds);

/// <summary>A table with a row for each set and one for all.</summary>
public sealed class SetTable
{
    private static readonly int[] Widths = [-18, 6, 8, 8, 13, 13, 13, 9, 9, 9];
    private readonly List<Outcome> outcomes = [];

    public void Add(Outcome outcome) => outcomes.Add(outcome);

    /// <summary>Prints it, with the most memory the program has held.</summary>
    public void Print(TextWriter to)
    {
        Write(to, "set", "count", "proven", "at best", "value", "best", "bound", "median s", "p95 s", "max s");
        foreach (var set in outcomes.GroupBy(outcome => outcome.Set))
            Print(to, set.Key, [.. set]);
        Print(to, "all", outcomes);
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"peak memory {PeakMegabytes():0} MB"));
        foreach (var wrong in outcomes.Where(IsWrong))
            to.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"WRONG: {wrong.Set}/{wrong.Name} value {wrong.Value} bound {wrong.Bound} published {wrong.Best}"
                )
            );
    }

    /// <summary>True when a bound exceeds a value, ours or the published one: somebody is mistaken.</summary>
    public static bool IsWrong(Outcome outcome) => outcome.Bound > outcome.Value || outcome.Bound > outcome.Best;

    private static void Print(TextWriter to, string name, List<Outcome> set)
    {
        if (set.Count == 0)
            return;
        var seconds = set.Select(outcome => outcome.Seconds).Order().ToList();
        Write(
            to,
            name,
            set.Count,
            set.Count(o => o.Proven),
            set.Count(o => o.Value <= o.Best),
            set.Sum(o => o.Value),
            set.Sum(o => o.Best ?? o.Value),
            set.Sum(o => o.Bound),
            Seconds(seconds, 0.5),
            Seconds(seconds, 0.95),
            Seconds(seconds, 1)
        );
    }

    private static string Seconds(List<double> ordered, double share) =>
        ordered[Math.Max(0, (int)Math.Ceiling(share * ordered.Count) - 1)].ToString("0.000", CultureInfo.InvariantCulture);

    private static void Write(TextWriter to, params object[] cells) =>
        to.WriteLine(string.Concat(cells.Select((cell, i) => Padded(cell, Widths[i]))));

    private static string Padded(object cell, int width)
    {
        var text = Convert.ToString(cell, CultureInfo.InvariantCulture) ?? "";
        return width < 0 ? text.PadRight(-width) : text.PadLeft(width);
    }

    private static double PeakMegabytes()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64 / 1048576.0;
    }
}
