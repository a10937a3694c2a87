using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Setup;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Setup;

/// <summary>A store and offcuts typed in one form: all of it is kept, or nothing with a fault for each wrong line.</summary>
public sealed class SetupTests : IAsyncLifetime
{
    private TestShop shop = null!;

    private ISetupService Setup => shop.Get<ISetupService>();

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_store_is_added_with_all_its_prices()
    {
        var wanted = new FirstStore(
            "Corner lumber",
            Some.Inch,
            [Some.Price("6 ft", "4.50"), Some.Price("8 ft", "6"), Some.Price("96", "52", Some.Birch, "48")]
        );
        var store = (await Setup.AddStoreAsync(wanted, CommandId.New(), TestShop.Cancel)).Value!;
        Assert.Equal("Corner lumber", store.Name);
        Assert.Equal(["4.50", "52.00", "6.00"], store.Prices.Select(price => $"{price.Price}").Order(StringComparer.Ordinal));
        Assert.Equal(store.Prices, (await shop.Stores.GetAsync(store.Id, TestShop.Cancel))!.Prices);
    }

    [Fact]
    public async Task Each_wrong_price_is_named_by_its_line_and_no_store_is_added()
    {
        var rows = shop.CountRows();
        var wanted = new FirstStore(
            "Corner lumber",
            Some.Inch,
            [Some.Price("6 ft", "four"), Some.Price("8 ft", "6"), Some.Price("long", "5")]
        );
        var outcome = await Setup.AddStoreAsync(wanted, CommandId.New(), TestShop.Cancel);
        Assert.Equal(
            [(FirstStore.PriceField(0), "four"), (FirstStore.PriceField(2), "long")],
            outcome.Faults.Select(fault => (fault.Field, fault.Value))
        );
        Assert.Equal(rows, shop.CountRows());
    }

    [Theory]
    [InlineData("", "Name")]
    [InlineData("Corner lumber", "prices")]
    public async Task A_store_without_a_name_or_a_price_is_refused(string name, string field)
    {
        var rows = shop.CountRows();
        var outcome = await Setup.AddStoreAsync(new FirstStore(name, Some.Inch, []), CommandId.New(), TestShop.Cancel);
        Assert.Equal(field, Assert.Single(outcome.Faults).Field);
        Assert.Equal(rows, shop.CountRows());
    }

    [Theory]
    [InlineData("1x4 pine 33 1/2", "pine-1x4", "33 1/2", "3 1/2", "")]
    [InlineData("pine 1x4 33 1/2", "pine-1x4", "33 1/2", "3 1/2", "")]
    [InlineData("Pine 1×4 33 1/2, knot near one end", "pine-1x4", "33 1/2", "3 1/2", "knot near one end")]
    [InlineData("pine 1x4 33 1/2 x 2", "pine-1x4", "33 1/2", "2", "")]
    [InlineData("2x4 whitewood 850 mm", "whitewood-2x4", "850 mm", "3 1/2", "")]
    [InlineData("birch plywood 3/4 30 x 11 5/8", "birch-ply-3-4", "30", "11 5/8", "")]
    [InlineData("3/4 birch plywood 30x11 5/8", "birch-ply-3-4", "30", "11 5/8", "")]
    [InlineData("birch-ply-3-4 30\" × 11 5/8\"", "birch-ply-3-4", "30", "11 5/8", "")]
    public async Task An_offcut_is_read_from_one_line(string line, string material, string length, string width, string note)
    {
        var piece = Assert.Single((await AddAsync(line)).Value!);
        Assert.Equal(
            (material, Length(length), Length(width), note, StockPlace.Bin),
            (piece.MaterialId, piece.Length, piece.Width, piece.Note, piece.Place)
        );
    }

    [Fact]
    public async Task Several_lines_are_several_offcuts_each_with_a_tag()
    {
        var pieces = (await AddAsync("\n1x4 pine 33 1/2\r\n\n  1x3 pine 20  \n1x3 pine 20\n")).Value!;
        Assert.Equal(3, pieces.Select(piece => piece.Tag).Distinct().Count());
        Assert.Equal(3, (await shop.Stock.ListAsync(TestShop.Cancel)).Count);
    }

    [Theory]
    [InlineData("1x3 pine 20\nmahogany 30\n1x4 pine long", "line 2", "line 3, length")]
    [InlineData("33 1/2\n1x4 pine", "line 1", "line 2")]
    [InlineData("birch plywood 3/4 30\n1x3 pine 0\npine 1x3 20 x 4", "line 1, width", "line 2, length", "line 3, width")]
    [InlineData("birch plywood 3/4 30 x 20 x 1", "line 1, size")]
    [InlineData(" \n\n", "lines")]
    public async Task Each_wrong_line_is_named_and_nothing_goes_in_the_bin(string lines, params string[] fields)
    {
        var rows = shop.CountRows();
        Assert.Equal(fields, (await AddAsync(lines)).Faults.Select(fault => fault.Field));
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task Lines_are_read_as_they_would_be_added_and_nothing_is_stored()
    {
        var rows = shop.CountRows();
        var read = await Setup.PreviewOffcutsAsync(
            "1x4 pine 33 1/2, knot\n\nmahogany 30\nbirch plywood 3/4 30 x 11 5/8",
            Some.Inch,
            TestShop.Cancel
        );
        Assert.Equal(rows, shop.CountRows());
        Assert.Equal(
            [(1, "Pine 1x4", Length("33 1/2"), "knot"), (4, "Birch plywood 3/4 in", Length("30"), "")],
            read.Offcuts.Select(one => (one.Line, one.Material, one.Length, one.Note))
        );
        Assert.Equal("line 3", Assert.Single(read.Faults).Field);
    }

    [Fact]
    public async Task Too_many_lines_are_refused()
    {
        var outcome = await AddAsync(string.Concat(Enumerable.Repeat("1x3 pine 20\n", 201)));
        Assert.Equal(("lines", "201 lines"), (outcome.Faults.Single().Field, outcome.Faults.Single().Value));
    }

    private Task<Outcome<IReadOnlyList<StockPiece>>> AddAsync(string lines) =>
        Setup.AddOffcutsAsync(lines, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);

    private static Length Length(string text) => LengthText.Parse(text, Some.Inch).Value;
}
