using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

public sealed class PartListTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private ProjectView project = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        project = await Some.ProjectAsync(shop);
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_row_is_read_as_typed_and_gets_the_next_letter()
    {
        var sheet = await SaveAsync(Some.New(Some.Part("34-1/2 in")), Some.New(Some.Part("8 ft", material: "Pine 1×3")));
        Assert.Equal(["A", "B"], sheet.Rows.Select(row => row.Texts.Mark));
        Assert.Equal("34-1/2 in", sheet.Rows[0].Texts.Length);
        Assert.Equal(Length.FromInches(34, 1, 2), sheet.Rows[0].Part!.Length);
        Assert.Equal(Length.FromInches(2, 1, 2), sheet.Rows[0].Part!.Width);
        Assert.Equal("pine-1x3", sheet.Rows[1].Part!.Material);
    }

    [Theory]
    [InlineData("12 1/0", "4", "Length", "divided by zero")]
    [InlineData("-5", "4", "Length", "less than zero")]
    [InlineData("0", "4", "Length", "more than zero")]
    [InlineData("NaN", "4", "Length", "not a length")]
    [InlineData("1e400", "4", "Length", "not a length")]
    [InlineData("", "4", "Length", "is empty")]
    [InlineData("1,5", "4", "Length", "comma")]
    [InlineData("34", "0", "Quantity", "whole number")]
    [InlineData("34", "-1", "Quantity", "whole number")]
    [InlineData("34", "1000000000", "Quantity", "whole number")]
    [InlineData("34", "1.5", "Quantity", "whole number")]
    public async Task A_faulty_row_is_kept_with_the_fault_at_its_member(
        string length,
        string quantity,
        string member,
        string said
    )
    {
        var row = (await SaveAsync(Some.New(Some.Part(length, quantity: quantity)))).Rows.Single();
        Assert.Null(row.Part);
        var fault = Assert.Single(row.Faults);
        Assert.Equal(member, fault.Field);
        Assert.Contains(said, fault.Message);
        Assert.Equal(length, row.Texts.Length);
    }

    [Fact]
    public async Task A_part_to_cut_long_is_as_long_as_it_is_cut_and_knows_its_finished_size()
    {
        var part = (
            await SaveAsync(Some.New(Some.Part("34 1/2", width: "2") with { LongBy = "1/2", WideBy = "1/8", Practice = "2" }))
        )
            .Rows.Single()
            .Part!;
        Assert.Equal((Length.FromInches(35), Length.FromInches(34, 1, 2)), (part.Length, part.FinishedLength));
        Assert.Equal((Length.FromInches(2, 1, 8), Length.FromInches(2)), (part.Width, part.FinishedWidth));
        var plain = (await SaveAsync(Some.New(Some.Part("34 1/2") with { LongBy = "0", Practice = "0" }))).Rows[^1];
        Assert.Equal((null, null, 0), (plain.Part!.FinishedLength, plain.Part.FinishedWidth, plain.Practice));
    }

    [Theory]
    [InlineData("-1", "", "", "LongBy", "less than zero")]
    [InlineData("30", "", "", "LongBy", "check for a typing slip")]
    [InlineData("", "thick", "", "WideBy", "not a length")]
    [InlineData("", "1/8", "", "WideBy", "is too much")]
    [InlineData("", "", "100", "Practice", "whole number")]
    [InlineData("", "", "one", "Practice", "whole number")]
    public async Task An_allowance_that_is_none_is_kept_with_its_fault(
        string longBy,
        string wideBy,
        string practice,
        string member,
        string said
    )
    {
        var row = (
            await SaveAsync(Some.New(Some.Part() with { LongBy = longBy, WideBy = wideBy, Practice = practice }))
        ).Rows.Single();
        var fault = Assert.Single(row.Faults);
        Assert.Equal((member, null, 0), (fault.Field, row.Part, row.Practice));
        Assert.Contains(said, fault.Message);
        Assert.Equal((longBy, wideBy, practice), (row.Texts.LongBy, row.Texts.WideBy, row.Texts.Practice));
    }

    [Fact]
    public async Task Allowances_mean_the_same_in_a_new_unit()
    {
        await SaveAsync(Some.New(Some.Part("34 1/2", width: "2") with { LongBy = "1/2", WideBy = "1/8" }));
        Assert.True((await shop.Projects.SaveAsync(project with { Unit = LengthUnit.Millimetre }, TestShop.Cancel)).Ok);
        var row = (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows.Single();
        Assert.Equal(("12.7", "1/8 in"), (row.Texts.LongBy, row.Texts.WideBy));
    }

    [Fact]
    public async Task An_unknown_material_and_a_part_wider_than_its_board_are_faults()
    {
        var sheet = await SaveAsync(Some.New(Some.Part(material: "unobtainium")), Some.New(Some.Part(width: "3")));
        Assert.Equal(nameof(PartTexts.Material), sheet.Rows[0].Faults.Single().Field);
        Assert.Contains("wider than the board", sheet.Rows[1].Faults.Single().Message);
    }

    [Fact]
    public async Task A_mark_used_twice_is_a_fault_of_both_rows()
    {
        var sheet = await SaveAsync(
            Some.New(Some.Part(mark: "A")),
            Some.New(Some.Part(mark: " a ")),
            Some.New(Some.Part(mark: "B"))
        );
        Assert.Equal([1, 1, 0], sheet.Rows.Select(row => row.Faults.Length));
        Assert.Equal(nameof(PartTexts.Mark), sheet.Rows[0].Faults[0].Field);
    }

    [Theory]
    [InlineData("🪑 Hocker")]
    [InlineData("מדף עליון")]
    [InlineData("e\u0301tage\u0300re")]
    [InlineData("<script>alert(1)</script>")]
    public async Task Names_in_any_script_come_back_as_they_were(string name)
    {
        var row = (await SaveAsync(Some.New(Some.Part() with { Name = name }))).Rows.Single();
        Assert.Equal(name, row.Texts.Name);
        Assert.Equal(name, row.Part!.Name);
    }

    [Theory]
    [InlineData("a\0b")]
    [InlineData("two\nlines")]
    [InlineData("half of a pair: \\ud83e")]
    public async Task A_text_that_cannot_be_kept_refuses_the_save_and_leaves_nothing(string name)
    {
        // Half a pair is written as an escape above, since an attribute cannot hold it.
        name = name.Replace("\\ud83e", "\ud83e");
        var before = shop.CountRows();
        var outcome = await shop.Parts.SaveAsync(
            project.Id,
            [Some.New(Some.Part()), Some.New(Some.Part() with { Name = name })],
            TestShop.Cancel
        );
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Equal("rows[1].Name", outcome.Faults.Single().Field);
        Assert.Equal(before, shop.CountRows());
    }

    [Fact]
    public async Task Two_devices_changing_one_row_get_a_conflict_that_shows_what_stands_there()
    {
        var row = (await SaveAsync(Some.New(Some.Part()))).Rows.Single();
        await SaveAsync(new PartEdit(row.Texts with { Length = "36" }, row.Version));
        var before = shop.CountRows();
        var late = await shop.Parts.SaveAsync(
            project.Id,
            [Some.New(Some.Part()), new PartEdit(row.Texts with { Length = "35" }, row.Version)],
            TestShop.Cancel
        );
        Assert.Equal(OutcomeKind.Conflict, late.Kind);
        Assert.Equal(row.Texts.Id.ToString(), late.Faults.Single().Field);
        Assert.Contains("36", late.Faults.Single().Value);
        Assert.Equal(before, shop.CountRows());
    }

    [Fact]
    public async Task The_same_new_row_sent_twice_is_one_row()
    {
        var edit = Some.New(Some.Part());
        await SaveAsync(edit);
        Assert.Single((await SaveAsync(edit)).Rows);
    }

    [Fact]
    public async Task A_row_is_put_before_another_as_often_as_wanted()
    {
        var last = (await SaveAsync(Some.New(Some.Part(mark: "Z")))).Rows.Single();
        for (var i = 0; i < 60; i++)
        {
            var next = (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows[^1];
            await SaveAsync(new PartEdit(Some.Part($"{i + 1}"), null, next.Texts.Id));
        }

        var sheet = (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!;
        Assert.Equal([.. Enumerable.Range(1, 60).Select(i => $"{i}"), "34 1/2"], sheet.Rows.Select(row => row.Texts.Length));
        Assert.Equal(last.Version, sheet.Rows[^1].Version);
    }

    [Fact]
    public async Task A_project_that_is_gone_is_missing() =>
        Assert.Equal(
            OutcomeKind.Missing,
            (await shop.Parts.SaveAsync(Guid.NewGuid(), [Some.New(Some.Part())], TestShop.Cancel)).Kind
        );

    private async Task<PartSheet> SaveAsync(params PartEdit[] edits)
    {
        var outcome = await shop.Parts.SaveAsync(project.Id, edits, TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }
}
