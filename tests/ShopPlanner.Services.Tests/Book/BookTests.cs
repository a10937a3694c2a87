using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Book;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Tests.Buying;

namespace ShopPlanner.Services.Tests.Book;

/// <summary>The shop's book. Each total is checked against a sum that the database makes of its own tables.</summary>
public sealed class BookTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private Guid stand;

    private TestShop Shop => given.Shop;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        stand = (await Some.ProjectAsync(Shop, "Plant stand")).Id;
        await Shop.Parts.SaveAsync(stand, [Some.New(Some.Part("60", "A", "1"))], TestShop.Cancel);
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task An_empty_shop_has_an_empty_book()
    {
        var book = await BookAsync();
        Assert.Empty(book.Entries);
        Assert.Empty(book.Offcuts);
        Assert.Equal((6.48m, false), book.Prices.Select(one => (one.Price.Amount, one.WasPaid)).Single());
    }

    // First fit puts three legs on the first board and the 60 in on a second.
    [Fact]
    public async Task Totals_are_the_sums_of_the_tables()
    {
        await CutAllAsync(await PlanBothAsync());
        await Shop.Stock.AddAsync(
            new(StockPlace.Rack, Some.Pine, "48", "", "2", ""),
            Some.Inch,
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        var book = await BookAsync();
        Assert.Equal(Money("SELECT SUM(Price) FROM Purchases WHERE Standing = 1"), BookTotals.Money(book.Entries));
        Assert.Equal(Wood("Kind = 0"), Sum(book, BookFigure.Bought));
        Assert.Equal(Wood("Kind = 2"), Sum(book, BookFigure.Kept));
        Assert.Equal(Wood("Kind = 4"), Sum(book, BookFigure.Used) + Sum(book, BookFigure.Kept) + Sum(book, BookFigure.Wasted));
        // Three legs of 30 in and one of 60 in, 2 1/2 in wide.
        Assert.Equal(150 * 2.5m / 144, Math.Round(Sum(book, BookFigure.Used).ToSquareFeet(), 10), 8);
        Assert.All(book.Entries, entry => Assert.Equal(new DateOnly(2026, 5, 2), entry.Day));
    }

    [Fact]
    public async Task A_plan_s_projects_share_what_it_costs_to_the_cent()
    {
        await CutAllAsync(await PlanBothAsync());
        var groups = BookTotals.By((await BookAsync()).Entries, BookBy.Project);
        Assert.Equal(["Boot-room bench", "Plant stand"], groups.Select(group => group.Label));
        // By first fit one stock holds 90 in of legs and 60 in of the stand: 3/5 and 2/5 of 12.96.
        Assert.Equal([7.78m, 5.18m], groups.Select(group => group.Spent.Amount));
        Assert.Equal([90 * 2.5m, 60 * 2.5m], groups.Select(group => Inches(group.Wood(BookFigure.Used))));
    }

    [Fact]
    public async Task What_is_taken_back_is_not_in_the_book()
    {
        var plan = await PlanBothAsync();
        var buying = Shop.Get<IBuyingService>();
        var line = plan.Plan.Buy.Single().Stock;
        await buying.BuyAsync(
            plan.Summary.Id,
            new PiecesBought(line, [1, 2], "7.10"),
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Equal(14.20m, BookTotals.Money((await BookAsync()).Entries).Amount);
        await buying.ReturnAsync(plan.Summary.Id, new PiecesReturned(line, [2]), Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal(7.10m, BookTotals.Money((await BookAsync()).Entries).Amount);
        Assert.Equal(96 * 2.5m, Inches(Sum(await BookAsync(), BookFigure.Bought)));
        await CutAllAsync(plan);
        await Shop.Bench.ReopenAsync(plan.Summary.Id, 0, 1, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal(60 * 2.5m, Inches(Sum(await BookAsync(), BookFigure.Used)));
    }

    [Fact]
    public async Task Lines_open_what_they_are_about_and_add_up_by_store_and_month()
    {
        await CutAllAsync(await PlanBothAsync());
        Shop.Clock.Advance(TimeSpan.FromDays(40));
        await given.OffcutAsync("41 3/8");
        var book = await BookAsync();
        Assert.All(book.Entries, entry => Assert.NotNull(entry.Piece));
        Assert.Equal(["Corner lumber"], BookTotals.By(book.Entries, BookBy.Store).Select(group => group.Label));
        Assert.Equal(["2026-05"], BookTotals.By(book.Entries, BookBy.Month).Select(group => group.Key));
        Assert.Equal(40, book.Offcuts[0].Days);
        Assert.Equal(0, book.Offcuts[^1].Days);
        Assert.Contains(book.Prices, price => price is { WasPaid: true, Store: "Corner lumber" } && price.Price.Amount == 6.48m);
    }

    [Fact]
    public async Task Logged_time_stands_by_project_and_month_and_in_the_file()
    {
        var work = Shop.Get<IWorkService>();
        await work.AddCuttingTimeAsync(stand, "50", 0, CommandId.New(), TestShop.Cancel);
        Shop.Clock.Advance(TimeSpan.FromDays(40));
        await work.AddCuttingTimeAsync(stand, "1:10", 0, CommandId.New(), TestShop.Cancel);
        await work.AddCuttingTimeAsync(given.Project.Id, "30", 0, CommandId.New(), TestShop.Cancel);
        var entries = (await BookAsync()).Entries;
        Assert.Equal(
            [("Boot-room bench", 30), ("Plant stand", 120)],
            BookTotals.By(entries, BookBy.Project).Select(group => (group.Label, group.Minutes))
        );
        Assert.Equal(
            [("2026-06", 100), ("2026-05", 50)],
            BookTotals.By(entries, BookBy.Month).Select(group => (group.Key, group.Minutes))
        );
        Assert.Empty(BookTotals.By(entries, BookBy.Store));
        var file = await Shop.Get<IBookService>().ExportCsvAsync(TestShop.Cancel);
        Assert.Contains("2026-05-02,time at work,Plant stand,,,Cut the parts,,,50", file, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_file_says_the_same()
    {
        await CutAllAsync(await PlanBothAsync());
        var lines = (await Shop.Get<IBookService>().ExportCsvAsync(TestShop.Cancel)).Split(
            "\r\n",
            StringSplitOptions.RemoveEmptyEntries
        );
        Assert.Equal("Date,Entry,Project,Store,Material,What,Money,Sq ft,Minutes", lines[0]);
        var book = await BookAsync();
        Assert.Equal(book.Entries.Length + 1, lines.Length);
        Assert.Equal(
            BookTotals.Money(book.Entries).Amount,
            lines.Skip(1).Where(line => line.Contains("money spent")).Sum(line => Number(line.Split(',')[^3]))
        );
    }

    private Task<ShopBook> BookAsync() => Shop.Get<IBookService>().GetAsync(TestShop.Cancel);

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);

    private static Area Sum(ShopBook book, BookFigure figure) =>
        BookTotals.Wood(book.Entries.Where(entry => entry.Figure == figure));

    private static decimal Inches(Area area) => Math.Round(area.ToSquareFeet() * 144, 6);

    private Money Money(string sql) => Core.Measures.Money.FromCount(long.Parse(Shop.Ask(sql), CultureInfo.InvariantCulture));

    // Of lines that nothing took back, by the database alone.
    private Area Wood(string which) =>
        Area.FromSquareTicks(
            Int128.Parse(
                Shop.Ask(
                    "SELECT COALESCE(SUM(Length * Width), 0) FROM StockLedger e WHERE "
                        + which
                        + " AND NOT EXISTS (SELECT 1 FROM StockLedger u WHERE u.Undoes = e.Id)"
                ),
                CultureInfo.InvariantCulture
            )
        );

    private Task<PlanView> PlanBothAsync() => given.PlanAsync(given.Order() with { Projects = [given.Project.Id, stand] });

    private async Task CutAllAsync(PlanView plan)
    {
        foreach (var number in Enumerable.Range(1, plan.Summary.Stocks))
            BuyingShop.Sure(await BuyingShop.FinishAsync(Shop, plan.Summary.Id, number, true, number == 2 ? ["35"] : []));
    }
}
