using System.IO.Compression;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Golden;

/// <summary>Folders written by earlier programs, opened by this one: every plan, tick, offcut and step to undo is still there.
/// Written by <see cref="GoldenWriter"/>: <c>shop-1.zip</c> when plans were stored as records, <c>shop-2.zip</c> when they had become
/// documents of version 1.</summary>
public sealed class GoldenTests : IAsyncLifetime
{
    public static TheoryData<string> Folders =>
        [.. new DirectoryInfo(Path.Combine(AppContext.BaseDirectory, "Golden")).GetFiles("shop-*.zip").Select(file => file.Name)];

    private readonly string folder = TestShop.NewFolder();

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync()
    {
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    [Theory, MemberData(nameof(Folders))]
    public async Task Everything_in_it_is_told_as_before(string file)
    {
        var facts = Moved(Unpack(file));
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.Equal(facts, await ShopFacts.TellAsync(shop));
    }

    // The programs that wrote them left a project's state to people, who left all of these at planning. Their plans tell: one is
    // stored and begun for two of them, one is stored and to be bought for.
    private static string Moved(string facts) =>
        string.Join(
            '\n',
            facts
                .Split('\n')
                .Select(line =>
                    !line.StartsWith("project: ", StringComparison.Ordinal) ? line
                    : line.Contains("| Boot-room bench |", StringComparison.Ordinal) ? line.Replace("| Planning |", "| Buying |")
                    : line.Contains("| Hall bookcase |", StringComparison.Ordinal) ? line
                    : line.Replace("| Planning |", "| Cutting |")
                )
        );

    [Theory, MemberData(nameof(Folders))]
    public async Task Lists_tell_of_plans_what_their_documents_say(string file)
    {
        Unpack(file);
        await using var shop = await TestShop.OpenAsync(folder: folder);
        foreach (var plan in await shop.Plans.ListAsync(withWithdrawn: true, cancel: TestShop.Cancel))
        {
            var bench = (await shop.Bench.GetAsync(plan.Id, TestShop.Cancel))!;
            var cuts = bench.Stocks.SelectMany(stock => stock.Cuts).ToList();
            var finished = bench.Stocks.Count(stock => stock.Finished);
            Assert.Equal(new(cuts.Count(cut => cut.Made), cuts.Count, finished, bench.Stocks.Length), plan.Progress);
            Assert.Equal(plan.Progress, bench.Plan.Summary.Progress);
            Assert.Equal(
                bench.Plan.Plan.Buy.Sum(buy => buy.Quantity),
                int.Parse(shop.Ask($"SELECT ToBuy FROM Plans WHERE Id = '{plan.Id.ToString().ToUpperInvariant()}'"))
            );
        }
    }

    // 1 was building, 2 finished, 3 archived.
    [Theory]
    [InlineData("Boot-room bench", 1, ProjectState.Building)]
    [InlineData("Plant stand", 1, ProjectState.Cutting)]
    [InlineData("Plant stand", 2, ProjectState.Done)]
    [InlineData("Hall bookcase", 1, ProjectState.Building)]
    [InlineData("Hall bookcase", 2, ProjectState.Done)]
    [InlineData("Hall bookcase", 3, ProjectState.PutAway)]
    public async Task A_state_that_was_set_by_hand_is_told_in_the_words_of_now(string project, int old, ProjectState now)
    {
        Unpack("shop-2.zip");
        await using (var file = new SqliteConnection($"Data Source={Path.Combine(folder, "shop.db")};Pooling=False"))
        {
            await file.OpenAsync(TestShop.Cancel);
            await using var set = file.CreateCommand();
            set.CommandText = "UPDATE Projects SET State = $state WHERE Name = $name";
            set.Parameters.AddWithValue("$state", old);
            set.Parameters.AddWithValue("$name", project);
            Assert.Equal(1, await set.ExecuteNonQueryAsync(TestShop.Cancel));
        }

        for (var starts = 0; starts < 2; starts++)
        {
            await using var shop = await TestShop.OpenAsync(folder: folder);
            var projects = await shop.Projects.ListAsync(true, TestShop.Cancel);
            Assert.Equal(now, projects.Single(one => one.Name == project).State);
            Assert.Equal("0", shop.Ask("SELECT COUNT(*) FROM Projects WHERE SetState IS NOT NULL AND SetBuild = 0"));
        }
    }

    [Theory, MemberData(nameof(Folders))]
    public async Task The_plans_of_each_project_are_those_that_were_ordered_for_it(string file)
    {
        Unpack(file);
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var plans = await shop.Plans.ListAsync(withWithdrawn: true, cancel: TestShop.Cancel);
        Assert.Contains(plans, plan => plan.Projects.Length > 1);
        foreach (var plan in plans)
            Assert.Equal((await shop.Plans.GetAsync(plan.Id, TestShop.Cancel))!.Order.Projects, plan.Projects);
        foreach (var project in await shop.Projects.ListAsync(true, TestShop.Cancel))
            Assert.Equal(
                plans
                    .Where(plan => plan.State != PlanState.Withdrawn && plan.Projects.Contains(project.Id))
                    .Select(plan => plan.Id),
                (await shop.Plans.ListOfAsync(project.Id, TestShop.Cancel)).Select(plan => plan.Id)
            );
    }

    // A copy made before the change is opened by the program that wrote it; this is the way back for one made after.
    [Fact]
    public async Task The_projects_of_plans_go_back_into_their_column()
    {
        Unpack("shop-2.zip");
        const string Ids =
            "SELECT group_concat(\"Projects\", '; ') FROM (SELECT \"Projects\" FROM \"Plans\" ORDER BY \"Number\")";
        var file = new SqliteContextFactory(Path.Combine(folder, "shop.db"));
        await using (var db = file.CreateDbContext())
        {
            await db.Database.OpenConnectionAsync(TestShop.Cancel);
            var connection = db.Database.GetDbConnection();
            var before = SqliteFacts.Ask(connection, Ids);
            await db.Database.MigrateAsync(TestShop.Cancel);
            await db.GetService<IMigrator>().MigrateAsync("OpenDocuments", TestShop.Cancel);
            Assert.Contains(' ', before);
            Assert.Equal(before, SqliteFacts.Ask(connection, Ids));
        }

        file.Release();
    }

    [Theory, MemberData(nameof(Folders))]
    public async Task Steps_of_parts_and_ideas_are_undone_and_done_again(string file)
    {
        Unpack(file);
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var projects = (await shop.Projects.ListAsync(cancel: TestShop.Cancel)).ToDictionary(project => project.Name);
        var bench = projects["Boot-room bench"].Id;
        Assert.Equal("Z", Sure(await shop.Parts.RedoAsync(bench, TestShop.Cancel)).Rows[^1].Texts.Mark);
        Sure(await shop.Parts.UndoAsync(bench, TestShop.Cancel));
        Assert.NotEqual("front edge rounded", Sure(await shop.Parts.UndoAsync(bench, TestShop.Cancel)).Rows[0].Texts.Note);

        var ideas = shop.Get<IIdeaService>();
        var bookcase = projects["Hall bookcase"].Id;
        Assert.Empty(Sure(await shop.Parts.UndoAsync(bookcase, TestShop.Cancel)).Rows);
        var idea = (await ideas.GetAsync(bookcase, TestShop.Cancel))!;
        idea = Sure(await ideas.RedoAsync(bookcase, idea.Version, TestShop.Cancel));
        Assert.Equal("30", idea.Idea.Changed["width"]);
        idea = Sure(await ideas.UndoAsync(bookcase, idea.Version, TestShop.Cancel));
        Assert.Empty(Sure(await ideas.UndoAsync(bookcase, idea.Version, TestShop.Cancel)).Idea.Changed);
    }

    [Theory, MemberData(nameof(Folders))]
    public async Task A_finished_board_is_opened_again_and_finished_once_more(string file)
    {
        Unpack(file);
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var plan = (await shop.Plans.ListAsync(cancel: TestShop.Cancel)).Single(plan => plan.State == PlanState.Cutting).Id;
        var finished = (await shop.Bench.GetAsync(plan, TestShop.Cancel))!.Stocks.Single(stock => stock.Finished);
        var (layout, copy) = (finished.Layout, finished.Copy);
        Assert.NotEmpty(finished.Binned);
        var reopened = Sure(await shop.Bench.ReopenAsync(plan, layout, copy, Some.Device, CommandId.New(), TestShop.Cancel));
        Assert.DoesNotContain(reopened.Stocks, stock => stock.Finished);
        Assert.DoesNotContain(await shop.Stock.ListAsync(TestShop.Cancel), piece => piece.Tag == finished.Binned[0].Tag);
        var leftovers = finished.Binned.Select((piece, i) => new MeasuredLeftover(i, $"{piece.Length}", $"{piece.Width}", true));
        var again = new FinishedStock(layout, copy, AllCutsMade: true, [.. leftovers]);
        var view = Sure(await shop.Bench.FinishAsync(plan, again, Some.Device, CommandId.New(), TestShop.Cancel));
        Assert.Equal(finished.Binned.Length, view.Stocks.Single(stock => stock.Finished).Binned.Length);
    }

    // An earlier program entered the board at the bench and left the money out.
    [Theory, MemberData(nameof(Folders))]
    public async Task What_was_bought_at_the_bench_is_counted_once_at_its_plan_s_price(string file)
    {
        Unpack(file);
        var paid = 0;
        for (var opened = 1; opened <= 2; opened++)
        {
            await using var shop = await TestShop.OpenAsync(folder: folder);
            paid = 0;
            foreach (var plan in await shop.Plans.ListAsync(withWithdrawn: true, cancel: TestShop.Cancel))
            {
                var list = (await shop.Get<IBuyingService>().OfPlanAsync(plan.Id, TestShop.Cancel))!;
                Assert.All(list.Lines, line => Assert.All(line.Bought, one => Assert.Equal(line.Planned, one.Price)));
                paid += list.Lines.Sum(line => line.Bought.Length);
            }
        }

        Assert.NotEqual(0, paid);
    }

    [Theory, MemberData(nameof(Folders))]
    public async Task A_canceled_plan_is_restored(string file)
    {
        Unpack(file);
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var plans = await shop.Plans.ListAsync(withWithdrawn: true, cancel: TestShop.Cancel);
        var ready = plans.Single(plan => plan.State == PlanState.Ready).Id;
        var withdrawn = plans.Single(plan => plan.State == PlanState.Withdrawn).Id;
        Assert.Equal(PlanState.Withdrawn, Sure(await shop.Plans.WithdrawAsync(ready, TestShop.Cancel)).State);
        Assert.Equal(PlanState.Ready, Sure(await shop.Plans.ReinstateAsync(ready, TestShop.Cancel)).State);
        Assert.NotEqual(OutcomeKind.Ok, (await shop.Plans.ReinstateAsync(withdrawn, TestShop.Cancel)).Kind);
    }

    private string Unpack(string file)
    {
        ZipFile.ExtractToDirectory(Path.Combine(AppContext.BaseDirectory, "Golden", file), folder);
        var facts = Path.Combine(folder, "facts.txt");
        var told = File.ReadAllText(facts);
        File.Delete(facts);
        return told;
    }

    private static T Sure<T>(Outcome<T> outcome)
        where T : class
    {
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value!;
    }
}
