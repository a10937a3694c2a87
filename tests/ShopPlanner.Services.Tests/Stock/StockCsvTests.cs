using System.Text;
using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Stock;

/// <summary>Rack and bin go out as a table and come into another shop the same.</summary>
public sealed class StockCsvTests : IAsyncLifetime
{
    // What tables and spreadsheets trip over.
    private static readonly Gen<string> Notes = Gen.OneOf(
            "=1+1",
            "-2",
            "@SUM(A1)",
            "+49",
            "'",
            "\"",
            ",",
            ";",
            "\t",
            " ",
            "3/4",
            "👍",
            "ערב",
            "\u202E",
            "½″",
            "a"
        )
        .Array[0, 6]
        .Select(parts => string.Concat(parts).Trim());

    private TestShop shop = null!;

    private static CancellationToken Cancel => TestShop.Cancel;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public Task Pieces_with_hostile_notes_come_back_into_an_empty_shop() =>
        Gen.Select(Notes, Gen.Int[1, 6000], Gen.Bool)
            .Array[1, 5]
            .SampleAsync(
                async pieces =>
                {
                    await using var from = await TestShop.OpenAsync();
                    foreach (var (note, sixteenths, isRack) in pieces)
                    {
                        var place = isRack ? StockPlace.Rack : StockPlace.Bin;
                        var added = new StockAddition(place, Some.Pine, $"{sixteenths}/16", "", "1", note);
                        var done = await from.Stock.AddAsync(added, Some.Inch, Some.Device, CommandId.New(), Cancel);
                        Assert.True(done.Ok, string.Join("; ", done.Faults));
                    }

                    await ComesBackAsync(from);
                },
                iter: 12,
                threads: 1
            );

    [Fact]
    public async Task Bad_places_edges_and_sheets_come_back()
    {
        var sheet = new StockAddition(StockPlace.Rack, Some.Birch, "96", "48", "2", "dent");
        await shop.Stock.AddAsync(sheet, Some.Inch, Some.Device, CommandId.New(), Cancel);
        var bin = await shop.Stock.AddAsync(Some.Offcut("40"), Some.Inch, Some.Device, CommandId.New(), Cancel);
        var (piece, conditions) = (bin.Value!.Single().Id, shop.Get<IStockConditionService>());
        await conditions.AddBadPlaceAsync(
            piece,
            new BadPlaceTyped(BadPlaceKind.Spot, StockEdges.None, "2", "1 1/4", "10", "1/2"),
            Some.Inch,
            Some.Device,
            CommandId.New(),
            Cancel
        );
        await conditions.SetEdgeAsync(piece, StockEdges.Near, true, Some.Device, Cancel);
        await ComesBackAsync(shop);
    }

    [Fact]
    public async Task A_formula_in_a_note_goes_out_as_text()
    {
        await shop.Stock.AddAsync(Some.Offcut("40") with { Note = "=1+1" }, Some.Inch, Some.Device, CommandId.New(), Cancel);
        Assert.Contains(",'=1+1,", await shop.Get<IStockExchange>().ExportCsvAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_tag_that_a_piece_has_is_not_given_twice()
    {
        await shop.Stock.AddAsync(Some.Offcut("40"), Some.Inch, Some.Device, CommandId.New(), Cancel);
        const string Csv = "tag,material,length\nB1,pine-1x3,20\nB7,pine-1x3,30\n,pine-1x3,10\n";
        var preview = await PreviewAsync(Csv);
        Assert.Equal([("", "B1"), ("B7", ""), ("", "")], preview.Rows.Select(row => (row.Tag, row.TagBefore)));
        var added = await shop.Get<IStockExchange>().ImportCsvAsync(Bytes(Csv), Some.Device, CommandId.New(), Cancel);
        Assert.Equal(["B7", "B8", "B9"], added.Value!.Select(piece => piece.Tag).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Every_wrong_cell_is_named_and_nothing_is_added()
    {
        const string Csv =
            "tag,where,material,length,width,pieces,edges as bought,bad places\n"
            + "X1,attic,nothing,long,,none,up,everywhere\nB2,bin,pine-1x3,20,,3,,\nB2,bin,pine-1x3,20,,1,,30 x 1 at 0 x 0\n";
        var rows = shop.CountRows();
        var outcome = await shop.Get<IStockExchange>().ImportCsvAsync(Bytes(Csv), Some.Device, CommandId.New(), Cancel);
        Assert.Equal(
            [
                "line 2, bad places",
                "line 2, edges as bought",
                "line 2, length",
                "line 2, material",
                "line 2, pieces",
                "line 2, tag",
                "line 2, where",
                "line 3, pieces",
                "line 4, bad places",
                "line 4, tag",
            ],
            outcome.Faults.Select(fault => fault.Field).Order(StringComparer.Ordinal)
        );
        Assert.Equal(rows, shop.CountRows());
    }

    [Theory]
    [InlineData("", "is empty")]
    [InlineData("material,price\npine-1x3,4\n", "no column 'length'")]
    [InlineData("material,length\n", "has no pieces")]
    [InlineData("material,length,length\npine-1x3,1,2\n", "two columns")]
    [InlineData("material,length\n\"pine-1x3,20\n", "never closed")]
    public async Task What_is_no_table_of_stock_is_refused_whole(string csv, string said)
    {
        var rows = shop.CountRows();
        var outcome = await shop.Get<IStockExchange>().ImportCsvAsync(Bytes(csv), Some.Device, CommandId.New(), Cancel);
        Assert.Contains(said, string.Join<Fault>('\n', outcome.Faults), StringComparison.Ordinal);
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task A_metric_table_with_semicolons_is_understood()
    {
        var preview = await PreviewAsync("Material;Length;Width;Qty\nbirch-ply-3-4;1220,5;610;2\n");
        Assert.Equal(new TableFormat(';', true, LengthUnit.Millimetre), preview.Format);
        Assert.Equal((Length.FromMillimetres(1220.5m), 2), (preview.Rows[0].Length, preview.Rows[0].Pieces));
    }

    private static async Task ComesBackAsync(TestShop from)
    {
        var csv = await from.Get<IStockExchange>().ExportCsvAsync(Cancel);
        await using var to = await TestShop.OpenAsync();
        var outcome = await to.Get<IStockExchange>().ImportCsvAsync(Bytes(csv), Some.Device, CommandId.New(), Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        Assert.Equal(csv, await to.Get<IStockExchange>().ExportCsvAsync(Cancel));
        static string Say(StockPiece piece) =>
            $"{piece.Tag} {piece.Place} {piece.MaterialId} {piece.Length.Ticks} {piece.Width.Ticks} {piece.Note} "
            + $"{piece.Condition.Untrimmed} {string.Join(';', piece.Condition.BadPlaces)}";
        Assert.Equal((await from.Stock.ListAsync(Cancel)).Select(Say), (await to.Stock.ListAsync(Cancel)).Select(Say));
    }

    private async Task<StockPreview> PreviewAsync(string csv) =>
        (await shop.Get<IStockExchange>().PreviewCsvAsync(Bytes(csv), Cancel)).Value!;

    private static byte[] Bytes(string csv) => Encoding.UTF8.GetBytes(csv);
}
