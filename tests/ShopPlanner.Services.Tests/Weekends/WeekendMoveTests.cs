using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Tests.Making;
using ShopPlanner.Services.Weekends;

namespace ShopPlanner.Services.Tests.Weekends;

/// <summary>Tasks that are moved to another window by hand.</summary>
public sealed class WeekendMoveTests
{
    private static CancellationToken Cancel => TestShop.Cancel;

    [Fact]
    public async Task A_task_that_is_moved_stays_there_and_what_follows_moves_along()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var before = await weekends.BoardAsync(Cancel);
        var cut = before.Windows[0].Lines[0].Task;
        var target = before.Targets[2];
        WorkProjects.Value(await weekends.MoveAsync(cut.Id, target.OpensUtc, Cancel));
        var after = await weekends.BoardAsync(Cancel);
        var line = First(after, cut.Id);
        Assert.True(line.From >= target.Opens && line.From.Date == target.Opens.Date, $"{line.From} in {target.Opens}");
        Assert.True(line.Task.IsSet);
        Assert.True(after.IsKept && !after.IsFreed);
        // Everything waits for the parts.
        Assert.All(after.Windows.SelectMany(window => window.Lines), one => Assert.True(one.From >= line.From));
        WorkProjects.Value(await weekends.LetGoAsync(cut.Id, Cancel));
        Assert.False(First(await weekends.BoardAsync(Cancel), cut.Id).Task.IsSet);
    }

    [Fact]
    public async Task A_task_is_not_moved_before_what_it_needs_and_nothing_is_changed()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var (cut, last) = Ends(await weekends.BoardAsync(Cancel));
        WorkProjects.Value(await weekends.MoveAsync(cut, (await weekends.BoardAsync(Cancel)).Targets[1].OpensUtc, Cancel));
        var before = await weekends.BoardAsync(Cancel);
        var outcome = await weekends.MoveAsync(last, before.Targets[0].OpensUtc, Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Contains("comes first, and takes until", Assert.Single(outcome.Faults).Message, StringComparison.Ordinal);
        Assert.Equal(Lines(before), Lines(await weekends.BoardAsync(Cancel)));
    }

    [Fact]
    public async Task What_a_set_task_needs_is_not_moved_behind_it()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var board = await weekends.BoardAsync(Cancel);
        var step = (await project.ReadAsync()).Steps.First(one => one.Step.After.IsEmpty && one.Step.Minutes > 0);
        var id = board.Windows.SelectMany(one => one.Lines).First(line => IsOf(line.Task, step)).Task.Id;
        WorkProjects.Value(await weekends.MoveAsync(id, board.Targets[1].OpensUtc, Cancel));
        var outcome = await weekends.MoveAsync(Ends(board).Cut, board.Targets[4].OpensUtc, Cancel);
        Assert.Contains(
            $"it has to be done before “{step.Title}”",
            Assert.Single(outcome.Faults).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_time_that_has_become_impossible_lets_everything_be_planned_freely()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var (_, last) = Ends(await weekends.BoardAsync(Cancel));
        var line = First(await weekends.BoardAsync(Cancel), last);
        var window = (await weekends.BoardAsync(Cancel)).Targets.Last(one => one.Opens <= line.From);
        WorkProjects.Value(await weekends.MoveAsync(last, window.OpensUtc, Cancel));
        var settings = await weekends.SettingsAsync(Cancel);
        WorkProjects.Value(await weekends.SaveAsync(settings with { DaysOff = $"{line.From:yyyy-MM-dd}" }, Cancel));
        var board = await weekends.BoardAsync(Cancel);
        Assert.True(board.IsFreed);
        Assert.Empty(board.Reasons);
        WorkProjects.Value(await weekends.LetGoAsync(null, Cancel));
        Assert.False((await weekends.BoardAsync(Cancel)).IsFreed);
    }

    [Fact]
    public async Task A_window_or_a_task_that_is_not_there_is_refused()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var cut = Ends(await weekends.BoardAsync(Cancel)).Cut;
        // A Wednesday.
        var closed = await weekends.MoveAsync(cut, new DateTime(2026, 5, 6, 12, 0, 0, DateTimeKind.Utc), Cancel);
        Assert.Contains("there is no working time then", Assert.Single(closed.Faults).Message, StringComparison.Ordinal);
        Assert.Equal(OutcomeKind.Missing, (await weekends.MoveAsync("x/y", DateTime.UnixEpoch, Cancel)).Kind);
    }

    private static (string Cut, string Last) Ends(WeekendBoard board)
    {
        var lines = board.Windows.SelectMany(window => window.Lines).ToList();
        return (lines[0].Task.Id, lines[^1].Task.Id);
    }

    private static WeekendLine First(WeekendBoard board, string task) =>
        board.Windows.SelectMany(window => window.Lines).First(line => line.Task.Id == task);

    private static List<(string, DateTime)> Lines(WeekendBoard board) =>
        [.. board.Windows.SelectMany(window => window.Lines).Select(line => (line.Task.Id, line.From))];

    private static bool IsOf(WeekendTask task, WorkStepView step) =>
        task.Id.EndsWith("/" + step.Step.Id, StringComparison.Ordinal);
}
