using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Tests.Making;
using ShopPlanner.Services.Weekends;
using ShopPlanner.Services.Weekends.Stored;

namespace ShopPlanner.Services.Tests.Weekends;

/// <summary>The work of projects in the shop's working time. The clock of these shops stands on Saturday, May 2, 2026,
/// 9:30.</summary>
public sealed class WeekendServiceTests
{
    private static CancellationToken Cancel => TestShop.Cancel;

    [Fact]
    public async Task Every_open_step_is_done_once_within_working_hours_and_after_what_it_waits_for()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var (weekends, work) = (project.Shop.Get<IWeekendService>(), await project.ReadAsync());
        var board = await weekends.BoardAsync(Cancel);
        Assert.Empty(board.Reasons);
        var lines = board.Windows.SelectMany(window => window.Lines).ToList();
        Assert.All(lines, line => Assert.InRange(line.From.TimeOfDay, TimeSpan.FromHours(9), TimeSpan.FromHours(17)));
        Assert.All(lines, line => Assert.Contains(line.From.DayOfWeek, new[] { DayOfWeek.Saturday, DayOfWeek.Sunday }));
        foreach (var step in work.Steps)
        {
            var own = lines.Where(line => line.Task.Id.EndsWith("/" + step.Step.Id, StringComparison.Ordinal)).ToList();
            Assert.Equal(step.Step.Minutes, own.Sum(line => (line.To - line.From).TotalMinutes));
            foreach (var before in work.Steps.Where(one => step.Step.After.Contains(one.Step.Id)))
            {
                var done = lines.Last(line => line.Task.Id.EndsWith("/" + before.Step.Id, StringComparison.Ordinal)).To;
                Assert.True(own[0].From >= done.AddMinutes(before.Step.Wait?.Minutes ?? 0), $"{step.Title} after {before.Title}");
            }
        }

        // One pair of hands.
        Assert.All(lines.Zip(lines.Skip(1)), pair => Assert.True(pair.First.To <= pair.Second.From));
    }

    [Fact]
    public async Task What_is_done_is_gone_and_what_cures_holds_back()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var work = await project.ReadAsync();
        var glue = work.Steps.First(step =>
            step.Step.Wait is { Minutes: > 30 } && work.Steps.Any(one => one.Step.After.Contains(step.Step.Id))
        );
        var next = work.Steps.First(one => one.Step.After.Contains(glue.Step.Id));
        await project.MarkAsync(glue.Step.Id, StepMark.Done);
        var board = await weekends.BoardAsync(Cancel);
        var lines = board.Windows.SelectMany(window => window.Lines).ToList();
        Assert.DoesNotContain(lines, line => line.Task.Id.EndsWith("/" + glue.Step.Id, StringComparison.Ordinal));
        Assert.Contains(board.Windows[0].Holds, hold => hold.Task.Title == glue.Title);
        var free = project.Shop.Clock.GetUtcNow().UtcDateTime.AddMinutes(glue.Step.Wait!.Minutes);
        Assert.True(lines.First(line => line.Task.Id.EndsWith("/" + next.Step.Id, StringComparison.Ordinal)).From >= free);
    }

    [Fact]
    public async Task A_task_that_is_put_off_takes_what_follows_along()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var before = await weekends.BoardAsync(Cancel);
        Assert.True((await weekends.RememberAsync(Cancel)).Ok);
        var first = before.Windows[0].Lines[0].Task;
        var later = new DateTime(2026, 5, 9, 9, 0, 0, DateTimeKind.Utc);
        Assert.True((await weekends.PutOffAsync(first.Id, later, Cancel)).Ok);
        var after = await weekends.BoardAsync(Cancel);
        var line = after.Windows.SelectMany(window => window.Lines).First(one => one.Task.Id == first.Id);
        Assert.Equal((new DateTime(2026, 5, 9, 9, 0, 0), later), (line.From, line.Task.PutOffUtc));
        Assert.True(after.Finish >= before.Finish);
        Assert.True((await weekends.PutOffAsync(first.Id, null, Cancel)).Ok);
        var back = await weekends.BoardAsync(Cancel);
        Assert.Equal((before.Finish, true), (back.Finish, back.IsKept));
    }

    [Fact]
    public async Task Estimates_learn_from_what_steps_of_the_kind_took()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var steps = (await project.ReadAsync()).Steps;
        var kind = steps.GroupBy(step => step.Step.Action).First(same => same.Count(step => step.Step.Minutes > 0) > 1).ToList();
        var (done, open) = (kind[0], kind[1]);
        await project.MarkAsync(done.Step.Id, StepMark.Done);
        await project.WriteAsync(done.Step.Id, texts => texts with { Took = $"{4 * done.Step.Minutes}" });
        var board = await weekends.BoardAsync(Cancel);
        var task = board.Windows.SelectMany(window => window.Lines).Select(line => line.Task).First(one => IsOf(one, open));
        Assert.Equal((open.Step.Minutes, 1), (task.Usual, task.Logs));
        Assert.True(task.Minutes > task.Usual);
        Assert.Equal($"{4 * done.Step.Minutes}", Assert.Single(board.Lately).Took);
        // What is open again teaches nothing until it is done once more.
        await project.MarkAsync(done.Step.Id, StepMark.Open);
        var again = (await weekends.BoardAsync(Cancel))
            .Windows.SelectMany(window => window.Lines)
            .First(line => IsOf(line.Task, open));
        Assert.Equal((open.Step.Minutes, 0), (again.Task.Minutes, again.Task.Logs));
    }

    private static bool IsOf(WeekendTask task, WorkStepView step) =>
        task.Id.EndsWith("/" + step.Step.Id, StringComparison.Ordinal);

    [Fact]
    public async Task A_project_that_is_left_out_or_done_is_not_scheduled()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var settings = await weekends.SettingsAsync(Cancel);
        settings = WorkProjects.Value(
            await weekends.SaveAsync(settings.With(settings.WishOf(project.Project) with { IsLeftOut = true }), Cancel)
        );
        Assert.True((await weekends.BoardAsync(Cancel)).IsEmpty);
        WorkProjects.Value(
            await weekends.SaveAsync(settings.With(settings.WishOf(project.Project) with { IsLeftOut = false }), Cancel)
        );
        Assert.False((await weekends.BoardAsync(Cancel)).IsEmpty);
    }

    [Fact]
    public async Task A_date_that_cannot_be_kept_is_told_with_how_late_it_gets()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var settings = await weekends.SettingsAsync(Cancel);
        WorkProjects.Value(
            await weekends.SaveAsync(settings.With(settings.WishOf(project.Project) with { Due = "2026-05-02" }), Cancel)
        );
        var board = await weekends.BoardAsync(Cancel);
        var late = Assert.Single(board.Projects);
        Assert.Equal(new DateOnly(2026, 5, 2), late.Due);
        Assert.Equal((late.Finish!.Value - new DateTime(2026, 5, 3)).TotalMinutes, late.LateMinutes);
    }

    [Fact]
    public async Task Too_few_clamps_name_the_step()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var glue = (await project.ReadAsync()).Steps.First(step => step.Step.Wait is { Clamps: > 1, ClampMinutes: > 0 });
        var settings = await weekends.SettingsAsync(Cancel);
        WorkProjects.Value(await weekends.SaveAsync(settings with { Clamps = "1" }, Cancel));
        var board = await weekends.BoardAsync(Cancel);
        Assert.Equal(ScheduleStatus.Impossible, board.Status);
        Assert.Contains(board.Reasons, reason => reason.Contains($": {glue.Title}” takes", StringComparison.Ordinal));
        Assert.False((await weekends.RememberAsync(Cancel)).Ok);
    }

    [Fact]
    public async Task Time_that_is_free_now_is_filled_with_what_waits_for_nothing()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var fitting = await weekends.WithinAsync(120, Cancel);
        Assert.NotEmpty(fitting);
        Assert.Equal("Cut the parts", fitting[0].Title);
        Assert.Empty(await weekends.WithinAsync(0, Cancel));
    }

    // What is left after them waits for paint to harden.
    [Fact]
    public async Task The_demo_is_three_weekends_of_work()
    {
        await using var shop = await TestShop.OpenAsync(demo: true);
        var board = await shop.Get<IWeekendService>().BoardAsync(Cancel);
        Assert.Empty(board.Reasons);
        Assert.Equal(3, board.Projects.Count(project => project.Finish is not null));
        var fourth = board.Windows[0].Opens.Date.AddDays(21);
        var late = board.Windows.Where(window => window.Opens >= fourth).SelectMany(window => window.Lines);
        Assert.InRange(late.Sum(line => line.Task.Minutes), 0, 60);
        Assert.Contains(board.Windows, window => window.Opens >= fourth.AddDays(-7) && !window.Lines.IsEmpty);
        Assert.True(board.Bound <= board.Finish);
    }

    [Fact]
    public async Task All_projects_of_the_demo_are_scheduled_close_to_the_bound()
    {
        await using var shop = await TestShop.OpenAsync(demo: true);
        // The page takes two seconds at most, which on a busy machine may not do.
        var asked = await shop.Get<WeekendRequests>().AskAsync(WeekendDocument.Usual, Cancel);
        var schedule = SchedulePlanner.Plan(asked.Request with { Seconds = 60 }, new ScheduleControl());
        Assert.InRange(1 - ((double)schedule.Bound!.Value / schedule.Finish!.Value), 0, 0.02);
    }

    [Fact]
    public async Task More_clamps_in_use_than_were_counted_do_not_stand_in_the_way()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var glue = (await project.ReadAsync()).Steps.First(step => step.Step.Wait is { Clamps: > 1, ClampMinutes: > 0 });
        await project.MarkAsync(glue.Step.Id, StepMark.Done);
        var settings = await weekends.SettingsAsync(Cancel);
        WorkProjects.Value(await weekends.SaveAsync(settings with { Clamps = "1" }, Cancel));
        Assert.DoesNotContain(
            (await weekends.BoardAsync(Cancel)).Reasons,
            reason => reason.Contains("fixed", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task The_calendar_has_an_entry_for_each_piece_of_work()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var board = await weekends.BoardAsync(Cancel);
        var calendar = await weekends.CalendarAsync(Cancel);
        Assert.Equal(board.Windows.Sum(window => window.Lines.Length), calendar.Split("TRANSP:OPAQUE").Length - 1);
    }

    [Theory]
    [InlineData("Saturday", "9-25", "'9-25' is not a range of hours: write one like 9:00-17:00 or 7 pm-9 pm, or leave it blank")]
    [InlineData(
        "Saturday",
        "17:00-9:00",
        "'17:00-9:00' is not a range of hours: write one like 9:00-17:00 or 7 pm-9 pm, or leave it blank"
    )]
    [InlineData("DaysOff", "May 9", "'May 9' is not a date: write one like 2027-03-06")]
    [InlineData("ExtraHours", "2026-05-08", "'2026-05-08' is not a date with hours: write 2027-03-05 19:00-21:00")]
    [InlineData("Zone", "Chicago", "'Chicago' is not a time zone: write one like America/Chicago")]
    [InlineData("People", "0", "'0' is not a number: write a whole number from 1 to 1000")]
    [InlineData("Clamps", "many", "'many' is not a number: write a whole number from 1 to 1000")]
    public async Task A_wrong_text_is_refused_with_what_would_be_right(string field, string text, string fault)
    {
        await using var shop = await TestShop.OpenAsync();
        var weekends = shop.Get<IWeekendService>();
        var settings = await weekends.SettingsAsync(Cancel);
        var outcome = await weekends.SaveAsync(With(settings, field, text), Cancel);
        Assert.Equal((OutcomeKind.Faulty, $"{field}: {fault}"), (outcome.Kind, Assert.Single(outcome.Faults).ToString()));
    }

    [Theory]
    [InlineData("9:00-17:00", 9, 17)]
    [InlineData("9-17", 9, 17)]
    [InlineData("9 am – 5 pm", 9, 17)]
    [InlineData("7pm to 9pm", 19, 21)]
    [InlineData("12 pm-11:00PM", 12, 23)]
    public async Task Hours_are_read_as_people_write_them(string text, int from, int to)
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var weekends = project.Shop.Get<IWeekendService>();
        var settings = await weekends.SettingsAsync(Cancel);
        var only = settings with { Hours = settings.Hours.Clear().Add("Friday", text), Zone = "UTC" };
        WorkProjects.Value(await weekends.SaveAsync(only, Cancel));
        var window = (await weekends.BoardAsync(Cancel)).Windows[0];
        Assert.Equal((DayOfWeek.Friday, from, to), (window.Opens.DayOfWeek, window.Opens.Hour, window.Closes.Hour));
    }

    [Fact]
    public async Task Another_device_s_change_is_a_conflict()
    {
        await using var shop = await TestShop.OpenAsync();
        var weekends = shop.Get<IWeekendService>();
        var settings = await weekends.SettingsAsync(Cancel);
        WorkProjects.Value(await weekends.SaveAsync(settings with { People = "2" }, Cancel));
        Assert.Equal(OutcomeKind.Conflict, (await weekends.SaveAsync(settings with { People = "3" }, Cancel)).Kind);
    }

    private static WeekendSettings With(WeekendSettings settings, string field, string text) =>
        field switch
        {
            "DaysOff" => settings with { DaysOff = text },
            "ExtraHours" => settings with { ExtraHours = text },
            "Zone" => settings with { Zone = text },
            "People" => settings with { People = text },
            "Clamps" => settings with { Clamps = text },
            _ => settings with { Hours = settings.Hours.SetItem(field, text) },
        };
}
