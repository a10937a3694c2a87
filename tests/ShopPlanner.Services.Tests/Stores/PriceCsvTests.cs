using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests.Stores;

public sealed class PriceCsvTests : IAsyncLifetime
{
    private const string Heading = "material,length,width,price,in stock\r\n";

    private TestShop shop = null!;
    private StoreView store = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        store = await Some.StoreAsync(shop);
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_list_goes_out_and_comes_in_the_same()
    {
        await ImportAsync(Heading + "pine-1x3,8 ft,,6.48,yes\r\n\"Birch plywood 3/4 in\",96,48,64,no\r\n");
        var before = (await shop.Stores.GetAsync(store.Id, TestShop.Cancel))!.Prices;
        var csv = (await shop.Stores.ExportCsvAsync(store.Id, TestShop.Cancel))!;
        Assert.Equal(
            "material,length (in),width (in),price,in stock,price checked\r\n"
                + "Pine 1x3,96,2 1/2,6.48,yes,2026-05-02\r\nBirch plywood 3/4 in,96,48,64.00,no,2026-05-02\r\n",
            csv
        );
        await ImportAsync(csv);
        var after = (await shop.Stores.GetAsync(store.Id, TestShop.Cancel))!.Prices;
        Assert.Equal(before.Select(row => row with { Version = 0 }), after.Select(row => row with { Version = 0 }));
    }

    [Fact]
    public async Task An_import_updates_sizes_that_are_there_and_adds_the_others()
    {
        await ImportAsync(Heading + "pine-1x3,96,,6.48,yes");
        var view = await ImportAsync("PRICE,Length,Material\n6.98,8 ft,Pine 1x3\n9.10,12 ft,Pine 1x3\n");
        Assert.Equal([Money.From(6.98m), Money.From(9.10m)], view.Prices.Select(row => row.Price));
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@SUM(A1)")]
    public async Task A_name_that_looks_like_a_formula_is_text_and_goes_out_with_a_quote(string name)
    {
        await shop.Materials.SaveAsync(new(null, name, StockForm.Board, "3/4", "2"), Some.Inch, CommandId.New(), TestShop.Cancel);
        await ImportAsync(Heading + $"{name},96,,1,yes");
        var csv = (await shop.Stores.ExportCsvAsync(store.Id, TestShop.Cancel))!;
        Assert.Contains("'" + name, csv);
        Assert.DoesNotContain("\n" + name, csv);
        Assert.Single((await ImportAsync(csv)).Prices);
    }

    [Fact]
    public async Task Every_wrong_cell_is_named_by_line_and_column_and_no_line_is_taken()
    {
        var rows = shop.CountRows();
        var outcome = await TryAsync(Heading + "pine-1x3,96,,6.48,yes\npine-1x3,NaN,,6.48,yes\nnothing,96,,free,perhaps\n");
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Equal(
            ["line 3, length", "line 4, in stock", "line 4, material", "line 4, price"],
            outcome.Faults.Select(fault => fault.Field)
        );
        Assert.Equal(rows, shop.CountRows());
    }

    [Theory]
    [InlineData("material,length,price\npine-1x3,96,1\npine-1x3,8 ft,2\n", "twice")]
    [InlineData("material,length,length,price\npine-1x3,96,96,1\n", "two columns")]
    [InlineData("material,length\npine-1x3,96\n", "no column 'price'")]
    [InlineData("material,length,price\npine-1x3,96,1\nmaterial,length,price\n", "materials list")]
    [InlineData("material,length,price\n\"pine-1x3,96,1\npine-1x4,96,1\n", "never closed")]
    [InlineData("material,length,price\npine-1x3,9\06,1\n", "isn't text")]
    [InlineData("material,length,price\npine-1x3,96,1,000\n", "cell too many")]
    [InlineData("material,length,price\npine-1x3,96,\"1,038.98\"\n", "write 1038.98")]
    [InlineData("material,length,price\npine-1x3,96,1,038.98\n", "Write prices without commas, like 1038.98")]
    [InlineData("", "is empty")]
    public async Task What_is_no_price_list_is_refused_whole(string csv, string said)
    {
        var rows = shop.CountRows();
        var outcome = await TryAsync(csv);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Contains(said, string.Join('\n', outcome.Faults));
        Assert.Equal(rows, shop.CountRows());
    }

    public static TheoryData<string, byte[]> Encodings() =>
        new()
        {
            {
                "UTF-8 with mark",
                [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes("material,length,price\npine-1x3,96,1\n")]
            },
            {
                "UTF-16",
                [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes("material,length,price\r\npine-1x3,96,1\r\n")]
            },
            { "old line ends", Encoding.UTF8.GetBytes("material,length,price\rpine-1x3,96,1\r") },
            { "mixed line ends", Encoding.UTF8.GetBytes("material,length,price\r\n\r\npine-1x3,96,1\n\r") },
        };

    [Theory]
    [MemberData(nameof(Encodings))]
    public async Task Files_of_any_spreadsheet_are_read(string what, byte[] csv) =>
        Assert.True(
            (
                await shop.Stores.ImportCsvAsync(
                    store.Id,
                    new MemoryStream(csv),
                    TableChoices.Guess,
                    CommandId.New(),
                    TestShop.Cancel
                )
            ).Ok,
            what
        );

    [Fact]
    public async Task Bytes_that_are_no_text_are_refused() =>
        Assert.Equal(
            "file",
            (
                await shop.Stores.ImportCsvAsync(
                    store.Id,
                    new MemoryStream([0x6d, 0xff, 0xfe, 0x80]),
                    TableChoices.Guess,
                    CommandId.New(),
                    TestShop.Cancel
                )
            )
                .Faults.Single()
                .Field
        );

    [Fact]
    public async Task Too_much_is_refused_while_reading()
    {
        var lines = Heading + string.Concat(Enumerable.Range(1, 20_001).Select(i => $"pine-1x3,{i},,1,yes\n"));
        Assert.Contains("more than", (await TryAsync(lines)).Faults.Single().Message);
        Assert.Contains(
            "5 MB",
            (
                await shop.Stores.ImportCsvAsync(
                    store.Id,
                    new EndlessStream(),
                    TableChoices.Guess,
                    CommandId.New(),
                    TestShop.Cancel
                )
            )
                .Faults.Single()
                .Message
        );
        Assert.Contains("cells", (await TryAsync(string.Join(',', Enumerable.Repeat("x", 10_000)))).Faults.Single().Message);
    }

    private async Task<StoreView> ImportAsync(string csv)
    {
        var outcome = await TryAsync(csv);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private Task<Outcome<StoreView>> TryAsync(string csv) =>
        shop.Stores.ImportCsvAsync(
            store.Id,
            new MemoryStream(Encoding.UTF8.GetBytes(csv)),
            TableChoices.Guess,
            CommandId.New(),
            TestShop.Cancel
        );
}
