using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Tests.Checking;
using ShopPlanner.Scheduling.Verification;

namespace ShopPlanner.Scheduling.Tests.Planning;

/// <summary>Small requests whose best schedule is known by trying everything.</summary>
public sealed class SmallScheduleTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 150)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_finish_is_the_earliest_there_is(int seed)
    {
        var request = Some.Small(new Random(seed));
        var schedule = SchedulePlanner.Plan(request, new ScheduleControl());
        var earliest = EverySchedule.Finish(request);
        if (earliest is null)
        {
            Assert.Equal(ScheduleStatus.Impossible, schedule.Status);
            Assert.NotEmpty(schedule.Reasons);
            return;
        }

        Assert.Equal((ScheduleStatus.Proven, earliest, earliest), (schedule.Status, schedule.Finish, schedule.Bound));
        Assert.Equal(earliest, Minutewise.Finish(request, schedule.Starts));
        Assert.Empty(ScheduleVerifier.Check(request, schedule));
    }

    [Fact]
    public void Both_kinds_of_answer_are_met()
    {
        var possible = Seeds.Count(seed => EverySchedule.Finish(Some.Small(new Random(seed.Data))) is not null);
        Assert.InRange(possible, 75, 149);
    }

    [Fact]
    public void Nothing_to_do_is_done_at_once()
    {
        foreach (var windows in new (int, int)[][] { [], [(10, 20)] })
        {
            var schedule = SchedulePlanner.Plan(Some.Request(windows, []), new ScheduleControl());
            Assert.Equal((ScheduleStatus.Proven, 0, 0), (schedule.Status, schedule.Finish, schedule.Bound));
        }
    }

    [Fact]
    public void Work_that_is_all_done_leaves_what_it_holds()
    {
        var done = Some.Glue("glue", 30, 100) with { Fixed = new FixedLabor(-40, -10) };
        var schedule = SchedulePlanner.Plan(Some.Request([], [done]), new ScheduleControl());
        Assert.Equal((ScheduleStatus.Proven, 90, 90), (schedule.Status, schedule.Finish, schedule.Bound));
    }

    [Fact]
    public void The_same_request_gives_the_same_schedule()
    {
        var request = Some.Small(new Random(7));
        var (one, other) = (SchedulePlanner.Plan(request, new()), SchedulePlanner.Plan(request, new()));
        Assert.Equal(one.Starts, other.Starts);
    }

    [Fact]
    public void Every_fault_that_is_put_in_is_found()
    {
        var found = 0;
        for (var seed = 1; seed <= 40; seed++)
        {
            var (random, request) = (new Random(seed), Some.Small(new Random(seed)));
            var schedule = SchedulePlanner.Plan(request, new ScheduleControl());
            if (schedule.Status == ScheduleStatus.Impossible)
                continue;
            var task = request.Tasks[random.Next(request.Tasks.Length)].Id;
            var moved = schedule with
            {
                Starts = schedule.Starts.SetItem(task, Math.Max(0, schedule.Starts[task] + random.Next(-6, 7))),
            };
            var finish = Minutewise.Finish(request, moved.Starts);
            Assert.Equal(finish == schedule.Finish, ScheduleVerifier.Check(request, moved).IsEmpty);
            found += finish is null ? 1 : 0;
        }

        Assert.InRange(found, 5, 40);
    }
}
