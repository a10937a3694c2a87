using Bunit;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Projects;
using ShopPlanner.Web.Fields;
using ShopPlanner.Web.Frame;

namespace ShopPlanner.Web.Tests.Projects;

public sealed class PartSheetTableTests : PageContext
{
    private readonly FakeParts parts = new();

    [Fact]
    public async Task A_typed_cell_is_saved_as_it_was_typed()
    {
        var page = await OpenAsync();
        await Named(page, "Part, row 1").TypedAsync("Leg");
        await Named(page, "Length, row 1").TypedAsync("34 1/2");
        Assert.Equal(("Leg", "34 1/2"), (parts.Rows[0].Texts.Name, parts.Rows[0].Texts.Length));
        Assert.Equal(
            ("34 1/2", "34 1/2"),
            (Named(page, "Length, row 1").GetAttribute("data-kept"), Named(page, "Length, row 1").GetAttribute("data-shown"))
        );
        Assert.Equal("", Named(page, "Part, row 2").GetAttribute("data-shown"));
    }

    [Fact]
    public async Task A_wrong_cell_says_what_is_wrong_and_keeps_what_was_typed()
    {
        parts.Add("A", "Leg", "10");
        var page = await OpenAsync();
        await Named(page, "Length, row 1").TypedAsync("12 1/0");
        var cell = Named(page, "Length, row 1");
        Assert.Equal(("true", "12 1/0"), (cell.GetAttribute("aria-invalid"), cell.GetAttribute("data-shown")));
        var note = page.Find("#" + cell.GetAttribute("aria-describedby"));
        Assert.Contains("Length", note.TextContent, StringComparison.Ordinal);
        Assert.Contains("‘12 1/0’ is not a length", note.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pasted_rows_are_added_and_undone_as_one_step()
    {
        parts.Add("A", "Leg", "10");
        var page = await OpenAsync();
        await page.InvokeAsync(() => page.Instance.Paste("B\tRail\t20\nC\tSlat\t30", null, null, Guid.NewGuid()));
        Assert.Equal("Slat", Named(page, "Part, row 3").GetAttribute("data-shown"));
        await Named(page, "Undo paste").ClickAsync(new());
        Assert.Equal("", Named(page, "Part, row 2").GetAttribute("data-shown"));
        Assert.Single(parts.Rows);
    }

    [Fact]
    public async Task A_copied_column_goes_in_from_the_cell_and_is_one_step()
    {
        var first = parts.Add("A", "Leg", "10");
        parts.Add("B", "Rail", "11");
        var page = await OpenAsync();
        await page.InvokeAsync(() =>
            page.Instance.Paste("34 1/2\r\n\"20 1/4\"\"\"\r\n18\r\n", "Length", first.Id, Guid.NewGuid())
        );
        Assert.Equal(["34 1/2", "20 1/4\"", "18"], parts.Rows.Select(row => row.Texts.Length));
        Assert.Equal(["Leg", "Rail", ""], parts.Rows.Select(row => row.Texts.Name));
        Assert.Empty(parts.Pastes);
        Assert.Single(parts.Saves);
    }

    [Fact]
    public async Task Two_columns_go_in_side_by_side_and_beyond_the_last_one_they_are_rows()
    {
        var first = parts.Add("A", "Leg", "10");
        var page = await OpenAsync();
        await page.InvokeAsync(() => page.Instance.Paste("12\t3", "Length", first.Id, Guid.NewGuid()));
        Assert.Equal(("12", "3"), (parts.Rows[0].Texts.Length, parts.Rows[0].Texts.Width));
        await page.InvokeAsync(() => page.Instance.Paste("B\tRail\t12", "Note", first.Id, Guid.NewGuid()));
        Assert.Single(parts.Pastes);
    }

    [Fact]
    public async Task Five_columns_pasted_at_the_part_fill_from_the_part_on()
    {
        var first = parts.Add("A", "Leg", "10");
        var page = await OpenAsync();
        const string Copied = "Rail\tPine 1x3\t12\t2\t4\nSlat\tPine 1x4\t30\t3\t8";
        await page.InvokeAsync(() => page.Instance.Paste(Copied, "Name", first.Id, Guid.NewGuid()));
        Assert.Empty(parts.Pastes);
        Assert.Equal(
            [("A", "Rail", "Pine 1x3", "12", "2", "4"), ("", "Slat", "Pine 1x4", "30", "3", "8")],
            parts.Rows.Take(2).Select(row => Cells(row.Texts))
        );
        await page.InvokeAsync(() => page.Instance.Paste("B\tRail\tPine 1x3\t12\t2\t4\tnote", "Name", first.Id, Guid.NewGuid()));
        Assert.Single(parts.Pastes);
    }

    private static (string, string, string, string, string, string) Cells(PartTexts row) =>
        (row.Mark, row.Name, row.Material, row.Length, row.Width, row.Quantity);

    [Fact]
    public async Task Too_many_rows_are_refused_by_their_number()
    {
        var page = await OpenAsync();
        await page.InvokeAsync(() => page.Instance.RefusePaste(100_000));
        Assert.Contains("100000 rows", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Contains("nothing was added", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task What_a_script_asked_for_and_failed_is_told_by_the_page(bool undo)
    {
        var sheet = new SheetState(parts, parts.Project);
        await sheet.LoadAsync(TestContext.Current.CancellationToken);
        var page = Render<Mishap>(mishap =>
            mishap.AddChildContent<PartSheetTable>(one =>
                one.Add(table => table.Sheet, sheet).Add(table => table.Materials, Array.Empty<MaterialView>())
            )
        );
        var table = page.FindComponent<PartSheetTable>().Instance;
        var steps = page.FindComponent<StepButtons>().Instance;
        await page.InvokeAsync(() => table.Paste("B\tRail\t20", null, null, Guid.NewGuid()));
        parts.Failure = new InvalidOperationException("the disk is gone");
        await page.InvokeAsync(() =>
            undo ? steps.Step(Guid.NewGuid(), false) : table.Paste("C\tSlat\t30", null, null, Guid.NewGuid())
        );
        Assert.Contains("Something went wrong", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_is_taken_out_and_brought_back()
    {
        parts.Add("A", "Leg", "10");
        var page = await OpenAsync();
        await Named(page, "Delete row 1").ClickAsync(new());
        Assert.Empty(parts.Rows);
        await page.InvokeAsync(() => StepAsync(page, Guid.NewGuid()));
        Assert.Equal("Leg", Named(page, "Part, row 1").GetAttribute("data-shown"));
    }

    [Fact]
    public async Task A_press_of_the_keys_that_is_sent_again_is_one_step()
    {
        parts.Add("A", "Leg", "10");
        var page = await OpenAsync();
        await Named(page, "Length, row 1").TypedAsync("11");
        await Named(page, "Length, row 1").TypedAsync("12");
        var press = Guid.NewGuid();
        await page.InvokeAsync(() => StepAsync(page, press));
        await page.InvokeAsync(() => StepAsync(page, press));
        Assert.Equal("11", parts.Rows[0].Texts.Length);
        Assert.Contains("Ctrl+Z", Named(page, "Undo change of 1").GetAttribute("title"), StringComparison.Ordinal);
    }

    private static Task StepAsync(IRenderedComponent<PartSheetTable> page, Guid press) =>
        page.FindComponent<StepButtons>().Instance.Step(press, false);

    [Fact]
    public async Task A_conflict_shows_both_values_and_two_ways_out()
    {
        var id = parts.Add("A", "Leg", "10").Id;
        var page = await OpenAsync();
        parts.ChangeElsewhere(id, "12");
        await Named(page, "Length, row 1").TypedAsync("11");
        var said = page.Find("[role=alert]").TextContent;
        Assert.Contains("‘11’", said, StringComparison.Ordinal);
        Assert.Contains("‘12’", said, StringComparison.Ordinal);
        await Named(page, "Keep mine").ClickAsync(new());
        Assert.Equal("11", parts.Rows[0].Texts.Length);
        Assert.Empty(page.FindAll("[role=alert]"));
    }

    [Fact]
    public async Task Typing_in_one_of_five_hundred_rows_draws_one_row()
    {
        for (var i = 0; i < 500; i++)
            parts.Add("A", $"Part {i}", "10");
        var page = await OpenAsync();
        var before = page.FindComponents<PartSheetRow>().Sum(row => row.RenderCount);
        await Named(page, "Length, row 250").TypedAsync("11");
        Assert.InRange(page.FindComponents<PartSheetRow>().Sum(row => row.RenderCount) - before, 1, 4);
    }

    [Fact]
    public async Task A_longer_list_is_shown_in_portions()
    {
        for (var i = 0; i < 600; i++)
            parts.Add("A", $"Part {i}", "10");
        var page = await OpenAsync(from: 500);
        Assert.Equal(101, page.FindComponents<PartSheetRow>().Count);
        Assert.Equal("Part 500", Named(page, "Part, row 501").GetAttribute("data-shown"));
    }

    [Fact]
    public async Task Columns_that_few_parts_need_come_when_asked_for_and_stay_where_they_are_used()
    {
        parts.Add("A", "Leg", "10");
        var page = await OpenAsync();
        Assert.DoesNotContain(page.FindAll("th"), head => head.TextContent == "Cut long by");
        await Named(page, "Allowances and test pieces").ClickAsync(new());
        Assert.Equal(
            ["Note", "Cut long by", "Cut wide by", "Test pieces"],
            page.FindAll("th").Select(head => head.TextContent).SkipWhile(text => text != "Note").Take(4)
        );
        await Named(page, "Cut long by, row 1").TypedAsync("1/2");
        Assert.Equal("1/2", parts.Rows[0].Texts.LongBy);
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent.Trim() == "Allowances and test pieces");
        await Named(page, "Undo change of 1").ClickAsync(new());
        Assert.Equal("", parts.Rows[0].Texts.LongBy);
        Assert.Equal("", Named(page, "Cut long by, row 1").GetAttribute("data-shown"));
    }

    private async Task<IRenderedComponent<PartSheetTable>> OpenAsync(int from = 0)
    {
        var sheet = new SheetState(parts, parts.Project);
        await sheet.LoadAsync(TestContext.Current.CancellationToken);
        return Render<PartSheetTable>(table =>
            table.Add(one => one.Sheet, sheet).Add(one => one.From, from).Add(one => one.Materials, Array.Empty<MaterialView>())
        );
    }
}
