using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Trash;

namespace ShopPlanner.Services.Tests.Trash;

/// <summary>After thirty days the trash is emptied; what was cut stays true.</summary>
public sealed class TrashEndTests : IAsyncLifetime
{
    private static readonly string[] Of =
    [
        "Projects",
        "Parts",
        "PartSteps",
        "ProjectIdeas",
        "IdeaSteps",
        "ProjectWorkings",
        "Plans",
        "PlanProjects",
        "Promises",
    ];

    private PlannedShop given = null!;

    private TestShop Shop => given.Shop;

    private ITrashService Trash => Shop.Get<ITrashService>();

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
        var ideas = Shop.Get<IIdeaService>();
        var idea = (await ideas.StartAsync(given.Project.Id, "bookcase", CommandId.New(), TestShop.Cancel)).Value!;
        var wider = idea.Idea with { Changed = idea.Idea.Changed.SetItem("width", "26") };
        Assert.True((await ideas.SaveAsync(given.Project.Id, wider, idea.Version, "width", TestShop.Cancel)).Ok);
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task Nothing_of_a_project_without_cuts_is_left()
    {
        await given.PlanAsync();
        await Trash.DeleteAsync(given.Project.Id, TestShop.Cancel);
        await RemoveAsync(TimeSpan.FromDays(29));
        Assert.Single(await Trash.ListAsync(TestShop.Cancel));
        await RemoveAsync(TimeSpan.FromDays(30));
        Assert.Empty(await Trash.ListAsync(TestShop.Cancel));
        Assert.Empty(Left());
        Assert.Equal("ok", Shop.Ask("PRAGMA integrity_check"));
        Assert.Equal("0", Shop.Ask("SELECT COUNT(*) FROM pragma_foreign_key_check"));
    }

    [Fact]
    public async Task What_was_cut_stays_in_the_ledger_with_its_plan()
    {
        var plan = (await given.PlanAsync()).Summary.Id;
        var finished = await Shop.Bench.FinishAsync(
            plan,
            new(0, 1, true, [new(0, "11", "", true)]),
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.True(finished.Ok, string.Join("; ", finished.Faults));
        var (history, stock) = (await HistoryAsync(), await Shop.Stock.ListAsync(TestShop.Cancel));
        await Trash.DeleteAsync(given.Project.Id, TestShop.Cancel);
        Assert.Equal(history, await HistoryAsync());
        await RemoveAsync(TimeSpan.FromDays(31));
        Assert.Equal(history, await HistoryAsync());
        Assert.Equal(stock, await Shop.Stock.ListAsync(TestShop.Cancel));
        var view = await given.ReadAsync(plan);
        Assert.Equal((PlanState.Withdrawn, "Boot-room bench"), (view.Summary.State, view.Summary.Name));
        Assert.Single(await Shop.Plans.ListAsync(true, TestShop.Cancel), one => one.Id == plan);
        Assert.Contains(
            "can't come back: its project was deleted",
            (await Shop.Plans.ReinstateAsync(plan, TestShop.Cancel)).Faults.Single().Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_half_cut_piece_is_free_again_when_its_project_is_gone()
    {
        var plan = (await given.PlanAsync()).Summary.Id;
        await Shop.Bench.SetCutAsync(plan, 0, 1, 1, true, Some.Device, CommandId.New(), TestShop.Cancel);
        await Trash.DeleteAsync(given.Project.Id, TestShop.Cancel);
        Assert.NotNull((await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
        await RemoveAsync(TimeSpan.FromDays(31));
        Assert.Null((await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
    }

    [Fact]
    public async Task A_plan_shared_with_another_project_outlives_it()
    {
        var other = await Some.ProjectAsync(Shop, "Plant stand");
        await Shop.Parts.SaveAsync(other.Id, [Some.New(Some.Part("20", "A", "1"))], TestShop.Cancel);
        var plan = (await given.PlanAsync(given.Order() with { Projects = [given.Project.Id, other.Id] })).Summary.Id;
        await Trash.DeleteAsync(given.Project.Id, TestShop.Cancel);
        await RemoveAsync(TimeSpan.FromDays(31));
        Assert.Equal(PlanState.Ready, (await given.ReadAsync(plan)).Summary.State);
        Assert.Equal(plan, Assert.Single(await Shop.Plans.ListOfAsync(other.Id, TestShop.Cancel)).Id);
    }

    [Fact]
    public async Task The_program_empties_it_by_itself_and_backups_keep_the_project()
    {
        var copy = (await Shop.Get<IBackupService>().CreateAsync(CommandId.New(), TestShop.Cancel)).Value!.File;
        await Trash.DeleteAsync(given.Project.Id, TestShop.Cancel);
        for (var day = 0; day < 32 && (await Trash.ListAsync(TestShop.Cancel)).Count > 0; day++)
        {
            Shop.Clock.Advance(TimeSpan.FromDays(1));
            await Task.Delay(20, TestShop.Cancel);
        }

        await WaitUntilEmptyAsync();
        await using var db = new Services.Storage.SqliteContextFactory(copy).CreateDbContext();
        Assert.Equal("Boot-room bench", (await db.Projects.SingleAsync(TestShop.Cancel)).Name);
    }

    private async Task WaitUntilEmptyAsync()
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestShop.Cancel);
        patience.CancelAfter(TimeSpan.FromSeconds(20));
        while ((await Trash.ListAsync(patience.Token)).Count > 0)
            await Task.Delay(20, patience.Token);
    }

    private async Task RemoveAsync(TimeSpan after) =>
        Assert.True(
            (
                await Shop.Work.WriteAsync(
                    db => TrashedProjects.RemoveOldAsync(db, (Shop.Clock.GetUtcNow() + after).UtcDateTime, TestShop.Cancel),
                    TestShop.Cancel
                )
            ).Ok
        );

    // Tables about projects that have rows.
    private IEnumerable<string> Left() =>
        Shop.CountRows().Where(table => table.Value > 0 && Of.Contains(table.Key)).Select(table => $"{table.Key}: {table.Value}");

    private Task<IReadOnlyList<Services.Stock.StockEntry>> HistoryAsync() => Shop.Stock.HistoryAsync(null, 100, TestShop.Cancel);
}
