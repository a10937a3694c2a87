using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

/// <summary>Tables of parts as people and spreadsheets write them.</summary>
public sealed class PartCsvTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private Guid project;

    private IPartExchange Exchange => shop.Get<IPartExchange>();

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        project = (await Some.ProjectAsync(shop)).Id;
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_list_goes_out_as_a_table_with_its_unit_in_the_heading()
    {
        await shop.Parts.SaveAsync(
            project,
            [
                Some.New(
                    Some.Part("27", "B", "2", Some.Birch, "13 1/4") with
                    {
                        CanTurn = true,
                        Note = "one, two",
                        LongBy = "1/2",
                    }
                ),
            ],
            TestShop.Cancel
        );
        Assert.Equal(
            "Mark,Part,Material,Length (in),Width (in),Pieces,Note,Can rotate,Cut long by (in),Cut wide by (in),Test pieces\r\n"
                + "B,Leg,Birch plywood 3/4 in,27,13 1/4,2,\"one, two\",yes,0 1/2,,\r\n",
            await Exchange.ExportCsvAsync(project, TestShop.Cancel)
        );
        Assert.Null(await Exchange.ExportCsvAsync(Guid.NewGuid(), TestShop.Cancel));
    }

    [Theory]
    [InlineData("Qty,L,W,Material,Part\n2,27,13 1/4,birch-ply-3-4,Side\n")]
    [InlineData("PART;material;Pcs;Length;Width\nSide;birch-ply-3-4;2;27;13,25\n")]
    [InlineData("part\tlength\twidth\tnotes\tpieces\tstock\nSide\t27\t13.25\t\t2.0\tBirch plywood 3/4 in")]
    [InlineData("Description,Len.,Wide,Count,Species,Thick\nSide,27,13 1/4,2,birch plywood,3/4\n")]
    [InlineData("Part,Long,Wide,#,Material\nSide,27,13 1/4,2,birch-ply-3-4\n")]
    [InlineData("sep=;\nPart;Length [mm];Width, mm;Qty;Material\nSide;685,8;336,55;2;birch-ply-3-4\n")]
    [InlineData("Part,Length (cm),Width (in),Qty,Material\nSide,68.58,13 1/4,2,birch-ply-3-4\n")]
    [InlineData("Part,Length,Width,Unit,Qty,Material\nSide,685.8,336.55,mm,2,birch-ply-3-4\n")]
    [InlineData("Part,Length,Width,Unit,Qty,Material\nSide,\"685,8\",13 1/4 in,mm,2,birch-ply-3-4\n")]
    [InlineData(",Side,birch-ply-3-4,27,13 1/4,2\n")]
    [InlineData(
        "mark,name,material,quantity,length,width,thickness,rough length,rough width,unit,grain,purpose\r\n"
            + "A,Side,Birch plywood 3/4 in,2,27,13.25,0.75,27,13.25,in,length,\r\n"
    )]
    public async Task Other_orders_names_units_and_separators_say_the_same(string table)
    {
        var row = Assert.Single((await PreviewAsync(table)).Rows);
        Assert.True(row.Faults.IsEmpty, string.Join("; ", row.Faults));
        Assert.Equal(("A", "Side", "Birch plywood 3/4 in"), (row.Row.Part!.Id, row.Row.Part.Name, row.Row.MaterialName));
        Assert.Equal(
            (Length.FromInches(27), Length.FromInches(13, 1, 4), 2),
            (row.Row.Part.Length, row.Row.Part.Width, row.Row.Part.Quantity)
        );
    }

    [Theory]
    [InlineData("pine", "3/4", "2 1/2", "Pine 1x3")]
    [InlineData("pine 1x3", "3/4", "1", "Pine 1x3")]
    [InlineData("MDF", "3/4 in", "10", "MDF 3/4 in")]
    [InlineData("mdf", "18 mm", "10", "MDF 18 mm")]
    public async Task A_thickness_of_its_own_tells_which_material_is_meant(
        string material,
        string thickness,
        string width,
        string found
    )
    {
        var view = await PreviewAsync($"Part,Material,Thickness,Width,Length\nRail,{material},{thickness},{width},30\n");
        Assert.Equal(found, Assert.Single(view.Rows).Row.MaterialName);
        Assert.Empty(view.Rows[0].Faults);
    }

    [Fact]
    public async Task Each_wrong_cell_is_named_with_line_column_value_and_what_would_be_right()
    {
        var view = await PreviewAsync(
            "Part,Material,Length,Pieces,Grain,Unit,Cost\nLeg,pine-1x3,12 1/0,4,length,in,9\n"
                + "Rail,wishwood,20,few,crosswise,yards,9\nTop,pine-1x3,9,1,,,9\n"
        );
        Assert.Equal([2L, 3, 4], view.Rows.Select(row => row.Line));
        Assert.Equal(["Length ‘12 1/0’"], Said(view.Rows[0]));
        Assert.Equal(
            ["CanTurn ‘crosswise’", "Material ‘wishwood’", "Quantity ‘few’", "Unit ‘yards’"],
            Said(view.Rows[1]).Order(StringComparer.Ordinal)
        );
        Assert.Contains("write length, or any", string.Join(" ", view.Rows[1].Faults), StringComparison.Ordinal);
        Assert.Empty(view.Rows[2].Faults);
        Assert.Equal((2, "Cost"), (view.Faulty, Assert.Single(view.Unused)));
    }

    [Fact]
    public async Task A_preview_stores_nothing_and_an_import_is_one_step()
    {
        await shop.Parts.SaveAsync(project, [Some.New(Some.Part("10", "A"))], TestShop.Cancel);
        const string Table = "Mark,Part,Material,Length\nA,Rail,pine-1x3,20\nC,Slat,pine-1x3,oops\n";
        var rows = shop.CountRows();
        var view = await PreviewAsync(Table);
        Assert.Equal(rows, shop.CountRows());
        Assert.Equal([("B", "A"), ("C", null)], view.Rows.Select(row => (row.Row.Texts.Mark, row.MarkBefore)));
        var sheet = await ImportAsync(Table);
        Assert.Equal(view.Rows.Select(row => row.Row.Texts.Mark), sheet.Rows.Skip(1).Select(row => row.Texts.Mark));
        Assert.Equal(("oops", "import of 2 rows"), (sheet.Rows[2].Texts.Length, sheet.Undo));
        Assert.Single((await shop.Parts.UndoAsync(project, TestShop.Cancel)).Value!.Rows);
    }

    [Theory]
    [InlineData("", "has no parts")]
    [InlineData("Part,Material,Length\n", "has no parts")]
    [InlineData("Part,Length,L,Material\nLeg,1,2,pine-1x3\n", "same column")]
    [InlineData("Part,Material,Length\n\"Leg,pine-1x3,3\nRail,pine-1x3,4\n", "never closed")]
    [InlineData("Part,Material,Length\nLe\u0001g,pine-1x3,3\n", "can't be saved")]
    public async Task What_is_no_table_of_parts_is_refused_whole(string table, string said)
    {
        var rows = shop.CountRows();
        var preview = await Exchange.PreviewCsvAsync(project, Encoding.UTF8.GetBytes(table), TestShop.Cancel);
        Assert.Contains(said, string.Join('\n', preview.Faults), StringComparison.Ordinal);
        var outcome = await Exchange.ImportCsvAsync(project, Encoding.UTF8.GetBytes(table), CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Equal(preview.Faults, outcome.Faults);
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task A_file_of_another_encoding_says_how_to_save_it()
    {
        var outcome = await Exchange.PreviewCsvAsync(project, new byte[] { 0x50, 0xFF, 0xFE, 0x0A }, TestShop.Cancel);
        Assert.Contains("CSV UTF-8", Assert.Single(outcome.Faults).Message, StringComparison.Ordinal);
        var utf16 = Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("Part,Material,Length\nLeg,pine-1x3,9½"));
        Assert.Equal(
            "9½",
            (await Exchange.PreviewCsvAsync(project, utf16.ToArray(), TestShop.Cancel)).Value!.Rows[0].Row.Texts.Length
        );
    }

    [Fact]
    public async Task More_rows_than_a_list_holds_are_refused_before_anything_is_added()
    {
        var table = "Part,Material,Length\n" + string.Concat(Enumerable.Repeat("Leg,pine-1x3,30\n", IPartService.MaxRows));
        Assert.Equal(IPartService.MaxRows, (await PreviewAsync(table)).Rows.Length);
        await shop.Parts.SaveAsync(project, [Some.New(Some.Part("10", "A"))], TestShop.Cancel);
        var outcome = await Exchange.PreviewCsvAsync(project, Encoding.UTF8.GetBytes(table), TestShop.Cancel);
        Assert.Contains("too many", Assert.Single(outcome.Faults).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Part;Material;Length\nLeg;pine-1x3;1,234\n", "1.234")]
    [InlineData("Part,Material,Length\nLeg,pine-1x3,\"1,234\"\n", "1,234")]
    [InlineData("Part,Material,Length\nLeg,pine-1x3,\"12,5\"\n", "12.5")]
    [InlineData("Part,Material,Length,Width\nLeg,pine-1x3,\"12,5\",\"1,234.5\"\n", "12,5")]
    [InlineData("Part;Material;Length\nLeg;pine-1x3;1.234,5\n", "1.234,5")]
    public async Task A_comma_is_read_as_a_decimal_mark_where_the_table_leaves_no_doubt(string table, string length) =>
        Assert.Equal(length, (await PreviewAsync(table)).Rows[0].Row.Texts.Length);

    [Fact]
    public async Task Rows_copied_out_of_an_exported_table_can_be_pasted()
    {
        const string Copied = "Mark\tPart\tMaterial\tLength (mm)\tCan rotate\nD\tTop\tbirch-ply-3-4\t330\tyes";
        var row = (await shop.Parts.PasteAsync(project, Copied, CommandId.New(), TestShop.Cancel)).Value!.Rows[0].Texts;
        Assert.Equal(("D", "330 mm", true), (row.Mark, row.Length, row.CanTurn));
    }

    private static IEnumerable<string> Said(PartPreviewRow row) => row.Faults.Select(fault => $"{fault.Field} ‘{fault.Value}’");

    private async Task<PartPreview> PreviewAsync(string table)
    {
        var outcome = await Exchange.PreviewCsvAsync(project, Encoding.UTF8.GetBytes(table), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private async Task<PartSheet> ImportAsync(string table)
    {
        var outcome = await Exchange.ImportCsvAsync(project, Encoding.UTF8.GetBytes(table), CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }
}
