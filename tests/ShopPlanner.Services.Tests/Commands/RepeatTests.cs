using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;

namespace ShopPlanner.Services.Tests.Commands;

/// <summary>What a command answers that comes again late.</summary>
public sealed class RepeatTests : IAsyncLifetime
{
    private static readonly DateTimeOffset Day = new(2026, 5, 2, 9, 30, 0, TimeSpan.Zero);
    private readonly string folder = TestShop.NewFolder();
    private readonly CommandId id = CommandId.New();

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync()
    {
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task What_was_deleted_since_is_missing_and_not_made_again()
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        var stores = given.Shop.Stores;
        var saved = (await stores.SavePriceAsync(given.Store.Id, Some.Price("72", "5"), id, TestShop.Cancel)).Value!;
        var price = saved.Prices.Single(one => one.Price.ToString() == "5.00");
        Assert.True((await stores.RemovePriceAsync(given.Store.Id, price.Id, TestShop.Cancel)).Ok);
        var again = await stores.SavePriceAsync(given.Store.Id, Some.Price("72", "5"), id, TestShop.Cancel);
        Assert.Equal((OutcomeKind.Missing, "price"), (again.Kind, again.Faults.Single().Field));
        Assert.Single((await stores.GetAsync(given.Store.Id, TestShop.Cancel))!.Prices);
    }

    [Fact]
    public async Task Pieces_that_are_gone_since_are_left_out_of_the_answer()
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        var pieces = await AddAsync(given.Shop);
        await given.Shop.Stock.DiscardAsync(pieces.Value![0].Id, 1, "split", Some.Device, TestShop.Cancel);
        Assert.Equal(pieces.Value[1], Assert.Single((await AddAsync(given.Shop)).Value!));
        await given.Shop.Stock.DiscardAsync(pieces.Value[1].Id, 1, "split", Some.Device, TestShop.Cancel);
        Assert.Equal(OutcomeKind.Missing, (await AddAsync(given.Shop)).Kind);
        Assert.Empty(await given.Shop.Stock.ListAsync(TestShop.Cancel));
    }

    [Fact]
    public async Task A_price_list_that_comes_again_late_does_not_overwrite_a_newer_price()
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        var stores = given.Shop.Stores;
        var csv = "material,length,width,price,in stock\npine-1x3,96,,5,yes\n"u8.ToArray();
        var read = await stores.ImportCsvAsync(given.Store.Id, new MemoryStream(csv), TableChoices.Guess, id, TestShop.Cancel);
        var row = Assert.Single(read.Value!.Prices);
        var newer = Some.Price(price: "7") with { Id = row.Id, Version = row.Version };
        var saved = await stores.SavePriceAsync(given.Store.Id, newer, CommandId.New(), TestShop.Cancel);
        Assert.NotEqual(row.Price, saved.Value!.Prices[0].Price);
        var again = await stores.ImportCsvAsync(given.Store.Id, new MemoryStream(csv), TableChoices.Guess, id, TestShop.Cancel);
        Assert.Equal(saved.Value.Prices, again.Value!.Prices.AsEnumerable());
    }

    [Fact]
    public async Task An_idea_that_was_changed_since_is_not_started_over()
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        var ideas = given.Shop.Get<IIdeaService>();
        await ideas.StartAsync(given.Project.Id, "bookcase", id, TestShop.Cancel);
        await ideas.StartAsync(given.Project.Id, "table", CommandId.New(), TestShop.Cancel);
        var again = (await ideas.StartAsync(given.Project.Id, "bookcase", id, TestShop.Cancel)).Value!;
        Assert.Equal((2, "start from table"), (again.Version, again.Undo));
    }

    [Fact]
    public async Task A_backup_that_was_deleted_since_is_missing()
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        var backups = given.Shop.Get<IBackupService>();
        File.Delete((await backups.CreateAsync(id, TestShop.Cancel)).Value!.File);
        Assert.Equal(OutcomeKind.Missing, (await backups.CreateAsync(id, TestShop.Cancel)).Kind);
        Assert.Empty(backups.List());
    }

    [Fact]
    public async Task A_piece_that_was_begun_is_found_though_its_design_is_gone()
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        var designs = given.Shop.Get<IDesignService>();
        var document = (await designs.GetAsync("bookcase", TestShop.Cancel))!.Document;
        var own = (await designs.SaveAsync(document, CommandId.New(), TestShop.Cancel)).Value!;
        var ideas = given.Shop.Get<IIdeaService>();
        var begun = await ideas.BeginAsync(own.Key, "", id, TestShop.Cancel);
        await designs.RemoveAsync(own.OwnId!.Value, TestShop.Cancel);
        Assert.Equal(begun.Value, (await ideas.BeginAsync(own.Key, "", id, TestShop.Cancel)).Value);
    }

    // The first run put the replaced plan away and took its promises: asking anew would be refused or plan again.
    [Fact]
    public async Task Planning_again_sent_twice_answers_with_the_run_that_ended()
    {
        await using var given = await PlannedShop.OpenAsync(folder);
        await given.OffcutAsync("41 3/8");
        var order = given.Order(replaces: (await given.PlanAsync()).Summary.Id);
        var job = (await given.Shop.Plans.StartAsync(order, id, TestShop.Cancel)).Value!.Id;
        var ended = await given.EndOfAsync(job);
        Assert.Equal(PlanJobState.Done, ended.State);
        Assert.Equal(ended, (await given.Shop.Plans.StartAsync(order, id, TestShop.Cancel)).Value);
        Assert.Single(await given.Shop.Plans.ListAsync(cancel: TestShop.Cancel));
        Assert.Equal(2, given.Planner.Runs);
    }

    [Fact]
    public async Task A_run_that_died_with_the_program_is_answered_as_stopped()
    {
        Guid job;
        PlanOrder order;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            order = given.Order();
            job = (await given.Shop.Plans.StartAsync(order, id, TestShop.Cancel)).Value!.Id;
            await given.EndOfAsync(job);
            given.Shop.Ask($"UPDATE PlanJobs SET State = {(int)PlanJobState.Waiting}, PlanId = NULL");
        }

        await using var again = await TestShop.OpenAsync(folder: folder);
        var answer = (await again.Plans.StartAsync(order, id, TestShop.Cancel)).Value!;
        Assert.Equal((job, PlanJobState.Stopped), (answer.Id, answer.State));
    }

    [Theory]
    [InlineData(89, 1)]
    [InlineData(91, 0)]
    public async Task A_command_is_forgotten_at_the_first_start_after_90_days(int days, int known)
    {
        await using (var shop = await TestShop.OpenAsync(folder: folder))
            Assert.True((await shop.Projects.CreateAsync("Gate", Some.Inch, id, TestShop.Cancel)).Ok);
        var later = new FakeTimeProvider(Day.AddDays(days));
        await using var opened = await TestShop.OpenAsync(
            folder: folder,
            change: services => services.AddSingleton<TimeProvider>(later)
        );
        Assert.Equal(known, opened.CountRows()["Commands"]);
    }

    private Task<Outcome<IReadOnlyList<Services.Stock.StockPiece>>> AddAsync(TestShop shop) =>
        shop.Stock.AddAsync(Some.Offcut("20", quantity: "2"), Some.Inch, Some.Device, id, TestShop.Cancel);
}
