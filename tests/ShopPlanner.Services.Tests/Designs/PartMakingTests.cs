using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Designs;

public sealed class PartMakingTests
{
    [Theory]
    [InlineData("bookcase")]
    [InlineData("pantry-cupboard")]
    [InlineData("drawer-chest")]
    [InlineData("boot-room-bench")]
    [InlineData("plant-stand")]
    public async Task Rows_have_the_marks_sizes_and_counts_of_the_drawing(string design)
    {
        await using var given = await Ideas.BeginAsync(design);
        await given.MakeAsync();
        var piece = DesignEvaluator.Evaluate((await given.ReadAsync()).Idea.Document, new Dictionary<string, string>()).Piece!;
        var rows = (await given.RowsAsync()).ToDictionary(row => row.Texts.Mark);
        foreach (var part in piece.Parts.Where(one => one.Purpose == PartPurpose.Member))
        {
            var row = rows[part.Id];
            Assert.True(row.Faults.IsEmpty, $"{part.Id} {part.Name}: {string.Join("; ", row.Faults)}");
            Assert.Equal(
                (part.RoughLength, part.RoughWidth, part.Quantity),
                (row.Part!.Length, row.Part.Width, row.Part.Quantity)
            );
            Assert.Equal(part.Length.Value, row.Part.FinishedLength ?? row.Part.Length);
        }

        Assert.DoesNotContain(rows.Values, row => row.Texts.Name.StartsWith("Spacer", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Practice_pieces_stand_beside_the_part_they_are_like()
    {
        await using var given = await Ideas.BeginAsync("pantry-cupboard");
        await given.MakeAsync();
        var practised = Assert.Single(await given.RowsAsync(), row => row.Practice > 0);
        Assert.Equal((2, "Door rail"), (practised.Practice, practised.Texts.Name));
    }

    [Fact]
    public async Task Making_again_changes_its_own_rows_and_keeps_those_typed_by_hand()
    {
        await using var given = await Ideas.BeginAsync();
        await given.MakeAsync();
        var hand = Some.Part("20", "Z") with { Name = "Wedge" };
        await given.Shop.Parts.SaveAsync(given.Project, [Some.New(hand)], Ideas.Cancel);
        var before = await given.RowsAsync();
        await given.SetAsync("width", "24");
        await given.MakeAsync();
        var after = await given.RowsAsync();
        Assert.Equal(before.Select(row => row.Texts.Id), after.Select(row => row.Texts.Id));
        Assert.Equal(hand, after.Single(row => row.Texts.Mark == "Z").Texts);
        Assert.NotEqual(
            before.Single(row => row.Texts.Name == "Bottom").Texts.Length,
            after.Single(row => row.Texts.Name == "Bottom").Texts.Length
        );
    }

    [Fact]
    public async Task A_part_that_is_no_more_goes_and_undoing_brings_all_back()
    {
        await using var given = await Ideas.BeginAsync();
        await given.MakeAsync();
        var before = (await given.RowsAsync()).Select(row => row.Texts).ToList();
        await given.SetAsync("above", "0");
        await given.SetAsync("below", "0");
        var made = await given.MakeAsync();
        Assert.DoesNotContain(await given.RowsAsync(), row => row.Texts.Name == "Shelf");
        await given.Shop.Parts.UndoAsync(given.Project, made.Step!.Value, Ideas.Cancel);
        Assert.Equal(before, (await given.RowsAsync()).Select(row => row.Texts));
        await given.MakeAsync();
        Assert.DoesNotContain(await given.RowsAsync(), row => row.Texts.Name == "Shelf");
    }

    [Fact]
    public async Task What_an_update_changes_is_told_before_it_is_made()
    {
        await using var given = await Ideas.BeginAsync();
        Assert.False((await given.CompareAsync()).IsMade);
        await given.MakeAsync();
        Assert.Equal((true, 0), ((await given.CompareAsync()).IsMade, (await given.CompareAsync()).Rows.Length));
        await given.SetAsync("width", "24");
        await given.SetAsync("above", "0");
        await given.SetAsync("below", "0");
        var rows = (await given.CompareAsync()).Rows;
        var bottom = rows.Single(row => row.Name == "Bottom");
        Assert.Equal(RowChange.Changed, bottom.Change);
        Assert.Equal("Length", Assert.Single(bottom.Fields).Label);
        Assert.Equal(RowChange.Removed, rows.Single(row => row.Name == "Shelf").Change);
        await given.MakeAsync();
        Assert.Empty((await given.CompareAsync()).Rows);
        await given.SetAsync("above", "2");
        Assert.Equal(RowChange.Added, Assert.Single((await given.CompareAsync()).Rows, row => row.Name == "Shelf").Change);
    }

    [Fact]
    public async Task What_a_person_changed_in_a_made_row_stays()
    {
        await using var given = await Ideas.BeginAsync();
        await given.MakeAsync();
        var bottom = (await given.RowsAsync()).Single(row => row.Texts.Name == "Bottom");
        var own = bottom.Texts with { Note = "best face up", Length = "29" };
        await given.Shop.Parts.SaveAsync(given.Project, [new PartEdit(own, bottom.Version)], Ideas.Cancel);
        Assert.Empty((await given.CompareAsync()).Rows);
        await given.SetAsync("width", "24");
        await given.SetAsync("depth", "12");
        var kept = (await given.CompareAsync()).Rows.Single(row => row.Name == "Bottom").Kept;
        Assert.Equal(["Length", "Note"], kept.Select(field => field.Label));
        Assert.Equal("29", kept[0].From);
        await given.MakeAsync();
        var after = (await given.RowsAsync()).Single(row => row.Texts.Name == "Bottom").Texts;
        Assert.Equal(("29", "best face up"), (after.Length, after.Note));
        Assert.NotEqual(bottom.Texts.Width, after.Width);
    }

    [Fact]
    public async Task Another_unit_of_the_project_is_no_edit()
    {
        await using var given = await Ideas.BeginAsync();
        await given.MakeAsync();
        var project = await given.Shop.Projects.GetAsync(given.Project, Ideas.Cancel);
        await given.Shop.Projects.SaveAsync(project! with { Unit = LengthUnit.Millimetre }, Ideas.Cancel);
        Assert.Empty((await given.CompareAsync()).Rows);
        await given.SetAsync("width", "24");
        Assert.All((await given.CompareAsync()).Rows, row => Assert.Empty(row.Kept));
        await given.MakeAsync();
        var piece = DesignEvaluator
            .Evaluate((await given.ReadAsync()).Idea.Document, (await given.ReadAsync()).Idea.Changed)
            .Piece!;
        Assert.Equal(
            piece.Parts.Single(part => part.Name == "Bottom").Length.Value,
            (await given.RowsAsync()).Single(row => row.Texts.Name == "Bottom").Part!.Length
        );
    }

    [Fact]
    public async Task An_update_that_was_taken_back_is_no_edit()
    {
        await using var given = await Ideas.BeginAsync();
        await given.MakeAsync();
        await given.SetAsync("width", "24");
        var made = await given.MakeAsync();
        await given.Shop.Parts.UndoAsync(given.Project, made.Step!.Value, Ideas.Cancel);
        var rows = (await given.CompareAsync()).Rows;
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Empty(row.Kept));
    }

    [Fact]
    public async Task A_hand_typed_mark_of_the_drawing_is_named_and_changed_only_when_asked()
    {
        await using var given = await Ideas.BeginAsync();
        await given.Shop.Parts.SaveAsync(given.Project, [Some.New(Some.Part("20", "a") with { Name = "Wedge" })], Ideas.Cancel);
        var refused = await given.Service.MakePartsAsync(given.Project, false, CommandId.New(), Ideas.Cancel);
        Assert.Equal((OutcomeKind.Faulty, "marks", "a"), (refused.Kind, refused.Faults[0].Field, refused.Faults[0].Value));
        Assert.Single(await given.RowsAsync());
        var made = await given.MakeAsync(mayLetter: true);
        var (from, to) = Assert.Single(made.Lettered);
        Assert.Equal(("A", "Wedge"), (from, (await given.RowsAsync()).Single(row => row.Texts.Mark == to).Texts.Name));
        Assert.All(await given.RowsAsync(), row => Assert.Empty(row.Faults));
    }

    [Fact]
    public async Task A_material_chosen_by_hand_stays_where_the_design_leaves_it_open()
    {
        await using var given = await Ideas.BeginAsync("table");
        await given.LeaveOpenAsync("leg");
        await given.MakeAsync();
        var leg = (await given.RowsAsync()).Single(row => row.Texts.Name == "Leg");
        Assert.Equal("Material", Assert.Single(leg.Faults).Field);
        await given.Shop.Parts.SaveAsync(
            given.Project,
            [new PartEdit(leg.Texts with { Material = "Whitewood 4x4" }, leg.Version)],
            Ideas.Cancel
        );
        await given.SetAsync("height", "28");
        await given.MakeAsync();
        leg = (await given.RowsAsync()).Single(row => row.Texts.Name == "Leg");
        Assert.Equal("Whitewood 4x4", leg.Texts.Material);
    }

    [Fact]
    public async Task Making_without_a_change_is_no_step()
    {
        await using var given = await Ideas.BeginAsync();
        Assert.NotNull((await given.MakeAsync()).Step);
        Assert.Null((await given.MakeAsync()).Step);
    }

    [Fact]
    public async Task Making_parts_is_no_change_of_the_idea()
    {
        await using var given = await Ideas.BeginAsync();
        var read = await given.ReadAsync();
        await given.MakeAsync();
        Assert.Equal(read.Version, (await given.ReadAsync()).Version);
        var saved = await given.Service.SaveAsync(
            given.Project,
            read.Idea with
            {
                Changed = read.Idea.Changed.Add("width", "24"),
            },
            read.Version,
            "width",
            Ideas.Cancel
        );
        Assert.True(saved.Ok);
    }

    [Fact]
    public async Task Millimetres_are_written_exactly()
    {
        await using var given = await Ideas.BeginAsync();
        var project = await given.Shop.Projects.GetAsync(given.Project, Ideas.Cancel);
        await given.Shop.Projects.SaveAsync(project! with { Unit = LengthUnit.Millimetre }, Ideas.Cancel);
        await given.MakeAsync();
        Assert.Equal(Length.FromInches(60), (await given.RowsAsync()).Single(row => row.Texts.Name == "Side").Part!.Length);
    }
}
