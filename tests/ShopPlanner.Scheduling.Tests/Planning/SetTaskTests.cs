using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Tests.Checking;
using ShopPlanner.Scheduling.Verification;

namespace ShopPlanner.Scheduling.Tests.Planning;

/// <summary>Tasks that a person set to a time: everything else is planned round them.</summary>
public sealed class SetTaskTests
{
    private static readonly (int, int)[] Weekends = [(0, 120), (1000, 1120), (2000, 2120), (3000, 3120), (4000, 4120)];

    [Fact]
    public void A_task_begins_when_it_is_set_to_and_what_it_needs_is_done_before()
    {
        var tasks = new[] { "first", "second", "third", "fourth" }.Select(id => Some.Labor(id, 60)).ToList();
        tasks[3] = tasks[3] with { Begins = 60 };
        var request = Some.Request(Weekends, tasks, ("third", "fourth"));
        var schedule = Plan(request);
        Assert.Equal((0, 60), (schedule.Starts["third"], schedule.Starts["fourth"]));
        Assert.Equal([1000, 1060], new[] { schedule.Starts["first"], schedule.Starts["second"] }.Order());
    }

    [Fact]
    public void A_project_that_is_more_urgent_leaves_the_place()
    {
        var request = Some.Request(
            Weekends,
            [Some.Labor("urgent", 100) with { Project = "A" }, Some.Labor("set", 60) with { Project = "B", Begins = 30 }]
        ) with
        {
            Projects = [new("A", 1), new("B", 2)],
        };
        var schedule = Plan(request);
        Assert.Equal((1000, 30), (schedule.Starts["urgent"], schedule.Starts["set"]));
    }

    [Fact]
    public void What_is_not_moved_stays_where_it_was()
    {
        var free = Some.Request(Weekends, new[] { "a", "b", "c", "d", "e" }.Select(id => Some.Labor(id, 60)));
        var before = Plan(free);
        var moved = free.Tasks.Single(task => before.Starts[task.Id] == 0).Id;
        var after = Plan(
            free with
            {
                Tasks =
                [
                    .. free.Tasks.Select(task =>
                        task with
                        {
                            Earlier = before.Starts[task.Id],
                            Begins = task.Id == moved ? 2060 : null,
                        }
                    ),
                ],
            }
        );
        Assert.Equal(2060, after.Starts[moved]);
        Assert.All(
            free.Tasks.Where(task => task.Id != moved),
            task => Assert.Equal(before.Starts[task.Id], after.Starts[task.Id])
        );
    }

    [Theory]
    [InlineData(0, "'next' cannot begin when it is set to")]
    [InlineData(500, "'next' cannot begin when it is set to")]
    [InlineData(1100, "'next' cannot begin when it is set to")]
    [InlineData(9000, "'next' cannot begin when it is set to")]
    public void A_time_that_cannot_be_kept_is_told_with_the_task(int begins, string reason)
    {
        var request = Some.Request(
            Weekends,
            [Some.Labor("first", 60), Some.Labor("next", 60) with { Begins = begins }],
            ("first", "next")
        );
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal(ScheduleStatus.Impossible, schedule.Status);
        Assert.Contains(schedule.Reasons, one => one.StartsWith(reason, StringComparison.Ordinal));
    }

    [Fact]
    public void Two_tasks_that_are_set_to_one_time_are_named()
    {
        var tasks = new[] { "a", "b" }.Select(id => Some.Labor(id, 30) with { Begins = 10 });
        var schedule = SchedulePlanner.Plan(Some.Request(Weekends, tasks), new());
        Assert.Equal(ScheduleStatus.Impossible, schedule.Status);
        Assert.All(
            schedule.Reasons,
            reason => Assert.StartsWith("'a' and 'b' are fixed to the same time", reason, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Set_to_where_a_schedule_has_it_a_task_lets_it_finish_as_early()
    {
        var random = new Random(11);
        for (var round = 0; round < 20; round++)
        {
            var tasks = Enumerable
                .Range(0, 6)
                .Select(n => Some.Labor($"t{n}", random.Next(10, 90)) with { IsSplittable = random.Next(3) == 0 })
                .ToList();
            var request = Some.Request(Weekends, tasks, ("t0", "t1"), ("t1", "t4"), ("t2", "t5"));
            var before = Plan(request);
            var set = random.Next(tasks.Count);
            tasks[set] = tasks[set] with { Begins = before.Starts[tasks[set].Id] };
            var after = Plan(request with { Tasks = [.. tasks] });
            Assert.Equal((before.Finish, tasks[set].Begins), (after.Finish, after.Starts[tasks[set].Id]));
        }
    }

    private static Schedule Plan(ScheduleRequest request)
    {
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Empty(schedule.Reasons);
        Assert.Empty(ScheduleVerifier.Check(request, schedule));
        return schedule;
    }
}
