using System.Diagnostics;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Search;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Trash;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Services.Tests.Search;

/// <summary>One field finds anything in the shop.</summary>
public sealed class SearchTests : IAsyncLifetime
{
    private PlannedShop given = null!;

    private TestShop Shop => given.Shop;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("33 1/2");
        var sheet = new StockAddition(StockPlace.Rack, Some.Birch, "96", "48", "1", "faces down");
        Assert.True((await Shop.Stock.AddAsync(sheet, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        await Shop.Parts.SaveAsync(
            given.Project.Id,
            [Some.New(Some.Part("27", "C", "2", Some.Birch, "11 1/4") with { Name = "Seat", Note = "good face up" })],
            TestShop.Cancel
        );
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Theory]
    [InlineData("boot", SearchKind.Project, "Boot-room bench")]
    [InlineData("BENCH room", SearchKind.Project, "Boot-room bench")]
    [InlineData("bb", SearchKind.Project, "Boot-room bench")]
    [InlineData("seat", SearchKind.Part, "C Seat")]
    [InlineData("c2", SearchKind.Part, "C Seat")]
    [InlineData("bb c", SearchKind.Part, "C Seat")]
    [InlineData("good face", SearchKind.Part, "C Seat")]
    [InlineData("27 birch", SearchKind.Part, "C Seat")]
    [InlineData("27 x 11 1/4", SearchKind.Part, "C Seat")]
    [InlineData("B1", SearchKind.Piece, "B1")]
    [InlineData("33 1/2", SearchKind.Piece, "B1")]
    [InlineData("33½", SearchKind.Piece, "B1")]
    [InlineData("33.5\" pine", SearchKind.Piece, "B1")]
    [InlineData("850.9 mm", SearchKind.Piece, "B1")]
    [InlineData("faces down", SearchKind.Piece, "R1")]
    [InlineData("4x8 3/4 ply", SearchKind.Piece, "R1")]
    [InlineData("8 ft x 4 ft", SearchKind.Piece, "R1")]
    [InlineData("4x8 3/4 ply", SearchKind.Material, "Birch plywood 3/4 in")]
    [InlineData("1x3 pi", SearchKind.Material, "Pine 1x3")]
    [InlineData("1×3 pine", SearchKind.Material, "Pine 1x3")]
    [InlineData("3/4 birch", SearchKind.Material, "Birch plywood 3/4 in")]
    [InlineData("spf 2x4", SearchKind.Material, "Whitewood 2x4")]
    [InlineData("corner", SearchKind.Store, "Corner lumber")]
    [InlineData("bookc", SearchKind.Design, "Bookcase")]
    [InlineData("sag", SearchKind.Calculator, "Shelf sag")]
    public async Task What_is_typed_finds_it_first(string text, SearchKind kind, string title) =>
        Assert.Equal(title, (await FindAsync(text, kind)).Select(hit => hit.Title).FirstOrDefault());

    [Fact]
    public async Task Accents_and_capitals_do_not_matter()
    {
        await Some.ProjectAsync(Shop, "Étagère Björn");
        Assert.Equal("Étagère Björn", Assert.Single(await FindAsync("ETAGERE bjorn", SearchKind.Project)).Title);
        Assert.Single(await FindAsync("étagère", SearchKind.Project));
    }

    [Fact]
    public async Task A_plan_is_found_by_its_short_id_and_by_its_project()
    {
        var plan = (await given.PlanAsync()).Summary;
        var hit = Assert.Single(await FindAsync(plan.ShortId, SearchKind.Plan));
        Assert.Equal((plan.Id, PlanState.Ready), (hit.Id, hit.Plan!.State));
        Assert.Equal(plan.Id, Assert.Single(await FindAsync("boot", SearchKind.Plan)).Id);
    }

    [Fact]
    public async Task A_saved_figure_is_found_by_its_project_and_its_result()
    {
        var figures = new Dictionary<string, string>
        {
            ["span"] = "32 1/2",
            ["member"] = "2 1/2",
            ["count"] = "5",
        };
        await Shop.Get<IWorkingService>()
            .KeepAsync(given.Project.Id, "spacing", figures, Some.Inch, CommandId.New(), TestShop.Cancel);
        Assert.Equal(given.Project.Id, Assert.Single(await FindAsync("spacing boot", SearchKind.Figure)).Id);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("no such thing")]
    [InlineData("33 3/4 pine 1x3 tag")]
    public async Task What_is_not_there_is_not_found(string text) =>
        Assert.Empty(await Shop.Get<ISearchService>().FindAsync(text, 5, TestShop.Cancel));

    [Fact]
    public async Task What_was_just_written_is_found_and_what_was_deleted_is_not()
    {
        Assert.Empty(await FindAsync("gate", SearchKind.Project));
        var gate = await Some.ProjectAsync(Shop, "Garden gate");
        Assert.Equal(gate.Id, Assert.Single(await FindAsync("gate", SearchKind.Project)).Id);
        await Shop.Get<ITrashService>().DeleteAsync(gate.Id, TestShop.Cancel);
        Assert.Empty(await FindAsync("gate", SearchKind.Project));
    }

    [Fact]
    public async Task The_best_come_first_and_the_others_are_counted()
    {
        for (var i = 0; i < 8; i++)
            await given.OffcutAsync("20");
        var group = Assert.Single(await Shop.Get<ISearchService>().FindAsync("20 1x3", 3, TestShop.Cancel));
        Assert.Equal((SearchKind.Piece, 3, 5), (group.Kind, group.Hits.Length, group.More));
        Assert.Equal("B1", (await FindAsync("b1", SearchKind.Piece))[0].Title);
    }

    // Odd texts are no reason to fail, and none takes long.
    [Theory]
    [InlineData("\"")]
    [InlineData("''")]
    [InlineData("1/0")]
    [InlineData("x")]
    [InlineData("4x")]
    [InlineData("%_' OR 1=1")]
    [InlineData("👍 \uD800")]
    [InlineData("1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1x")]
    public async Task Odd_texts_are_looked_for_like_others(string text)
    {
        var watch = Stopwatch.StartNew();
        await Shop.Get<ISearchService>().FindAsync(text, 5, TestShop.Cancel);
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(5));
    }

    private async Task<IReadOnlyList<SearchHit>> FindAsync(string text, SearchKind kind)
    {
        var groups = await Shop.Get<ISearchService>().FindAsync(text, 5, TestShop.Cancel);
        return groups.FirstOrDefault(group => group.Kind == kind)?.Hits ?? [];
    }
}
