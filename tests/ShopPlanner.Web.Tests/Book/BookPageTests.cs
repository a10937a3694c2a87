using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Web.Features.Book;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Book;

/// <summary>The shop's book on its page. Two legs of 30 in were cut from one board of 96 in × 2 1/2 at 6.48.</summary>
public sealed class BookPageTests : IAsyncLifetime
{
    private PlannedShop shop = null!;
    private BunitContext context = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await PlannedShop.OpenAsync();
        context = PageTest.For(shop);
        await shop.FinishAsync(await shop.PlanAsync());
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public void Figures_stand_by_project_with_their_total()
    {
        var page = Open(Links.Book("project"));
        page.WaitForAssertion(() => Assert.Equal("Boot-room bench", page.Find(".book tbody th").TextContent));
        Assert.Equal(
            ["$6.48", "1.7 sq ft", "1 sq ft", "", "0.6 sq ft", ""],
            page.FindAll(".book tbody tr:first-child td").Select(cell => cell.TextContent.Trim())
        );
        Assert.Equal("$6.48", page.Find(".book tfoot td").TextContent.Trim());
        Assert.NotEmpty(page.FindAll(".plot svg[role=img]"));
    }

    [Fact]
    public void Every_figure_opens_the_lines_that_it_is_made_of()
    {
        var page = Open(Links.Book("store"));
        var links = page.WaitForElements(".book tbody a, .book tfoot a").Select(link => link.GetAttribute("href")!).ToList();
        Assert.Equal(8, links.Count);
        foreach (var link in links)
        {
            var lines = Open(link);
            Assert.NotEmpty(lines.WaitForElements("#entries tbody tr a"));
        }
    }

    [Fact]
    public async Task Logged_time_stands_by_project_and_month_and_opens_its_lines()
    {
        var work = shop.Server.Get<IWorkService>();
        foreach (var took in new[] { "50", "1:30" })
            Assert.True((await work.AddCuttingTimeAsync(shop.Project.Id, took, 0, CommandId.New(), ShopServer.Cancel)).Ok);
        foreach (var by in new[] { "project", "month" })
        {
            var page = Open(Links.Book(by));
            var figure = page.WaitForElement(".book tbody a[aria-label^='Hours']");
            Assert.Equal("2 h 20 min", figure.TextContent);
            var lines = Open(figure.GetAttribute("href")!).WaitForElements("#entries tbody tr");
            Assert.Equal(["50 min", "1 h 30 min"], lines.Select(line => line.LastElementChild!.TextContent));
        }
    }

    [Theory]
    [InlineData("nothing", "nothing", "nothing")]
    [InlineData("project", "wasted", "00000000-0000-0000-0000-000000000000")]
    public void What_no_link_of_ours_says_shows_the_book(string by, string figure, string key)
    {
        var page = Open(Links.Book(by, figure, key));
        Assert.NotNull(page.WaitForElement(".book tfoot"));
        Assert.Empty(page.FindAll("#entries"));
    }

    private IRenderedComponent<BookPage> Open(string address)
    {
        context.Services.GetRequiredService<NavigationManager>().NavigateTo(address);
        return context.Render<BookPage>();
    }
}
