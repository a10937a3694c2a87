using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Tests.Checking;

namespace ShopPlanner.Scheduling.Tests.Planning;

/// <summary>Priorities, labor that is fixed, and schedules that are made again.</summary>
public sealed class ReplanTests
{
    private static readonly (int, int)[] Weekends = [(0, 120), (1000, 1120), (2000, 2120), (3000, 3120), (4000, 4120)];

    [Fact]
    public void The_more_urgent_project_is_finished_first()
    {
        var tasks = Enumerable
            .Range(0, 2)
            .SelectMany(n => new[] { $"A{n}", $"B{n}" }.Select(id => Some.Labor(id, 60) with { Project = id[..1] }));
        var request = Some.Request(Weekends, tasks) with { Projects = [new("B", 1), new("A", 2)] };
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal(ScheduleStatus.Proven, schedule.Status);
        Assert.Equal([0, 60], request.Tasks.Where(task => task.Project == "B").Select(task => schedule.Starts[task.Id]).Order());
        Assert.Equal(
            [1000, 1060],
            request.Tasks.Where(task => task.Project == "A").Select(task => schedule.Starts[task.Id]).Order()
        );
    }

    [Fact]
    public void What_an_urgent_project_waits_for_is_urgent_too()
    {
        var request = Some.Request(
            Weekends,
            [
                Some.Labor("jig", 60) with
                {
                    Project = "Z",
                },
                Some.Labor("other", 120) with
                {
                    Project = "Z",
                },
                Some.Labor("a", 60) with
                {
                    Project = "A",
                },
            ],
            ("jig", "a")
        ) with
        {
            Projects = [new("A", 1)],
        };
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal((0, 60, 1000), (schedule.Starts["jig"], schedule.Starts["a"], schedule.Starts["other"]));
    }

    [Fact]
    public void Work_that_was_begun_stays_and_what_it_holds_is_not_there()
    {
        var begun = Some.Glue("begun", 30, 100) with { Fixed = new FixedLabor(-40, -10) };
        var request = Some.Request(Weekends, [begun, Some.Glue("next", 30, 30), Some.Labor("sand", 10)], ("begun", "sand"));
        var schedule = SchedulePlanner.Plan(request, new());
        // The clamps are free at 90: from there to 120 there is time to glue, and the next Saturday to sand.
        Assert.Equal((-40, 90, 1000), (schedule.Starts["begun"], schedule.Starts["next"], schedule.Starts["sand"]));
        Assert.Equal(schedule.Finish, Minutewise.Finish(request, schedule.Starts));
    }

    [Fact]
    public void A_task_does_not_begin_before_its_wood_is_here()
    {
        var request = Some.Request(Weekends, [Some.Labor("a", 60) with { NotBefore = 500 }, Some.Labor("b", 60)]);
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal((1000, 0), (schedule.Starts["a"], schedule.Starts["b"]));
    }

    [Fact]
    public void A_schedule_made_again_moves_nothing_when_nothing_has_changed()
    {
        for (var seed = 1; seed <= 30; seed++)
        {
            var request = Some.Small(new Random(seed));
            var first = SchedulePlanner.Plan(request, new ScheduleControl { Seed = 1 });
            if (first.Status == ScheduleStatus.Impossible)
                continue;
            var again = SchedulePlanner.Plan(Replanned(request, first), new ScheduleControl { Seed = 2 });
            Assert.Equal(first.Starts, again.Starts);
        }
    }

    [Fact]
    public void When_a_task_slips_what_does_not_hang_on_it_stays()
    {
        var tasks = Enumerable.Range(0, 8).Select(n => Some.Labor($"t{n}", 60)).ToList();
        var request = Some.Request(Weekends, tasks, ("t0", "t1"));
        var first = SchedulePlanner.Plan(request, new());
        var slipped = Replanned(request, first);
        slipped = slipped with
        {
            Tasks = [.. slipped.Tasks.Select(task => task.Id == "t0" ? task with { NotBefore = 4000 } : task)],
        };
        var again = SchedulePlanner.Plan(slipped, new());
        var moved = first.Starts.Count(one => again.Starts[one.Key] != one.Value);
        Assert.Equal((4000, 4060), (again.Starts["t0"], again.Starts["t1"]));
        Assert.InRange(moved, 1, 2);
    }

    [Fact]
    public void Two_thousand_tasks_are_scheduled_in_the_time_given()
    {
        var windows = Enumerable.Range(0, 400).Select(n => (n * 1440, (n * 1440) + 480));
        var tasks = Enumerable
            .Range(0, 2000)
            .Select(n => Some.Glue($"t{n}", 15 + (n % 40), n % 5 == 0 ? 300 : 0, clamps: 1 + (n % 3)));
        var order = Enumerable.Range(0, 1500).Select(n => ($"t{n}", $"t{n + 500}")).ToArray();
        var schedule = SchedulePlanner.Plan(Some.Request(windows, tasks, order) with { Seconds = 2 }, new());
        Assert.NotEqual(ScheduleStatus.Impossible, schedule.Status);
        Assert.InRange(schedule.Seconds, 0, 60);
    }

    [Fact]
    public void Priorities_hold_where_the_lists_find_nothing()
    {
        // Only one order fits: the lists may miss it, the model may not.
        var tasks = new[] { ("a", 50), ("b", 30), ("c", 20), ("d", 60), ("e", 40) }.Select(one =>
            Some.Labor(one.Item1, one.Item2) with
            {
                Project = one.Item1 is "a" or "b" ? "A" : "B",
            }
        );
        var request = Some.Request([(0, 100), (1000, 1100)], tasks) with { Projects = [new("A", 1), new("B", 2)] };
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal(schedule.Finish, Minutewise.Finish(request, schedule.Starts));
        Assert.Equal((ScheduleStatus.Proven, 1100), (schedule.Status, schedule.Finish));
    }

    [Fact]
    public void A_stopped_search_still_gives_a_schedule()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var request = Some.Request(Weekends, Enumerable.Range(0, 5).Select(n => Some.Glue($"t{n}", 50, 700)));
        var schedule = SchedulePlanner.Plan(request, new ScheduleControl { Cancel = stopped.Token });
        Assert.NotEqual(ScheduleStatus.Impossible, schedule.Status);
        Assert.Equal(schedule.Finish, Minutewise.Finish(request, schedule.Starts));
    }

    private static ScheduleRequest Replanned(ScheduleRequest request, Schedule first) =>
        request with
        {
            Tasks = [.. request.Tasks.Select(task => task with { Earlier = first.Starts[task.Id] })],
        };
}
