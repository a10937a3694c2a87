using System.Collections.Immutable;

namespace ShopPlanner.Scheduling.Tests.Checking;

/// <summary>Makes requests in few words.</summary>
internal static class Some
{
    public static readonly ImmutableSortedDictionary<string, int> Shop = Uses(
        ("person", 1),
        ("clamps", 4),
        ("bench", 1),
        ("drying", 1)
    );

    public static ImmutableSortedDictionary<string, int> Uses(params (string Name, int Amount)[] uses) =>
        uses.ToImmutableSortedDictionary(one => one.Name, one => one.Amount, StringComparer.Ordinal);

    public static ScheduleTask Labor(string id, int minutes) => new(id, minutes, 0, Uses(("person", 1), ("bench", 1)), Uses());

    public static ScheduleTask Glue(string id, int minutes, int hold, int clamps = 4) =>
        new(id, minutes, hold, Uses(("person", 1), ("bench", 1), ("clamps", clamps)), Uses(("clamps", clamps)));

    public static ScheduleTask Coat(string id, int minutes, int hold) =>
        new(id, minutes, hold, Uses(("person", 1)), Uses(("drying", 1)));

    public static ScheduleRequest Request(
        IEnumerable<(int, int)> windows,
        IEnumerable<ScheduleTask> tasks,
        params (string Before, string After)[] order
    ) =>
        new(
            [.. windows.Select(one => new Window(one.Item1, one.Item2))],
            Shop,
            [.. tasks],
            [.. order.Select(one => new Precedence(one.Before, one.After, 0))]
        );

    /// <summary>A small request at random: a few tasks of a few minutes, with holds, waits, tasks that go on in the next
    /// window.</summary>
    public static ScheduleRequest Small(Random random)
    {
        var windows = new List<(int, int)>();
        for (var at = random.Next(3); windows.Count < 4; at += random.Next(1, 7))
        {
            windows.Add((at, at + random.Next(2, 7)));
            at = windows[^1].Item2;
        }

        var tasks = Enumerable.Range(0, random.Next(2, 5)).Select(n => Small(random, $"t{n}")).ToList();
        var order =
            from before in Enumerable.Range(0, tasks.Count)
            from after in Enumerable.Range(before + 1, tasks.Count - before - 1)
            where random.Next(3) == 0
            select new Precedence($"t{before}", $"t{after}", random.Next(3) == 0 ? random.Next(4) : 0);
        return Request(windows, tasks) with { Precedences = [.. order] };
    }

    private static ScheduleTask Small(Random random, string id)
    {
        var (hold, clamps) = (random.Next(2) == 0 ? 0 : random.Next(1, 6), random.Next(0, 5));
        var labor = random.Next(10) == 0 ? 0 : random.Next(1, 5);
        return random.Next(3) switch
        {
            0 => Labor(id, labor) with { Hold = hold, IsSplittable = random.Next(2) == 0 },
            1 => Glue(id, labor, hold, clamps) with { IsSplittable = random.Next(4) == 0 },
            _ => new ScheduleTask(
                id,
                labor,
                hold,
                Uses(("person", 1), ("drying", random.Next(2))),
                Uses(("drying", 1), ("bench", random.Next(2)))
            ),
        };
    }
}
