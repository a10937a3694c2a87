using ShopPlanner.Core.Making.Times;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Services.Tests.Making;

/// <summary>How long work took, as a builder logs it.</summary>
public sealed class WorkLogTests
{
    private static CancellationToken Cancel => TestShop.Cancel;

    [Fact]
    public async Task A_time_is_kept_as_typed_beside_the_estimate_of_then_and_can_be_undone()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var step = (await project.ReadAsync()).Steps.First(one => one.Step.Minutes > 0).Step;
        await project.MarkAsync(step.Id, StepMark.Done);
        var texts = await project.WriteAsync(step.Id, one => one with { Took = " 1:30 " });
        Assert.Equal("1:30", texts.Took);
        var log = Assert.Single(await project.Work.LogsAsync(Cancel));
        Assert.Equal((step.Id, step.Title, step.Minutes, 90), (log.StepId, log.Title, log.Time.Usual, log.Time.Took));
        var view = await project.ReadAsync();
        Assert.Equal(step.Title + ": time it took", view.Undo);
        WorkProjects.Value(await project.Work.UndoAsync(project.Project, view.Version, Cancel));
        Assert.Empty(await project.Work.LogsAsync(Cancel));
        WorkProjects.Value(await project.Work.RedoAsync(project.Project, (await project.ReadAsync()).Version, Cancel));
        Assert.Single(await project.Work.LogsAsync(Cancel));
        WorkProjects.Value(await project.Work.TookAsync(project.Project, step.Id, "", CommandId.New(), Cancel));
        Assert.Empty(await project.Work.LogsAsync(Cancel));
    }

    [Fact]
    public async Task A_time_that_cannot_be_read_is_refused_and_the_old_one_stays()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var step = (await project.ReadAsync()).Steps[0].Step.Id;
        await project.WriteAsync(step, one => one with { Took = "45" });
        var texts = (await project.Work.TextsAsync(project.Project, step, Cancel))!;
        foreach (
            var outcome in new[]
            {
                (await project.Work.SaveTextsAsync(texts with { Took = "an hour" }, Cancel)).Faults,
                (await project.Work.TookAsync(project.Project, step, "an hour", CommandId.New(), Cancel)).Faults,
            }
        )
            Assert.Equal(
                "took: 'an hour' is not a time: write minutes, like 45, or hours and minutes, like 1:30",
                Assert.Single(outcome).ToString()
            );
        Assert.Equal("45", (await project.Work.TextsAsync(project.Project, step, Cancel))!.Took);
    }

    [Fact]
    public async Task A_session_at_the_saw_is_held_against_what_was_cut_in_it()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        await AddAsync(project, "50", 40);
        await AddAsync(project, "1:10", 100);
        // Nothing more was cut: the time counts, and teaches nothing.
        await AddAsync(project, "15", 100);
        var logs = await project.Work.LogsAsync(Cancel);
        Assert.Equal([(40, 50), (60, 70), (0, 15)], logs.Select(log => (log.Time.Usual, log.Time.Took)));
        Assert.All(logs, log => Assert.Equal((null, WorkTimes.Cutting), (log.StepId, log.Time.Kind)));
        var wrong = await project.Work.AddCuttingTimeAsync(project.Project, " ", 100, CommandId.New(), Cancel);
        Assert.Equal("took", Assert.Single(wrong.Faults).Field);
        WorkProjects.Value(await project.Work.UndoAsync(project.Project, (await project.ReadAsync()).Version, Cancel));
        Assert.Equal(2, (await project.Work.LogsAsync(Cancel)).Length);
    }

    [Fact]
    public async Task A_step_of_ones_own_has_a_time_and_no_estimate()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var added = (await project.AddAsync("Fit the toe kick")).Steps.Single(one => one.IsOwn).Step.Id;
        await project.MarkAsync(added, StepMark.Done);
        await project.WriteAsync(added, one => one with { Took = "25" });
        Assert.Equal(
            (0, 25),
            Assert.Single(await project.Work.LogsAsync(Cancel)) is { } log ? (log.Time.Usual, log.Time.Took) : default
        );
    }

    private static async Task AddAsync(WorkProjects project, string took, int cutSoFar)
    {
        project.Shop.Clock.Advance(TimeSpan.FromHours(1));
        WorkProjects.Value(await project.Work.AddCuttingTimeAsync(project.Project, took, cutSoFar, CommandId.New(), Cancel));
    }
}
