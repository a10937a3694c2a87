using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Designs;

public sealed class IdeaTests
{
    [Fact]
    public async Task A_project_begun_from_a_design_has_its_name_unit_and_idea()
    {
        await using var given = await Ideas.BeginAsync("plant-stand");
        Assert.Equal(("Plant stand", LengthUnit.Millimetre, 0), (given.View.Name, given.View.Unit, given.View.PartKinds));
        var view = await given.ReadAsync();
        Assert.Equal(("Plant stand", null, null), (view.Idea.Document.Name, view.Undo, view.Redo));
        Assert.Empty(view.Idea.Changed);
    }

    [Fact]
    public async Task What_is_typed_is_kept_right_or_wrong()
    {
        await using var given = await Ideas.BeginAsync();
        await given.SetAsync("width", "12 1/0");
        Assert.Equal("12 1/0", (await given.ReadAsync()).Idea.Changed["width"]);
        Assert.Equal(
            OutcomeKind.Faulty,
            (await given.Service.MakePartsAsync(given.Project, false, CommandId.New(), Ideas.Cancel)).Kind
        );
        Assert.Empty(await given.RowsAsync());
    }

    [Fact]
    public async Task Steps_are_taken_back_and_done_again_one_by_one()
    {
        await using var given = await Ideas.BeginAsync();
        await given.SetAsync("width", "24");
        given.Shop.Clock.Advance(TimeSpan.FromSeconds(10));
        var last = await given.SetAsync("depth", "12");
        Assert.Equal("depth", last.Undo);
        var undone = (await given.Service.UndoAsync(given.Project, last.Version, Ideas.Cancel)).Value!;
        Assert.Equal(
            ("24", false, "width", "depth"),
            (undone.Idea.Changed["width"], undone.Idea.Changed.ContainsKey("depth"), undone.Undo, undone.Redo)
        );
        undone = (await given.Service.UndoAsync(given.Project, undone.Version, Ideas.Cancel)).Value!;
        Assert.Empty(undone.Idea.Changed);
        Assert.Equal(OutcomeKind.Faulty, (await given.Service.UndoAsync(given.Project, undone.Version, Ideas.Cancel)).Kind);
        var again = (await given.Service.RedoAsync(given.Project, undone.Version, Ideas.Cancel)).Value!;
        Assert.Equal("24", again.Idea.Changed["width"]);
        var other = await given.SetAsync("height", "50");
        Assert.Null(other.Redo);
    }

    [Fact]
    public async Task A_slider_that_moves_on_is_one_step()
    {
        await using var given = await Ideas.BeginAsync();
        foreach (var width in new[] { "29", "28", "27" })
        {
            await given.SetAsync("width", width);
            given.Shop.Clock.Advance(TimeSpan.FromSeconds(1));
        }

        var view = await given.ReadAsync();
        view = (await given.Service.UndoAsync(given.Project, view.Version, Ideas.Cancel)).Value!;
        Assert.Empty(view.Idea.Changed);
        Assert.Null(view.Undo);
    }

    [Fact]
    public async Task Another_devices_change_is_not_overwritten()
    {
        await using var given = await Ideas.BeginAsync();
        var read = await given.ReadAsync();
        await given.SetAsync("width", "24");
        var late = await given.Service.SaveAsync(given.Project, read.Idea, read.Version, "width", Ideas.Cancel);
        Assert.Equal(OutcomeKind.Conflict, late.Kind);
        Assert.Equal("24", (await given.ReadAsync()).Idea.Changed["width"]);
    }

    [Fact]
    public async Task Another_design_takes_its_place_and_can_be_taken_back()
    {
        await using var given = await Ideas.BeginAsync();
        await given.SetAsync("width", "24");
        var table = (await given.Service.StartAsync(given.Project, "table", CommandId.New(), Ideas.Cancel)).Value!;
        Assert.Equal(("Table", "start from table"), (table.Idea.Document.Name, table.Undo));
        var back = (await given.Service.UndoAsync(given.Project, table.Version, Ideas.Cancel)).Value!;
        Assert.Equal(("Bookcase", "24"), (back.Idea.Document.Name, back.Idea.Changed["width"]));
    }

    [Fact]
    public async Task A_changed_document_is_stored_whole()
    {
        await using var given = await Ideas.BeginAsync("drawer-chest");
        var view = await given.ReadAsync();
        var document = view.Idea.Document.RemoveFill("bays.fills.0").Split("bays", "divider", 2);
        await given.Service.SaveAsync(given.Project, view.Idea with { Document = document }, view.Version, "split", Ideas.Cancel);
        Assert.Equal(DesignJson.Write(document), DesignJson.Write((await given.ReadAsync()).Idea.Document));
    }
}
