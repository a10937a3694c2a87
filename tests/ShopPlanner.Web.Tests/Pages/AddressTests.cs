using System.Net;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Shared;
using ShopPlanner.Web.Tests.Security;

namespace ShopPlanner.Web.Tests.Pages;

public sealed class AddressTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    [Fact]
    public async Task A_price_list_is_a_table_to_save()
    {
        var store = (await web.Service<IStoreService>().ListAsync(TestContext.Current.CancellationToken))[0];
        var answer = await web.Client.GetAsync(Links.PriceCsv(store.Id), TestContext.Current.CancellationToken);
        Assert.Equal("text/csv", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition?.DispositionType);
        Assert.StartsWith(
            "material,",
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.OrdinalIgnoreCase
        );
    }

    [Fact]
    public async Task What_is_not_there_is_not_found()
    {
        foreach (
            var address in new[]
            {
                Links.Packet(Guid.NewGuid(), PaperSize.A4),
                Links.PlanDocument(Guid.NewGuid(), true),
                Links.PriceCsv(Guid.NewGuid()),
                Links.Plan(Guid.NewGuid()),
                Links.Plan(await Planned.OneAsync(web), "x"),
                Links.Store(Guid.NewGuid()),
                Links.Parts(Guid.NewGuid()),
                Links.StockPiece(Guid.NewGuid()),
                Links.BenchPlan(Guid.NewGuid()),
            }
        )
            Assert.Equal(
                HttpStatusCode.NotFound,
                (await web.Client.GetAsync(address, TestContext.Current.CancellationToken)).StatusCode
            );
    }

    [Fact]
    public async Task An_unknown_address_says_so_in_our_own_page() =>
        Assert.Contains(
            "There is nothing at this address",
            await web.Client.GetStringAsyncAnyStatus("/nowhere"),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("/projects?put-away=perhaps")]
    [InlineData("/projects?new=1e9")]
    [InlineData("/plans?withdrawn=")]
    [InlineData("/plans/new?replaces=zzz&projects=a,b")]
    [InlineData("/designs?project=abc")]
    public async Task What_cannot_be_read_behind_the_question_mark_leaves_the_page_standing(string address)
    {
        var page = await web.Client.GetStringAsync(address, TestContext.Current.CancellationToken);
        Assert.Contains("<h1", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Something went wrong", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_to_begin_with_that_is_no_number_is_the_first()
    {
        var project = (
            await web.Service<ShopPlanner.Services.Projects.IProjectService>()
                .ListAsync(cancel: TestContext.Current.CancellationToken)
        )[0];
        foreach (var from in new[] { "abc", "-1", "99999999999999" })
        {
            var page = await web.Client.GetStringAsync(
                $"/projects/{project.Id}/parts?from={from}",
                TestContext.Current.CancellationToken
            );
            Assert.Contains("Length, row 1", page, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("Hall bookcase", "hall-bookcase.pdf")]
    [InlineData("../../etc/passwd", "etc-passwd.pdf")]
    [InlineData("\u202Egnp.exe\r\nSet-Cookie: a", "gnp-exe-set-cookie-a.pdf")]
    [InlineData("★★★", "shop-planner.pdf")]
    public void File_names_hold_only_what_every_system_can_store(string name, string expected) =>
        Assert.Equal(expected, Download.FileName(name, "pdf"));
}
