using System.Net;
using ShopPlanner.Services.Shop;
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
    [InlineData("Hall bookcase", "hall-bookcase.pdf")]
    [InlineData("../../etc/passwd", "etc-passwd.pdf")]
    [InlineData("\u202Egnp.exe\r\nSet-Cookie: a", "gnp-exe-set-cookie-a.pdf")]
    [InlineData("★★★", "shop-planner.pdf")]
    public void File_names_hold_only_what_every_system_can_store(string name, string expected) =>
        Assert.Equal(expected, Download.FileName(name, "pdf"));
}
