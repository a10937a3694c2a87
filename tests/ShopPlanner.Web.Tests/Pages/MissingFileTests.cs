using System.Net;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Web.Tests.Pages;

/// <summary>Files asked for by addresses that lead to none.</summary>
public sealed class MissingFileTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly string[] Files =
    [
        "/plans/{0}/packet.pdf",
        "/plans/{0}/packet.pdf?paper=a4",
        "/plans/{0}/packet.pdf?paper=&paper=%00",
        "/plans/{0}/plan.json",
        "/plans/{0}/request.json",
        "/paper/labels.pdf?plan={0}&sheet=a4-21",
        "/paper/labels.pdf?project={0}&sheet=a4-21",
        "/paper/templates/{0}/templates.pdf?paper=a4",
        "/stores/{0}/prices.csv",
        "/projects/{0}/idea/design.json",
        "/projects/{0}/idea/scene.gltf",
        "/projects/{0}/idea/parts.csv",
        "/projects/{0}/idea/outline/A.svg",
    ];

    private static readonly string[] OddIds =
    [
        "00000000-0000-0000-0000-000000000000",
        "018f3c5e-0000-7000-8000-00000000abcd",
        "018f3c5e",
        "x",
        "-1",
        "%F0%9F%AA%9A",
        "99999999999999999999",
        new('a', 1500),
    ];

    [Fact]
    public async Task A_file_of_nothing_is_not_found_in_our_own_page()
    {
        foreach (var file in Files)
        foreach (var id in OddIds)
            await CheckAsync(file.Replace("{0}", id, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_a_shop_does_not_have_is_not_found_either()
    {
        var cancel = TestContext.Current.CancellationToken;
        var project = (await web.Service<IProjectService>().ListAsync(cancel: cancel))[0].Id;
        var (store, plan) = ((await web.Service<IStoreService>().ListAsync(cancel))[0].Id, await Planned.OneAsync(web));
        foreach (
            var address in new[]
            {
                $"/plans/{plan}/packet.exe",
                $"/plans/{plan}/plan.json/more",
                $"/plans/{store}/plan.json",
                $"/stores/{plan}/prices.csv",
                $"/stores/{store}/prices.xls",
                $"/projects/{project}/idea/outline/nothing.svg",
                $"/projects/{project}/idea/outline/..%2f..%2fshop.db",
            }
        )
            await CheckAsync(address);
    }

    [Theory]
    [InlineData("packet.pdf")]
    [InlineData("plan.json")]
    [InlineData("request.json")]
    public async Task A_plan_that_was_withdrawn_gives_no_packet_but_its_documents(string file)
    {
        var cancel = TestContext.Current.CancellationToken;
        var plan = await Planned.MakeAsync(web);
        Assert.True((await web.Service<IPlanService>().WithdrawAsync(plan, cancel)).Ok);
        if (file == "packet.pdf")
            await CheckAsync($"/plans/{plan}/{file}");
        else
            Assert.Equal(HttpStatusCode.OK, (await web.Client.GetAsync($"/plans/{plan}/{file}", cancel)).StatusCode);
    }

    private async Task CheckAsync(string address)
    {
        using var answer = await web.Client.GetAsync(address, TestContext.Current.CancellationToken);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == HttpStatusCode.NotFound, $"{address} answered {answer.StatusCode}");
        Assert.True(page.Contains("There is nothing at this address", StringComparison.Ordinal), $"{address}: {page}");
    }
}
