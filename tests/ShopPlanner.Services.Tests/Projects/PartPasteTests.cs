using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

public sealed class PartPasteTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private Guid project;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        project = (await Some.ProjectAsync(shop)).Id;
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task Rows_from_a_spreadsheet_are_read_in_the_usual_order()
    {
        var row = Assert.Single(await PasteAsync("A\tLeg\tpine-1x3\t34 1/2\t\t4\tlength\tfront ones\r\n"));
        Assert.Equal(
            ("A", "Leg", "34 1/2", "4", false, "front ones"),
            (row.Texts.Mark, row.Texts.Name, row.Texts.Length, row.Texts.Quantity, row.Texts.CanTurn, row.Texts.Note)
        );
        Assert.Empty(row.Faults);
    }

    [Fact]
    public async Task Rows_in_the_order_of_the_page_keep_their_notes()
    {
        var rows = await PasteAsync(
            "A\tLeg\tpine-1x3\t34\t\t4\tlength to be checked\nB\tTop\tbirch-ply-3-4\t20\t10\t1\tseen side up\tany"
        );
        Assert.Equal(["length to be checked", "seen side up"], rows.Select(row => row.Texts.Note));
        Assert.Equal([false, true], rows.Select(row => row.Texts.CanTurn));
    }

    [Fact]
    public async Task A_heading_row_says_what_the_columns_are()
    {
        var row = Assert.Single(await PasteAsync("Qty,Length,Material,Name,Grain\n2,27,birch-ply-3-4,Side,any\n"));
        Assert.Equal(
            ("2", "27", "Side", true, "A"),
            (row.Texts.Quantity, row.Texts.Length, row.Texts.Name, row.Texts.CanTurn, row.Texts.Mark)
        );
    }

    [Fact]
    public async Task Columns_to_cut_long_and_to_practise_may_follow_the_old_ones()
    {
        var row = Assert.Single(await PasteAsync("A\tLeg\tpine-1x3\t34 1/2\t2\t4\tlength\tfront\t1/2\t1/8\t2"));
        Assert.Equal(("1/2", "1/8", "2", "front"), (row.Texts.LongBy, row.Texts.WideBy, row.Texts.Practice, row.Texts.Note));
        Assert.Equal(2, row.Practice);
        row = (await PasteAsync("Name,Material,Length,Practice pieces,Cut long by\nRail,pine-1x3,12,1,1/4"))[^1];
        Assert.Equal(("1/4", "", "1"), (row.Texts.LongBy, row.Texts.WideBy, row.Texts.Practice));
    }

    [Fact]
    public async Task Inch_marks_and_quoted_cells_are_kept()
    {
        var rows = await PasteAsync("\tShelf, top\tpine-1x3\t34 1/2\"\t\t1\n\t\"Shelf \"\"low\"\"\"\tpine-1x3\t8' 6\"\t\t1");
        Assert.Equal(["Shelf, top", "Shelf \"low\""], rows.Select(row => row.Texts.Name));
        Assert.All(rows, row => Assert.Empty(row.Faults));
        Assert.Equal(["A", "B"], rows.Select(row => row.Texts.Mark));
    }

    [Fact]
    public async Task Marks_that_are_empty_take_letters_that_are_free()
    {
        var rows = await PasteAsync("B\tx\tpine-1x3\t1\n" + string.Concat(Enumerable.Repeat("\ty\tpine-1x3\t1\n", 27)));
        Assert.Equal(
            ["B", "A", "C", .. "DEFGHJKLMNPQRSTUVWXYZ".Select(c => $"{c}"), "AA", "AB", "AC", "AD"],
            rows.Select(row => row.Texts.Mark)
        );
    }

    [Fact]
    public async Task A_hundred_thousand_rows_are_refused_in_one_line_and_nothing_is_added()
    {
        var text = string.Concat(Enumerable.Repeat("\tLeg\tpine-1x3\t34 1/2\t\t4\n", 100_000));
        var rows = shop.CountRows();
        var outcome = await shop.Parts.PasteAsync(project, text, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Contains("too many", outcome.Faults.Single().Message);
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task Rows_that_fit_alone_but_not_with_those_there_are_refused_too()
    {
        var many = string.Concat(Enumerable.Repeat("\tLeg\tpine-1x3\t34 1/2\t\t4\n", 3_000));
        Assert.Equal(3_000, (await PasteAsync(many)).Count);
        var rows = shop.CountRows();
        Assert.Equal(OutcomeKind.Faulty, (await shop.Parts.PasteAsync(project, many, CommandId.New(), TestShop.Cancel)).Kind);
        Assert.Equal(rows, shop.CountRows());
    }

    [Theory]
    [InlineData("A\tLeg\t\"pine\t34\nB\tRail\tpine-1x3\t12\n", "never closed")]
    [InlineData("A\tLe\0g\tpine-1x3\t34", "isn't text")]
    [InlineData("", "no rows")]
    [InlineData("\n \t \n", "no rows")]
    public async Task What_is_no_table_is_refused(string text, string said)
    {
        var outcome = await shop.Parts.PasteAsync(project, text, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Contains(said, outcome.Faults.Single().Message);
    }

    private async Task<IReadOnlyList<PartRow>> PasteAsync(string text)
    {
        var outcome = await shop.Parts.PasteAsync(project, text, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value.Rows;
    }
}
