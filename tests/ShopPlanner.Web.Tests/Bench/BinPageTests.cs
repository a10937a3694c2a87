using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>The bin on a tablet, by plain forms.</summary>
public sealed class BinPageTests
{
    private const string Pine = "pine-1x3";

    [Fact]
    public async Task An_offcut_is_found_taken_put_back_shorter_and_all_of_it_undone()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await AddAsync(shop, "14", "20");
        using var browser = shop.Server.Browse();
        var found = Links.BenchBinOf(Pine, "15", "2", "3/4");
        var page = await browser.OpenAsync(found);
        Assert.Equal(["B2"], page.QuerySelectorAll(".bin-piece .tag").Select(tag => tag.TextContent));

        using var taken = await browser.SubmitAsync(page.FormOf("Take B2"));
        Assert.Equal(found + "#next", taken.Headers.Location!.OriginalString);
        var form = (await browser.OpenAsync(Links.BenchBin)).FormOf("Put B2 back");
        using var back = await browser.PostAsync(
            form.GetAttribute("action")!,
            PlainBrowser.FieldsOf(form).With(("Length-B2", "11 1/2"))
        );
        Assert.Equal(HttpStatusCode.SeeOther, back.StatusCode);
        Assert.Equal(Core.Measures.Length.FromInches(11, 1, 2), (await PieceAsync(shop, "B2")).Length);

        using var once = await browser.SubmitAsync((await browser.OpenAsync(Links.BenchBin)).FormOf("Undo: B2 Put back"));
        using var twice = await browser.SubmitAsync((await browser.OpenAsync(Links.BenchBin)).FormOf("Undo: B2 Taken out"));
        Assert.Equal((HttpStatusCode.SeeOther, HttpStatusCode.SeeOther), (once.StatusCode, twice.StatusCode));
        Assert.Equal(Core.Measures.Length.FromInches(20), (await PieceAsync(shop, "B2")).Length);
    }

    [Fact]
    public async Task Sent_twice_a_piece_is_thrown_away_once()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await AddAsync(shop, "14");
        using var browser = shop.Server.Browse();
        var form = (await browser.OpenAsync(Links.BenchBin)).FormOf("Throw B1 away");
        using var first = await browser.SubmitAsync(form);
        using var second = await browser.SubmitAsync(form);
        Assert.Equal((HttpStatusCode.SeeOther, HttpStatusCode.SeeOther), (first.StatusCode, second.StatusCode));
        Assert.Empty(await shop.StockAsync());
    }

    // Shown before another tablet measured the piece again.
    [Fact]
    public async Task An_old_page_is_told_what_stands_now()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await AddAsync(shop, "14");
        using var browser = shop.Server.Browse();
        var (take, measure) = (await browser.OpenAsync(Links.BenchBin)) is var page
            ? (page.FormOf("Take B1"), page.FormOf("Save the size of B1"))
            : default;
        using var measured = await browser.PostAsync(
            measure.GetAttribute("action")!,
            PlainBrowser.FieldsOf(measure).With(("Length-B1", "12"))
        );
        Assert.Equal(HttpStatusCode.SeeOther, measured.StatusCode);
        using var taken = await browser.SubmitAsync(take);
        Assert.Equal(HttpStatusCode.Conflict, taken.StatusCode);
        Assert.Contains("12″", (await PlainBrowser.ReadAsync(taken)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Single(await shop.StockAsync());
    }

    [Fact]
    public async Task A_size_that_cannot_be_read_is_told_beside_its_field()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var page = await browser.OpenAsync(Links.BenchBinOf(null, "long", null, null));
        var input = page.QuerySelectorAll<IHtmlInputElement>("input").Single(one => one.Name == "length");
        Assert.Equal(("long", "true"), (input.Value, input.GetAttribute("aria-invalid")));
    }

    private static async Task AddAsync(PlannedShop shop, params string[] lengths)
    {
        foreach (var length in lengths)
        {
            var offcut = new StockAddition(StockPlace.Bin, Pine, length, "", "1", "");
            var added = await shop
                .Server.Get<IStockService>()
                .AddAsync(offcut, LengthUnit.Inch, "test", CommandId.New(), ShopServer.Cancel);
            Assert.True(added.Ok);
        }
    }

    private static async Task<StockPiece> PieceAsync(PlannedShop shop, string tag) =>
        (await shop.StockAsync()).Single(piece => piece.Tag == tag);
}
