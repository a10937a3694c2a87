using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>Planning what is not cut yet, after the cutting has begun. Three legs of 30 in: the first from an offcut of 41 3/8 in (board
/// 1), two from a new board of 96 in (board 2).</summary>
public sealed class RestTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private Guid plan;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
        plan = (await given.PlanAsync()).Summary.Id;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task What_is_cut_is_left_out_and_the_marks_go_on()
    {
        await FinishAsync(0);
        var preview = (await given.Shop.Plans.PreviewAsync(given.Order(replaces: plan), TestShop.Cancel)).Value!;
        Assert.Equal((2, 1), (preview.Request.Parts.Single().Quantity, preview.CutAlready));
        var rest = await given.PlanAsync(given.Order(replaces: plan));
        Assert.Equal(["A2", "A3"], new PlanMarks(rest).Placed(rest.Request.Parts[0].Id));
        Assert.Equal(PlanState.Withdrawn, (await given.ReadAsync(plan)).Summary.State);
        Assert.Empty(rest.Changes);
    }

    [Fact]
    public async Task A_cut_taken_back_is_to_be_made_again()
    {
        await TickAsync(1, 1, true);
        Assert.Equal(2, await WantedAsync());
        await TickAsync(1, 1, false);
        Assert.Equal(3, await WantedAsync());
    }

    [Fact]
    public async Task Stopped_in_the_middle_of_a_board_the_piece_that_was_freed_counts_and_the_other_does_not()
    {
        await TickAsync(1, 1, true);
        var view = (await given.Shop.Bench.GetAsync(plan, TestShop.Cancel))!;
        var left = Assert.Single(Remaining.Of(view, view.Stocks[1], allCutsMade: false));
        Assert.Equal((-1, "65 7/8"), (left.Index, Core.Measures.LengthFormat.Exact(left.Length, Some.Inch)));
        await FinishAsync(1, allCutsMade: false);
        Assert.Equal(2, await WantedAsync());
        Assert.Equal(
            [true, false],
            (await given.Shop.Bench.GetAsync(plan, TestShop.Cancel))!.Stocks[1].Cuts.Select(cut => cut.Made)
        );
    }

    [Fact]
    public async Task A_part_whose_size_changed_is_not_cut_yet()
    {
        await FinishAsync(0);
        await ChangeAsync(length: "29", quantity: "3");
        Assert.Equal(3, await WantedAsync());
    }

    [Fact]
    public async Task More_pieces_wanted_are_more_to_cut()
    {
        await FinishAsync(0);
        await ChangeAsync(length: "30", quantity: "5");
        Assert.Equal(4, await WantedAsync());
        Assert.Contains("is now needed 5 times, not 3 times", Assert.Single((await given.ReadAsync(plan)).Changes));
    }

    [Fact]
    public async Task When_all_is_cut_there_is_nothing_to_plan_unless_it_is_to_be_cut_again()
    {
        await FinishAsync(0);
        await FinishAsync(1);
        var nothing = await given.Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel);
        Assert.Equal((OutcomeKind.Faulty, "Parts"), (nothing.Kind, nothing.Faults.Single().Field));
        Assert.Contains("are all cut already", nothing.Faults.Single().Message);
        var again = await given.PlanAsync(given.Order() with { CutAgain = true });
        Assert.Equal(3, again.Request.Parts.Single().Quantity);
        Assert.Equal(["A1", "A2", "A3"], new PlanMarks(again).Placed(again.Request.Parts[0].Id));
    }

    [Fact]
    public async Task A_project_that_is_finished_is_built_again_whole()
    {
        await FinishAsync(0);
        await given.Shop.Plans.WithdrawAsync(plan, TestShop.Cancel);
        await given.Shop.Projects.MoveAsync(given.Project.Id, ProjectState.Done, TestShop.Cancel);
        Assert.Equal(3, await WantedAsync());
    }

    [Fact]
    public async Task A_board_that_is_begun_holds_its_plan()
    {
        await TickAsync(1, 1, true);
        var withdrawn = await given.Shop.Plans.WithdrawAsync(plan, TestShop.Cancel);
        var replaced = await given.Shop.Plans.StartAsync(given.Order(replaces: plan), CommandId.New(), TestShop.Cancel);
        Assert.Equal((OutcomeKind.Faulty, OutcomeKind.Faulty), (withdrawn.Kind, replaced.Kind));
        Assert.StartsWith("2 of ", withdrawn.Faults.Single().Value, StringComparison.Ordinal);
        Assert.Equal("Replaces", replaced.Faults.Single().Field);
        await FinishAsync(1, allCutsMade: false);
        Assert.True((await given.Shop.Plans.WithdrawAsync(plan, TestShop.Cancel)).Ok);
        Assert.Null((await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single(piece => piece.Tag == "B1").PromisedPlanId);
    }

    [Fact]
    public async Task Taken_up_again_a_plan_goes_on_where_it_was_cut()
    {
        await FinishAsync(0);
        await given.Shop.Plans.WithdrawAsync(plan, TestShop.Cancel);
        Assert.True((await given.Shop.Plans.ReinstateAsync(plan, TestShop.Cancel)).Ok);
        var view = await given.ReadAsync(plan);
        Assert.Equal(PlanState.Cutting, view.Summary.State);
        Assert.Empty(view.Changes);
    }

    [Fact]
    public async Task A_plan_says_when_its_parts_were_cut_with_another()
    {
        var other = await given.PlanAsync(given.Order(useBin: false));
        await FinishAsync(0);
        Assert.Contains(
            "part A was cut once in another plan since",
            Assert.Single((await given.ReadAsync(other.Summary.Id)).Changes)
        );
    }

    private async Task<int> WantedAsync() =>
        (await given.Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel)).Value!.Request.Parts.Single().Quantity;

    private async Task ChangeAsync(string length, string quantity)
    {
        var row = (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows[0];
        var changed = row.Texts with { Length = length, Quantity = quantity };
        await given.Shop.Parts.SaveAsync(given.Project.Id, [new(changed, row.Version)], TestShop.Cancel);
    }

    private Task<Outcome<Done>> TickAsync(int layout, int cut, bool made) =>
        given.Shop.Bench.SetCutAsync(plan, layout, 1, cut, made, Some.Device, CommandId.New(), TestShop.Cancel);

    private async Task FinishAsync(int layout, bool allCutsMade = true)
    {
        var finished = new FinishedStock(layout, 1, allCutsMade, []);
        var outcome = await given.Shop.Bench.FinishAsync(plan, finished, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
    }
}
