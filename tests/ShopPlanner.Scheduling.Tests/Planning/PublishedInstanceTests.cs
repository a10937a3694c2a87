using System.Globalization;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Tests.Checking;

namespace ShopPlanner.Scheduling.Tests.Planning;

/// <summary>Published project scheduling instances with their published optima (Published/j30.txt): Kolisch, Sprecher
/// 1996.</summary>
public sealed class PublishedInstanceTests
{
    public static TheoryData<string> Names() => [.. Instances().Select(one => one.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_published_optimum_is_found(string name)
    {
        var (_, optimum, request) = Instances().Single(one => one.Name == name);
        var schedule = SchedulePlanner.Plan(request with { Seconds = 60 }, new ScheduleControl());
        Assert.Equal((ScheduleStatus.Proven, optimum), (schedule.Status, schedule.Finish));
        Assert.Equal(optimum, Minutewise.Finish(request, schedule.Starts));
    }

    private static List<(string Name, int Optimum, ScheduleRequest Request)> Instances()
    {
        var lines = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "j30.txt"))
            .Where(line => !line.StartsWith('#'));
        var found = new List<(string, int, List<string>)>();
        foreach (var line in lines)
            if (line.StartsWith('j'))
                found.Add((line.Split(' ')[0], Numbers(line.Split('|')[0])[^1], [line]));
            else
                found[^1].Item3.Add(line);
        return [.. found.Select(one => (one.Item1, one.Item2, Request(one.Item3)))];
    }

    private static ScheduleRequest Request(List<string> lines)
    {
        var capacity = Numbers(lines[0].Split('|')[1]);
        var tasks = lines.Skip(1).Select(line => Numbers(line.Split('>')[0])).ToList();
        var order =
            from line in lines.Skip(1)
            from after in Numbers(line.Split('>')[1])
            select new Precedence(line.Split(' ')[0], after.ToString(CultureInfo.InvariantCulture), 0);
        return new(
            [new Window(0, tasks.Sum(task => task[1]))],
            Amounts(capacity),
            [
                .. tasks.Select(task => new ScheduleTask(
                    task[0].ToString(CultureInfo.InvariantCulture),
                    task[1],
                    0,
                    Amounts(task[2..]),
                    Some.Uses()
                )),
            ],
            [.. order]
        );
    }

    private static System.Collections.Immutable.ImmutableSortedDictionary<string, int> Amounts(int[] amounts) =>
        Some.Uses([.. amounts.Select((amount, n) => ($"r{n + 1}", amount))]);

    // What is no number, like a name, is passed over.
    private static int[] Numbers(string text) =>
        [
            .. text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Where(word => int.TryParse(word, CultureInfo.InvariantCulture, out _))
                .Select(word => int.Parse(word, CultureInfo.InvariantCulture)),
        ];
}
