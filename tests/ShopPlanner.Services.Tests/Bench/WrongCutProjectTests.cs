using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>Where a project stands when a cut went wrong, or was left out, at the end.</summary>
public sealed class WrongCutProjectTests : WrongCutTest
{
    [Fact]
    public async Task Found_wrong_when_all_is_cut_it_is_planned_beside_the_plan()
    {
        await FinishAsync(0);
        await FinishAsync(1);
        Assert.Equal(ProjectState.Building, await ProjectAsync());
        var view = await AcceptAsync(Spoiled(2, 1, 0, "29"));
        Assert.Equal(PlanState.Cut, (await Given.ReadAsync(PlanId)).Summary.State);
        Assert.Equal(1, (await Given.ReadAsync(view.RestPlan!.Value)).Request.Parts.Single().Quantity);
        Assert.Equal(ProjectState.Buying, await ProjectAsync());
        Assert.True((await Wrong.UndoAsync(view.Id, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        Assert.Equal(ProjectState.Building, await ProjectAsync());
    }

    [Fact]
    public async Task Noted_when_all_is_cut_the_project_is_no_longer_at_building()
    {
        await FinishAsync(0);
        await FinishAsync(1);
        var noted = await NoteAsync(Spoiled(2, 1, 0, ""));
        Assert.Equal(ProjectState.Planning, await ProjectAsync());
        Assert.True((await Wrong.UndoAsync(noted.Id, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        Assert.Equal(ProjectState.Building, await ProjectAsync());
    }

    // Stopped before its last cut, the board left a leg out.
    [Fact]
    public async Task A_piece_left_out_at_the_end_keeps_the_project_from_building()
    {
        await FinishAsync(0);
        await TickAsync(1, 1);
        await FinishAsync(1, allCutsMade: false);
        Assert.Equal(PlanState.Cut, (await Given.ReadAsync(PlanId)).Summary.State);
        Assert.Equal(ProjectState.Planning, await ProjectAsync());
        await TickAsync(1, 2);
        Assert.Equal(ProjectState.Building, await ProjectAsync());
    }

    [Fact]
    public async Task The_rest_of_what_was_left_out_cut_the_project_is_at_building()
    {
        await FinishAsync(0);
        await FinishAsync(1, allCutsMade: false);
        var rest = (await Given.PlanAsync(Given.Order())).Summary.Id;
        for (var layout = 0; layout < (await Given.ReadAsync(rest)).Plan.Layouts.Length; layout++)
            Assert.True(
                (
                    await Given.Shop.Bench.FinishAsync(
                        rest,
                        new(layout, 1, true, []),
                        Some.Device,
                        CommandId.New(),
                        TestShop.Cancel
                    )
                ).Ok
            );
        Assert.Equal(ProjectState.Building, await ProjectAsync());
    }
}
