using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests.Stores;

/// <summary>How a price list was read is told before anything is stored, and can be said otherwise.</summary>
public sealed class PriceTableTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private StoreView store = null!;

    private static CancellationToken Cancel => TestShop.Cancel;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        store = await Some.StoreAsync(shop, Some.Price("96", "6.48"));
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Theory]
    [InlineData("material,length,price\npine-1x3,96,6.48\n", ',', false, LengthUnit.Inch)]
    [InlineData("Material;Length;Price\npine-1x3;2438,4;6,48\n", ';', true, LengthUnit.Millimetre)]
    [InlineData("material\tlength\tprice\npine-1x3\t95 1/2\t6.48\n", '\t', false, LengthUnit.Inch)]
    [InlineData("sep=;\nmaterial;length;price\npine-1x3;96;6,48\n", ';', true, LengthUnit.Inch)]
    [InlineData("material,length (mm),price\npine-1x3,2440,6.48\n", ',', false, LengthUnit.Inch)]
    public async Task What_stands_between_cells_the_decimal_mark_and_the_unit_are_found_out(
        string csv,
        char separator,
        bool comma,
        LengthUnit unit
    )
    {
        var preview = await PreviewAsync(csv);
        Assert.Empty(preview.Faults);
        Assert.Equal(new TableFormat(separator, comma, unit), preview.Format);
        Assert.Equal(Money.From(6.48m), Assert.Single(preview.Rows).Price);
    }

    [Fact]
    public async Task What_a_person_says_wins()
    {
        var bytes = Encoding.UTF8.GetBytes("material,length,price\npine-1x3,96,6.48\n");
        var said = new TableFile(bytes) { Choices = new() { Unit = LengthUnit.Millimetre } };
        var read = (await shop.Stores.PreviewCsvAsync(store.Id, said, Cancel)).Value!;
        Assert.Equal(Length.FromMillimetres(96), Assert.Single(read.Rows).Length);
        using var stream = new MemoryStream(bytes);
        var taken = await shop.Stores.ImportCsvAsync(store.Id, stream, said.Choices, CommandId.New(), Cancel);
        Assert.Contains(taken.Value!.Prices, price => price.Length == Length.FromMillimetres(96));
    }

    [Fact]
    public async Task A_new_price_stands_beside_the_one_on_the_list()
    {
        var preview = await PreviewAsync("material,length,price,shelf\npine-1x3,96,6.98,7\npine-1x3,72,5.10,7\n");
        Assert.Equal([Money.From(6.48m), null], preview.Rows.Select(row => row.Before));
        Assert.Equal(["shelf"], preview.Unused);
        Assert.Equal(Money.From(6.48m), Assert.Single((await shop.Stores.GetAsync(store.Id, Cancel))!.Prices).Price);
    }

    [Fact]
    public async Task Wrong_cells_are_told_by_line_and_column_beside_the_right_ones()
    {
        var preview = await PreviewAsync("material,length,price,price checked\npine-1x3,96,6.98,\npine-1x3,x,free,May\n");
        Assert.Single(preview.Rows);
        Assert.Equal(
            ["line 3, length", "line 3, price", "line 3, price checked"],
            preview.Faults.Select(fault => fault.Field).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public async Task The_day_a_price_was_checked_comes_back()
    {
        await ImportAsync("material,length,price,price checked\npine-1x3,72,5.10,2026-01-31\n");
        var csv = (await shop.Stores.ExportCsvAsync(store.Id, Cancel))!;
        await ImportAsync(csv);
        Assert.Equal(
            [new DateOnly(2026, 1, 31), new DateOnly(2026, 5, 2)],
            (await shop.Stores.GetAsync(store.Id, Cancel))!.Prices.Select(price => price.Seen)
        );
    }

    [Fact]
    public async Task A_list_of_a_metric_store_comes_into_one_in_inches_at_the_same_sizes()
    {
        var metric = await shop.Stores.CreateAsync("Metric lumber", LengthUnit.Millimetre, CommandId.New(), Cancel);
        var price = Some.Price("2440", "9", Some.Birch, "1220");
        await shop.Stores.SavePriceAsync(metric.Value!.Id, price, CommandId.New(), Cancel);
        await ImportAsync((await shop.Stores.ExportCsvAsync(metric.Value.Id, Cancel))!);
        var taken = (await shop.Stores.GetAsync(store.Id, Cancel))!.Prices.Single(one => one.MaterialId == Some.Birch);
        Assert.Equal((Length.FromMillimetres(2440), Length.FromMillimetres(1220)), (taken.Length, taken.Width));
    }

    private async Task<PricePreview> PreviewAsync(string csv) =>
        (await shop.Stores.PreviewCsvAsync(store.Id, Encoding.UTF8.GetBytes(csv), Cancel)).Value!;

    private async Task ImportAsync(string csv)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(csv));
        var outcome = await shop.Stores.ImportCsvAsync(store.Id, stream, TableChoices.Guess, CommandId.New(), Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
    }
}
