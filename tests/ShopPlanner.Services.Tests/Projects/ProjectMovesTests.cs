using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

/// <summary>A project moves with what happens to it, and back with each undo. Three legs of 30 in: the
/// first from an offcut of 41 3/8 in (layout 0), two from a new board of 96 in (layout 1).</summary>
public sealed class ProjectMovesTests : IAsyncLifetime
{
    private const ProjectState Planning = ProjectState.Planning,
        Buying = ProjectState.Buying,
        Cutting = ProjectState.Cutting,
        Building = ProjectState.Building,
        Done = ProjectState.Done;

    private PlannedShop given = null!;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task A_plan_to_buy_for_is_bought_and_a_plan_canceled_is_planned_again()
    {
        await StandsAsync(Planning);
        var plan = (await given.PlanAsync()).Summary.Id;
        await StandsAsync(Buying);
        Assert.True((await given.Shop.Plans.WithdrawAsync(plan, TestShop.Cancel)).Ok);
        await StandsAsync(Planning);
        Assert.True((await given.Shop.Plans.ReinstateAsync(plan, TestShop.Cancel)).Ok);
        await StandsAsync(Buying);
    }

    [Fact]
    public async Task Nothing_to_buy_is_ready_to_cut()
    {
        for (var i = 0; i < 2; i++)
            await given.OffcutAsync("31");
        await given.PlanAsync();
        await StandsAsync(Cutting);
    }

    [Fact]
    public async Task The_first_tick_cuts_and_taking_it_back_does_not()
    {
        var plan = await given.PlanAsync();
        await TickAsync(plan, 1, true);
        await StandsAsync(Cutting);
        await TickAsync(plan, 1, false);
        await StandsAsync(Buying);
    }

    [Fact]
    public async Task All_boards_finished_it_is_built_and_a_board_reopened_is_cut()
    {
        var plan = await CutAllAsync();
        await StandsAsync(Building);
        Assert.True((await ReopenAsync(plan, 0)).Ok);
        await StandsAsync(Cutting);
        await FinishAsync(plan, 0);
        await StandsAsync(Building);
    }

    [Fact]
    public async Task Parts_added_after_all_was_cut_are_planned_and_undo_builds_again()
    {
        await CutAllAsync();
        var parts = given.Shop.Parts;
        Assert.True((await parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("12", "B", "1"))], TestShop.Cancel)).Ok);
        await StandsAsync(Planning);
        Assert.True((await parts.UndoAsync(given.Project.Id, TestShop.Cancel)).Ok);
        await StandsAsync(Building);
        await ChangeAsync(row => row with { Quantity = "4" });
        await StandsAsync(Planning);
        await ChangeAsync(row => row with { Quantity = "2" });
        await StandsAsync(Building);
        await ChangeAsync(row => row with { Length = "30 1/8" });
        await StandsAsync(Planning);
    }

    [Fact]
    public async Task What_was_cut_before_the_plan_for_the_rest_counts()
    {
        var plan = await given.PlanAsync();
        await FinishAsync(plan, 0);
        Assert.True((await given.Shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("12", "B"))], TestShop.Cancel)).Ok);
        var rest = await given.PlanAsync(given.Order(replaces: plan.Summary.Id));
        await StandsAsync(Buying);
        await FinishAllAsync(rest);
        await StandsAsync(Building);
    }

    [Fact]
    public async Task A_row_that_was_wholly_cut_before_the_plan_for_the_rest_counts()
    {
        await ChangeAsync(row => row with { Quantity = "1" });
        Assert.True((await given.Shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("12", "B"))], TestShop.Cancel)).Ok);
        var plan = await given.PlanAsync();
        await FinishAsync(plan, 0);
        var rest = await given.PlanAsync(given.Order(replaces: plan.Summary.Id));
        Assert.Equal("B", rest.Parts[Assert.Single(rest.Request.Parts).Id].Mark);
        await FinishAllAsync(rest);
        await StandsAsync(Building);
    }

    [Fact]
    public async Task A_state_set_by_hand_holds_until_a_cut_moves_it_further()
    {
        await given.PlanAsync();
        await MoveAsync(Cutting);
        await StandsAsync(Cutting, isByHand: true);
        var plan = await ReadPlanAsync();
        await TickAsync(plan, 1, true);
        await StandsAsync(Cutting);
        await FinishAllAsync(plan);
        await StandsAsync(Building);
        Assert.True((await ReopenAsync(plan, 0)).Ok);
        await StandsAsync(Cutting);
    }

    [Fact]
    public async Task Done_is_taken_back_by_what_undoes_it_and_stands_again_when_that_is_undone()
    {
        var plan = await CutAllAsync();
        await MoveAsync(Done);
        Assert.True((await ReopenAsync(plan, 1)).Ok);
        await StandsAsync(Cutting);
        await FinishAsync(plan, 1);
        await StandsAsync(Done, isByHand: true);
        Assert.True((await given.Shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("12", "B"))], TestShop.Cancel)).Ok);
        await StandsAsync(Planning);
        Assert.True((await given.Shop.Parts.UndoAsync(given.Project.Id, TestShop.Cancel)).Ok);
        await StandsAsync(Done, isByHand: true);
    }

    [Fact]
    public async Task Done_and_planned_again_it_is_built_whole_once_more()
    {
        await CutAllAsync();
        await MoveAsync(Done);
        var again = await given.PlanAsync();
        Assert.Equal(3, again.Request.Parts.Single().Quantity);
        Assert.Empty((await given.ReadAsync(again.Summary.Id)).Changes);
        await StandsAsync(Buying);
        Assert.Equal(0, (await ReadAsync()).Standing.Progress.CutsMade);
        await TickAsync(again, 1, true);
        var rest = (await given.Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel)).Value!;
        Assert.Equal((1, 2), (rest.CutAlready, rest.Request.Parts.Single().Quantity));
        Assert.Empty((await given.ReadAsync(again.Summary.Id)).Changes);
    }

    [Fact]
    public async Task Planned_again_and_canceled_what_was_done_is_done()
    {
        await CutAllAsync();
        await MoveAsync(Done);
        var again = await given.PlanAsync();
        Assert.True((await given.Shop.Plans.WithdrawAsync(again.Summary.Id, TestShop.Cancel)).Ok);
        await StandsAsync(Done, isByHand: true);
    }

    [Fact]
    public async Task Built_once_more_it_is_not_done_by_itself()
    {
        await CutAllAsync();
        await MoveAsync(Done);
        await FinishAllAsync(await given.PlanAsync());
        await StandsAsync(Building);
    }

    [Fact]
    public async Task The_state_that_is_told_anyhow_is_not_held()
    {
        await given.PlanAsync();
        await MoveAsync(Cutting);
        await MoveAsync(Buying);
        await StandsAsync(Buying);
        Assert.Equal("", given.Shop.Ask("SELECT coalesce(SetState, '') FROM Projects"));
    }

    [Fact]
    public async Task Archived_it_stays_so_and_restored_it_stands_where_it_is()
    {
        await MoveAsync(ProjectState.PutAway);
        var plan = await given.PlanAsync();
        await StandsAsync(ProjectState.PutAway);
        Assert.True((await given.Shop.Projects.RestoreAsync(given.Project.Id, TestShop.Cancel)).Ok);
        await StandsAsync(Buying);
        await FinishAllAsync(plan);
        await MoveAsync(Done);
        await MoveAsync(ProjectState.PutAway);
        Assert.True((await given.Shop.Projects.RestoreAsync(given.Project.Id, TestShop.Cancel)).Ok);
        await StandsAsync(Done, isByHand: true);
    }

    [Fact]
    public async Task Another_change_of_the_project_leaves_its_state_alone()
    {
        var before = await ReadAsync();
        var plan = await given.PlanAsync();
        await TickAsync(plan, 1, true);
        Assert.True((await given.Shop.Projects.SaveAsync(before with { Name = "Seat" }, TestShop.Cancel)).Ok);
        await StandsAsync(Cutting);
    }

    [Fact]
    public async Task A_state_that_is_none_and_a_project_that_is_gone_are_refused()
    {
        var rows = given.Shop.CountRows();
        var (projects, nobody) = (given.Shop.Projects, Guid.NewGuid());
        Assert.Equal(OutcomeKind.Faulty, (await projects.MoveAsync(given.Project.Id, (ProjectState)9, TestShop.Cancel)).Kind);
        Assert.Equal(OutcomeKind.Missing, (await projects.MoveAsync(nobody, Done, TestShop.Cancel)).Kind);
        Assert.Equal(OutcomeKind.Missing, (await projects.RestoreAsync(nobody, TestShop.Cancel)).Kind);
        Assert.Equal(rows, given.Shop.CountRows());
    }

    [Fact]
    public async Task Progress_is_that_of_all_its_plans()
    {
        var plan = await given.PlanAsync();
        var (cuts, boards) = (plan.Plan.Layouts.Sum(layout => layout.Cuts.Length), plan.Summary.Stocks);
        Assert.Equal(new(0, cuts, 0, boards), (await ReadAsync()).Standing.Progress);
        await FinishAsync(plan, 0);
        var made = plan.Plan.Layouts[0].Cuts.Length;
        Assert.Equal(new(made, cuts, 1, boards), (await ReadAsync()).Standing.Progress);
        Assert.Equal(new(made, cuts, 1, boards), Assert.Single(await PlansAsync()).Progress);
        Assert.True((await given.Shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("12", "B"))], TestShop.Cancel)).Ok);
        var rest = await given.PlanAsync(given.Order(replaces: plan.Summary.Id));
        var left = rest.Plan.Layouts.Sum(layout => layout.Cuts.Length);
        Assert.Equal(new(made, made + left, 1, 1 + rest.Summary.Stocks), (await ReadAsync()).Standing.Progress);
        Assert.Equal(
            (await ReadAsync()).Standing,
            (await given.Shop.Projects.ListAsync(cancel: TestShop.Cancel)).Single().Standing
        );
    }

    private Task<IReadOnlyList<PlanSummary>> PlansAsync() => given.Shop.Plans.ListAsync(cancel: TestShop.Cancel);

    private async Task<PlanView> ReadPlanAsync() => await given.ReadAsync((await PlansAsync()).Single().Id);

    private async Task<ProjectView> ReadAsync() => (await given.Shop.Projects.GetAsync(given.Project.Id, TestShop.Cancel))!;

    private async Task StandsAsync(ProjectState state, bool isByHand = false)
    {
        var standing = (await ReadAsync()).Standing;
        Assert.Equal((state, isByHand), (standing.State, standing.IsByHand));
    }

    private async Task MoveAsync(ProjectState state) =>
        Assert.Equal(state, (await given.Shop.Projects.MoveAsync(given.Project.Id, state, TestShop.Cancel)).Value!.State);

    private async Task ChangeAsync(Func<PartTexts, PartTexts> change)
    {
        var row = (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows[0];
        Assert.True(
            (await given.Shop.Parts.SaveAsync(given.Project.Id, [new(change(row.Texts), row.Version)], TestShop.Cancel)).Ok
        );
    }

    private async Task TickAsync(PlanView plan, int cut, bool made)
    {
        var (bench, id) = (given.Shop.Bench, plan.Summary.Id);
        Assert.True((await bench.SetCutAsync(id, 0, 1, cut, made, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
    }

    private Task<Outcome<BenchView>> ReopenAsync(PlanView plan, int layout) =>
        given.Shop.Bench.ReopenAsync(plan.Summary.Id, layout, 1, Some.Device, CommandId.New(), TestShop.Cancel);

    private async Task<PlanView> CutAllAsync()
    {
        var plan = await given.PlanAsync();
        await FinishAllAsync(plan);
        return plan;
    }

    private async Task FinishAllAsync(PlanView plan)
    {
        for (var layout = 0; layout < plan.Plan.Layouts.Length; layout++)
            await FinishAsync(plan, layout);
    }

    private async Task FinishAsync(PlanView plan, int layout)
    {
        var (bench, finished) = (given.Shop.Bench, new FinishedStock(layout, 1, AllCutsMade: true, []));
        var outcome = await bench.FinishAsync(plan.Summary.Id, finished, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
    }
}
