using System.IO.Compression;
using System.Net;
using System.Text;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Web.Tests.Files;

/// <summary>What the shop gives as files.</summary>
public sealed class FileDownloadTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_whole_shop_is_one_zip_that_another_shop_reads()
    {
        var answer = await web.Client.GetAsync("/shop/archive.zip", Cancel);
        Assert.Equal("application/zip", answer.Content.Headers.ContentType!.MediaType);
        Assert.True(answer.Headers.CacheControl!.NoStore);
        var zip = await answer.Content.ReadAsByteArrayAsync(Cancel);
        var seen = await web.Service<IArchiveService>().PreviewAsync(zip, Cancel);
        Assert.True(seen.Ok, string.Join("; ", seen.Faults));
        Assert.NotNull(seen.Value.Hindrance);
        var projects = await web.Service<IProjectService>().ListAsync(true, Cancel);
        Assert.Equal(projects.Count, seen.Value.Counts.Single(one => one.Kind == "projects").Count);
    }

    [Fact]
    public async Task Rack_and_bin_are_a_table()
    {
        var csv = Encoding.UTF8.GetString(await web.Client.GetByteArrayAsync("/rack-and-bin/stock.csv", Cancel));
        Assert.StartsWith("\uFEFFtag,where,material,length (in)", csv, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_project_is_published_with_what_the_address_chooses()
    {
        var project = await ProjectAsync();
        var answer = await web.Client.GetAsync($"/projects/{project}/publish.zip?license=CC0-1.0&by=Ana", Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        using var zip = new ZipArchive(await answer.Content.ReadAsStreamAsync(Cancel));
        using var license = new StreamReader(zip.GetEntry("LICENSE.txt")!.Open());
        Assert.Contains("SPDX-License-Identifier: CC0-1.0", await license.ReadToEndAsync(Cancel), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/projects/00000000-0000-0000-0000-000000000001/publish.zip", HttpStatusCode.NotFound)]
    [InlineData("/designs/nothing/design.json", HttpStatusCode.NotFound)]
    public async Task What_is_not_there_is_not_found(string address, HttpStatusCode status) =>
        Assert.Equal(status, (await web.Client.GetAsync(address, Cancel)).StatusCode);

    [Fact]
    public async Task Photos_that_are_gone_and_a_project_without_a_design_are_told()
    {
        var project = await ProjectAsync();
        var gone = await web.Client.GetAsync($"/projects/{project}/publish.zip?photos={Guid.NewGuid()}", Cancel);
        Assert.Equal(HttpStatusCode.Gone, gone.StatusCode);
        var parts = await web.Service<IProjectService>()
            .CreateAsync("Parts", Core.Measures.LengthUnit.Inch, CommandId.New(), Cancel);
        var none = await web.Client.GetAsync($"/projects/{parts.Value!.Id}/publish.zip", Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, none.StatusCode);
    }

    [Fact]
    public async Task A_built_in_design_is_a_file_that_comes_in_again()
    {
        var json = await web.Client.GetByteArrayAsync("/designs/bookcase/design.json", Cancel);
        Assert.True((await web.Service<IDesignService>().ImportAsync(json, CommandId.New(), Cancel)).Ok);
    }

    private async Task<Guid> ProjectAsync() =>
        (await web.Service<IProjectService>().ListAsync(cancel: Cancel)).First(one => one.HasIdea).Id;
}
