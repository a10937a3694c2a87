using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Tests.Checking;

namespace ShopPlanner.Scheduling.Tests.Planning;

/// <summary>Requests without a schedule: each says which task or window is to blame, and what would be right.</summary>
public sealed class ImpossibleTests
{
    private static readonly (int, int)[] Saturday = [(540, 1020)];

    [Fact]
    public void A_task_longer_than_any_window_names_the_window_and_offers_to_split() =>
        Says(
            "'sand' takes 10 h without a break, and the longest window is 8 h: too short by 2 h. Split the task, let it go on in the next "
                + "window, or open a longer window.",
            Some.Request([(540, 1020), (2040, 2400)], [Some.Labor("sand", 600)])
        );

    [Fact]
    public void A_task_that_may_pause_goes_on_in_the_next_window()
    {
        var request = Some.Request([(540, 1020), (2040, 2400)], [Some.Labor("sand", 600) with { IsSplittable = true }]);
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal((ScheduleStatus.Proven, 2160), (schedule.Status, schedule.Finish));
    }

    [Fact]
    public void No_windows() =>
        Says("There are no windows: say when there is time to work.", Some.Request([], [Some.Labor("cut", 10)]));

    [Fact]
    public void More_clamps_than_there_are() =>
        Says(
            "'glue' takes 6 of 'clamps' for its labor, and there are 4. Get more, or do it in steps that take fewer.",
            Some.Request(Saturday, [Some.Glue("glue", 30, 60, clamps: 6)])
        );

    [Fact]
    public void A_circle_is_named() =>
        Says(
            "These tasks wait for each other in a circle: b → c → b. Remove one of these precedences.",
            Some.Request(
                Saturday,
                [Some.Labor("a", 1), Some.Labor("b", 1), Some.Labor("c", 1), Some.Labor("d", 1)],
                ("a", "b"),
                ("b", "c"),
                ("c", "b"),
                ("c", "d")
            )
        );

    [Fact]
    public void A_task_that_waits_for_itself() =>
        Says(
            "These tasks wait for each other in a circle: a → a. Remove one of these precedences.",
            Some.Request(Saturday, [Some.Labor("a", 1)], ("a", "a"))
        );

    [Fact]
    public void More_work_than_open_time() =>
        Says(
            "There is not enough open time: 'person' has 10 h of work, and the windows have 8 h. Open more windows.",
            Some.Request(Saturday, [Some.Labor("a", 300), Some.Labor("b", 300)])
        );

    [Fact]
    public void A_hold_that_runs_past_the_last_window_before_what_follows() =>
        Says(
            "There is not enough open time: 'b' cannot begin before the last window closes, because of what comes before it. Open more "
                + "windows.",
            Some.Request(Saturday, [Some.Coat("a", 30, 480), Some.Labor("b", 30)], ("a", "b"))
        );

    [Fact]
    public void Pieces_that_leave_gaps_nothing_fits_into()
    {
        var request = Some.Request([(0, 50), (100, 150)], [Some.Labor("a", 30), Some.Labor("b", 30), Some.Labor("c", 30)]);
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal(ScheduleStatus.Impossible, schedule.Status);
        Assert.StartsWith(
            "There is not enough open time: the tasks do not fit",
            Assert.Single(schedule.Reasons),
            StringComparison.Ordinal
        );
        Assert.Equal((null, null), (schedule.Finish, schedule.Bound));
    }

    [Fact]
    public void Two_tasks_fixed_to_the_same_time()
    {
        var a = Some.Labor("a", 30) with { Fixed = new FixedLabor(540, 570) };
        var b = Some.Labor("b", 30) with { Fixed = new FixedLabor(560, 590) };
        var schedule = SchedulePlanner.Plan(Some.Request(Saturday, [a, b]), new());
        Assert.Contains(
            "'a' and 'b' are fixed to the same time and take 2 of 'person' together, and there are 1. Move one of them.",
            schedule.Reasons
        );
    }

    private static void Says(string reason, ScheduleRequest request)
    {
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal(ScheduleStatus.Impossible, schedule.Status);
        Assert.Contains(reason, schedule.Reasons);
    }
}
