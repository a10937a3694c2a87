using Microsoft.Data.Sqlite;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>Storage that refuses to note how a run ended. Triggers stand in for a full disk: one refuses with an outcome, one with an
/// exception.</summary>
public sealed class FullDiskTests : IDisposable
{
    private const string Refuse = "INSERT INTO PlanJobs SELECT * FROM PlanJobs WHERE Id = NEW.Id";
    private const string Break = "SELECT RAISE(ABORT, 'no room')";
    private readonly string folder = TestShop.NewFolder();

    public FullDiskTests() => TestShop.NeedsFile();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory, InlineData(Refuse), InlineData(Break)]
    public async Task A_run_whose_end_cannot_be_saved_says_so_and_is_saved_when_there_is_room_again(string how)
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        var job = await FailAsync(given, how);
        Assert.Equal(PlanJobState.Failed, job.State);
        Assert.Contains(job.Faults, fault => fault.Message.Contains("InvalidOperationException"));
        Assert.Contains(job.Faults, fault => fault.Message.Contains("not saved yet"));
        Assert.NotEqual($"{(int)PlanJobState.Failed}", State(given.Shop, job.Id));

        Execute("DROP TRIGGER full");
        given.Shop.Clock.Advance(TimeSpan.FromMinutes(1));
        while (State(given.Shop, job.Id) != $"{(int)PlanJobState.Failed}" || given.Shop.Plans.FindJob(job.Id)!.Faults.Length > 1)
            await Task.Delay(5, TestShop.Cancel);
        Assert.Contains("InvalidOperationException", Assert.Single(given.Shop.Plans.FindJob(job.Id)!.Faults).Message);
    }

    [Fact]
    public async Task Runs_go_on_after_one_whose_end_could_not_be_saved()
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        await FailAsync(given);
        Execute("DROP TRIGGER full");
        given.Planner.Before = null;
        Assert.Equal(PlanJobState.Done, (await given.RunAsync(given.Order())).State);
    }

    [Fact]
    public async Task An_end_that_was_never_saved_is_settled_at_the_next_start()
    {
        Guid job;
        await using (var given = await PlannedShop.OpenAsync(folder))
            job = (await FailAsync(given)).Id;
        Execute("DROP TRIGGER full");
        await using var again = await TestShop.OpenAsync(folder: folder);
        var end = again.Plans.FindJob(job)!;
        Assert.Equal(PlanJobState.Stopped, end.State);
        Assert.Contains("Shop Planner was stopped", Assert.Single(end.Faults).Message);
    }

    [Fact]
    public async Task A_stop_tries_once_more_to_save_an_end()
    {
        Guid job;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            job = (await FailAsync(given)).Id;
            Execute("DROP TRIGGER full");
        }

        await using var again = await TestShop.OpenAsync(folder: folder);
        Assert.Equal(PlanJobState.Failed, again.Plans.FindJob(job)!.State);
    }

    private async Task<PlanJobView> FailAsync(PlannedShop given, string how = Refuse)
    {
        given.Planner.Before = (_, _) => throw new InvalidOperationException("broken");
        Execute($"CREATE TRIGGER full BEFORE UPDATE ON PlanJobs BEGIN {how}; END");
        return await given.RunAsync(given.Order());
    }

    private static string State(TestShop shop, Guid job) =>
        shop.Ask($"SELECT State FROM PlanJobs WHERE Id = '{job:D}' COLLATE NOCASE");

    private void Execute(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(folder, "shop.db")};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
