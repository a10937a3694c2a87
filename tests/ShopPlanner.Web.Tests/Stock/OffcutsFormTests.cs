using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Setup;
using ShopPlanner.Services.Stock;
using ShopPlanner.Web.Features.Stock;
using ShopPlanner.Web.Frame;

namespace ShopPlanner.Web.Tests.Stock;

/// <summary>Several offcuts at once, one per line.</summary>
public sealed class OffcutsFormTests : PageContext, IAsyncLifetime
{
    private ShopServer server = default!;
    private IReadOnlyList<StockPiece> added = [];

    public async ValueTask InitializeAsync()
    {
        server = await ShopServer.OpenAsync();
        Services.AddSingleton(server.Get<ISetupService>());
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await server.DisposeAsync();
    }

    [Fact]
    public async Task Lines_are_shown_as_read_with_their_faults_before_anything_is_kept()
    {
        var form = Open();
        await Lines(form).TypedAsync("1x4 pine 33 1/2, knot\n\nnothing known 5\nbirch plywood 3/4 30 x 20");
        Assert.Equal(
            [("1", "33 ½″ × 3 ½″ Pine 1x4 knot"), ("4", "30″ × 20″ Birch plywood 3/4 in")],
            form.FindAll(".offcut-lines li").Select(line => (line.GetAttribute("value")!, Words(line.TextContent)))
        );
        Assert.Contains("Line 3: ‘nothing known 5’", form.Find(".faults").TextContent, StringComparison.Ordinal);
        Assert.Empty(await server.Get<IStockService>().ListAsync(ShopServer.Cancel));
    }

    [Fact]
    public async Task A_list_without_faults_goes_in_the_bin_whole()
    {
        var form = Open();
        await Lines(form).TypedAsync("1x4 pine 33 1/2\nmahogany 20");
        await form.Find("form").PressAsync();
        Assert.Empty(added);
        await Lines(form).TypedAsync("1x4 pine 33 1/2\n1x4 pine 20");
        await form.Find("form").PressAsync();
        Assert.Equal(["B1", "B2"], added.Select(piece => piece.Tag));
    }

    private static string Words(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static AngleSharp.Dom.IElement Lines(IRenderedComponent<OffcutsForm> form) => form.Find("textarea");

    private IRenderedComponent<OffcutsForm> Open() =>
        Render<OffcutsForm>(form =>
            form.Add(one => one.Name, OffcutsForm.FormName)
                .Add(one => one.Unit, LengthUnit.Inch)
                .Add(one => one.OnDone, pieces => added = pieces)
                .AddCascadingValue(new Visitor("test tablet", null))
        );
}
