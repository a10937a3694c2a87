using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Tests.Plans;

public sealed class PlanRunTests : IAsyncLifetime
{
    private PlannedShop given = null!;

    private TestShop Shop => given.Shop;

    public async ValueTask InitializeAsync() => given = await PlannedShop.OpenAsync();

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task The_request_says_what_is_wanted_and_what_can_be_had()
    {
        await given.OffcutAsync("41 3/8");
        var request = (await Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel)).Value!.Request;
        Assert.Equal("BB A", Assert.Single(request.Parts).Id);
        Assert.Equal(["B1", given.Store.Prices[0].Id.ToString()], request.Stock.Select(stock => stock.Id));
        Assert.Equal((true, Money.Zero, 1), (request.Stock[0].Offcut, request.Stock[0].Price, request.Stock[0].Quantity));
        Assert.Equal(Length.FromInches(2, 1, 2), request.Stock[1].Width);
        Assert.Equal(Length.FromInches(0, 1, 8), request.Saw.Kerf);
    }

    [Fact]
    public async Task What_is_out_of_stock_or_not_wanted_from_the_bin_is_not_planned_with()
    {
        await given.OffcutAsync("41 3/8");
        var price = given.Store.Prices[0];
        await Shop.Stores.SavePriceAsync(
            given.Store.Id,
            Some.Price() with
            {
                Id = price.Id,
                Version = price.Version,
                InStock = false,
            },
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Equal(
            ["B1"],
            (await Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel)).Value!.Request.Stock.Select(stock => stock.Id)
        );
        Assert.Equal(OutcomeKind.Faulty, (await Shop.Plans.PreviewAsync(given.Order(useBin: false), TestShop.Cancel)).Kind);
    }

    [Fact]
    public async Task Rows_with_faults_are_left_out_and_named()
    {
        await Shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("oops", "C"))], TestShop.Cancel);
        var left = (await Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel)).Value!.LeftOut.Single();
        Assert.Equal(("BB C", "oops"), (left.Field, left.Value));
        Assert.Contains("length", left.Message);
    }

    [Fact]
    public async Task A_project_without_parts_has_nothing_to_plan()
    {
        var empty = await Some.ProjectAsync(Shop, "Plant stand");
        var outcome = await Shop.Plans.StartAsync(given.Order() with { Projects = [empty.Id] }, CommandId.New(), TestShop.Cancel);
        Assert.Equal((OutcomeKind.Faulty, nameof(PlanOrder.Parts)), (outcome.Kind, outcome.Faults.Single().Field));
    }

    [Fact]
    public async Task A_run_stores_the_plan_as_a_snapshot_and_promises_its_offcuts()
    {
        await given.OffcutAsync("41 3/8");
        var plan = await given.PlanAsync();
        Assert.Equal(("Boot-room bench", PlanState.Ready, 2), (plan.Summary.Name, plan.Summary.State, plan.Summary.Stocks));
        Assert.Equal(Money.From(6.48m), plan.Summary.Cost);
        Assert.Equal(64, plan.RequestHash.Length);
        Assert.Equal("A", plan.Parts["BB A"].Mark);
        Assert.Equal(("B1", null), (plan.Stocks["B1"].Tag, plan.Stocks["B1"].Store));
        Assert.Equal("Corner lumber", plan.Stocks[given.Store.Prices[0].Id.ToString()].Store);
        Assert.Equal(plan.Summary.Id, (await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
        Assert.Empty(plan.Changes);
    }

    [Fact]
    public async Task Several_projects_share_one_plan_with_codes_before_the_marks()
    {
        var second = await Some.ProjectAsync(Shop, "Plant stand");
        await Shop.Parts.SaveAsync(second.Id, [Some.New(Some.Part("12", "A", "1"))], TestShop.Cancel);
        var plan = await given.PlanAsync(given.Order() with { Projects = [given.Project.Id, second.Id] });
        Assert.Equal(["BB A", "PS A"], plan.Parts.Values.Select(part => part.Mark).Order());
        Assert.Equal("Boot-room bench, Plant stand", plan.Summary.Name);
    }

    [Fact]
    public async Task A_piece_promised_to_one_plan_is_not_offered_to_the_next()
    {
        await given.OffcutAsync("41 3/8");
        await given.PlanAsync();
        Assert.DoesNotContain("B1", (await given.PlanAsync()).Request.Stock.Select(stock => stock.Id));
    }

    [Fact]
    public async Task A_plan_that_replaces_another_takes_over_its_pieces()
    {
        await given.OffcutAsync("41 3/8");
        var first = await given.PlanAsync();
        var second = await given.PlanAsync(given.Order(replaces: first.Summary.Id));
        Assert.Contains("B1", second.Plan.Layouts.Select(layout => layout.Stock));
        Assert.Equal(PlanState.Withdrawn, (await given.ReadAsync(first.Summary.Id)).Summary.State);
        Assert.Equal(OutcomeKind.Conflict, (await Shop.Plans.ReinstateAsync(first.Summary.Id, TestShop.Cancel)).Kind);
    }

    [Fact]
    public async Task A_plan_given_up_frees_its_pieces_and_may_be_taken_back()
    {
        await given.OffcutAsync("41 3/8");
        var plan = await given.PlanAsync();
        Assert.True((await Shop.Plans.WithdrawAsync(plan.Summary.Id, TestShop.Cancel)).Ok);
        Assert.Null((await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
        Assert.Empty(await Shop.Plans.ListAsync(cancel: TestShop.Cancel));
        Assert.Equal(PlanState.Ready, (await Shop.Plans.ReinstateAsync(plan.Summary.Id, TestShop.Cancel)).Value!.State);
        Assert.Equal(plan.Summary.Id, (await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
    }

    [Fact]
    public async Task A_part_longer_than_any_stock_is_left_unplaced_with_its_reason()
    {
        await Shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("20 ft", "L", "1"))], TestShop.Cancel);
        var plan = await given.PlanAsync();
        Assert.Equal("BB L", Assert.Single(plan.Plan.Unplaced).Part);
    }

    // Between search and storing another plan takes the offcut: the run is done again without it, and the user sees a plan.
    [Fact]
    public async Task A_piece_lost_to_another_plan_during_the_search_makes_the_run_start_again_once()
    {
        var offcut = await given.OffcutAsync("41 3/8");
        given.Planner.Before = (_, _) =>
        {
            if (given.Planner.Runs == 1)
                Shop.Stock.DiscardAsync(offcut, 1, "split", Some.Device, TestShop.Cancel).GetAwaiter().GetResult();
        };
        var plan = await given.PlanAsync();
        Assert.Equal(2, given.Planner.Runs);
        Assert.DoesNotContain("B1", plan.Plan.Layouts.Select(layout => layout.Stock));
    }

    [Fact]
    public async Task A_plan_that_cannot_be_cut_is_refused_and_leaves_nothing()
    {
        await given.OffcutAsync("41 3/8");
        given.Planner.Faults = [new Fault("layouts[0]", "B1", "overlaps")];
        var job = await given.RunAsync(given.Order());
        Assert.Equal((PlanJobState.Failed, "overlaps"), (job.State, job.Faults.Single().Message));
        Assert.Equal((0, 0), (Shop.CountRows()["Plans"], Shop.CountRows()["Promises"]));
    }

    [Fact]
    public async Task A_planner_that_breaks_fails_its_run_alone()
    {
        given.Planner.Before = (_, _) => throw new InvalidOperationException("broken");
        Assert.Equal(PlanJobState.Failed, (await given.RunAsync(given.Order())).State);
        given.Planner.Before = null;
        Assert.Equal(PlanJobState.Done, (await given.RunAsync(given.Order())).State);
    }

    [Fact]
    public async Task A_stopped_run_stores_the_best_so_far_and_tells_its_progress()
    {
        var told = new List<Guid>();
        Shop.Plans.JobChanged += told.Add;
        given.Planner.Before = (_, control) =>
        {
            control.Progress!(new("pine-1x3", Money.From(7), Money.From(6), TimeSpan.FromSeconds(1)));
            control.Cancel.WaitHandle.WaitOne(TimeSpan.FromSeconds(30));
        };
        var job = (await Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Value!;
        while (Shop.Plans.FindJob(job.Id)!.Cost is null)
            await Task.Delay(5, TestShop.Cancel);
        Assert.Equal(Money.From(6), Shop.Plans.FindJob(job.Id)!.Bound);
        Shop.Plans.StopJob(job.Id);
        var end = await given.EndOfAsync(job.Id);
        Assert.Equal(PlanJobState.Done, end.State);
        Assert.NotNull(await Shop.Plans.GetAsync(end.PlanId!.Value, TestShop.Cancel));
        Assert.Contains(job.Id, told);
    }

    [Fact]
    public async Task A_run_stopped_while_waiting_never_begins()
    {
        var hold = new ManualResetEventSlim();
        given.Planner.Before = (_, _) => hold.Wait(TimeSpan.FromSeconds(30));
        var first = (await Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Value!;
        var second = (await Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Value!;
        Shop.Plans.StopJob(second.Id);
        hold.Set();
        await given.EndOfAsync(first.Id);
        Assert.Equal(PlanJobState.Stopped, (await given.EndOfAsync(second.Id)).State);
        Assert.Equal(1, given.Planner.Runs);
    }
}
