using System.Diagnostics;
using ShopPlanner.Scheduling.Checks;
using ShopPlanner.Scheduling.Exact;
using ShopPlanner.Scheduling.Lists;
using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Planning;

/// <summary>
/// One priority after the other: list schedules, then the exact model for the earliest finish, which is kept as a deadline
/// for what
/// follows. At the end the sum of ends, or what has moved since an earlier schedule, is made small under all deadlines.
/// </summary>
internal sealed class Stages(Network network, ScheduleControl control, TimeSpan time, Stopwatch clock)
{
    // Literals beyond this make a model that takes longer to load than anyone waits.
    private const long MostLiterals = 400_000;

    // Work of the last step, about seconds as the solver counts; the clock ends it on a loaded machine only.
    private const double PolishingWork = 0.1;
    private const double PolishingSeconds = 2;
    private const double NoLimit = 1e9;

    private readonly int[] deadlines = [.. Enumerable.Repeat(Horizon(network), network.Levels)];

    public int[] Starts { get; private set; } = [];

    public bool IsProven { get; private set; } = true;

    public int Finish { get; private set; }

    public int Bound { get; private set; }

    private double SecondsLeft => Math.Max(0, (time - clock.Elapsed).TotalSeconds);

    /// <summary>False when there is no schedule, or none was found.</summary>
    public bool Run()
    {
        for (var level = 0; level < network.Levels; level++)
            if (!Run(level))
                return false;
        Polish();
        Finish = Enumerable.Range(0, network.Levels).Max(level => network.Finish(Starts, level));
        Bound = IsProven ? Finish : Math.Min(Finish, Bound);
        return true;
    }

    /// <summary>Why there is none.</summary>
    public string WhyNot(ScheduleRequest request) => OpenTime.WhyNot(request, IsProven);

    private static int Horizon(Network network) =>
        network.Nodes.Select(node => node.Task.Fixed is { } done ? done.End + node.Hold : node.Hold).DefaultIfEmpty(0).Max()
        + network.Axis.Closes;

    private bool Run(int level)
    {
        var spans = Spans.Of(network, deadlines);
        if (spans.Without is not null)
            return false;
        var least = FinishBound.Of(network, spans, level);
        var best = FromLists(level, least);
        if (best is not null)
        {
            deadlines[level] = network.Finish(best, level);
            (Starts, Bound) = (best, Math.Max(Bound, least));
            if (deadlines[level] <= least)
                return true;
        }

        return Solve(level, least, best);
    }

    // What is more urgent keeps its place at first; a later step may still move it within its deadline.
    private int[]? FromLists(int level, int least)
    {
        var kept = Enumerable
            .Range(0, network.Nodes.Length)
            .Select(i => network.Nodes[i].Level < level ? Starts[i] : (int?)null)
            .ToArray();
        return ListSearch.Best(network, level, kept, least, control.Seed, () => clock.Elapsed > time / 4);
    }

    private bool Solve(int level, int least, int[]? hint)
    {
        var spans = Spans.Of(network, deadlines);
        if (Literals(spans, level) > MostLiterals)
            return Settle(hint, new CpAnswer(hint, least, false), level);
        var model = new StageModel(network, spans, level);
        model.MinimizeFinish(least, deadlines[level]);
        if (hint is not null)
            model.Hint(hint);
        var answer = CpRun.Solve(model, hint, CpSettings.Repeatable(SecondsLeft, NoLimit, control.Seed), control.Cancel);
        return Settle(hint, answer, level);
    }

    private bool Settle(int[]? hint, CpAnswer answer, int level)
    {
        IsProven &= answer.IsProven;
        var found = answer.Starts ?? hint;
        if (found is null)
            return false;
        Starts = found;
        deadlines[level] = network.Finish(found, level);
        Bound = (int)Math.Max(Bound, Math.Min(answer.Bound, deadlines[level]));
        return true;
    }

    // A moment only: nobody waits for tasks that begin a little earlier than the finish needs.
    private void Polish()
    {
        var last = network.Levels - 1;
        var isReplanned = network.Nodes.Any(node => node.Task.Earlier is not null);
        var close = isReplanned ? ListSearch.Near(network, last) : ListSearch.Again(network, last, Starts);
        if (close is not null && KeepsDeadlines(close))
            Starts = close;
        var spans = Spans.Of(network, deadlines);
        if (network.Nodes.Length < 2 || Literals(spans, last) > MostLiterals)
            return;
        var model = new StageModel(network, spans, last);
        if (isReplanned)
            model.MinimizeMoves();
        else
            model.MinimizeEnds();
        model.Hint(Starts);
        var seconds = Math.Min(SecondsLeft, PolishingSeconds);
        var answer = CpRun.Solve(model, Starts, CpSettings.Repeatable(seconds, PolishingWork, control.Seed), control.Cancel);
        Starts = answer.Starts ?? Starts;
    }

    private bool KeepsDeadlines(int[] starts) =>
        Enumerable.Range(0, network.Levels).All(level => network.Finish(starts, level) <= deadlines[level]);

    private long Literals(Spans spans, int level) =>
        Enumerable
            .Range(0, network.Nodes.Length)
            .Where(i => network.Nodes[i].Level <= level && network.Nodes[i].Task.Fixed is null)
            .Sum(i =>
                (long)network.Axis.FirstClosingAfter(spans.Latest[i]) - network.Axis.FirstClosingAfter(spans.Earliest[i]) + 1
            );
}
