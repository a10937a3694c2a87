using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Trash;

namespace ShopPlanner.Services.Tests.Trash;

/// <summary>Projects in the trash: gone everywhere, and back as they were.</summary>
public sealed class TrashTests : IAsyncLifetime
{
    private PlannedShop given = null!;

    private TestShop Shop => given.Shop;

    private ITrashService Trash => Shop.Get<ITrashService>();

    private Guid Project => given.Project.Id;

    // The plan cuts offcut B1 of 41 3/8 with one leg, then a new board of 96 with two.
    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task A_deleted_project_is_nowhere_but_in_the_trash_and_comes_back_as_it_was()
    {
        await Shop.Get<IIdeaService>().StartAsync(Project, "bookcase", CommandId.New(), TestShop.Cancel);
        var (view, sheet) = (await ViewAsync(), (await Shop.Parts.GetAsync(Project, TestShop.Cancel))!);
        var gone = await DeleteAsync();
        Assert.Equal(
            ("Boot-room bench", "BB", 1, TimeSpan.FromDays(30)),
            (gone.Name, gone.Code, gone.Parts, gone.GoneUtc - gone.DeletedUtc)
        );
        Assert.Empty(await Shop.Projects.ListAsync(true, TestShop.Cancel));
        Assert.Null(await Shop.Projects.GetAsync(Project, TestShop.Cancel));
        Assert.Null(await Shop.Parts.GetAsync(Project, TestShop.Cancel));
        Assert.Null(await Shop.Get<IIdeaService>().GetAsync(Project, TestShop.Cancel));
        Assert.Equal(gone, Assert.Single(await Trash.ListAsync(TestShop.Cancel)));

        await RestoreAsync();
        Assert.Equal(view, await ViewAsync() with { Version = view.Version });
        var back = (await Shop.Parts.GetAsync(Project, TestShop.Cancel))!;
        Assert.Equal(sheet.Rows.Select(row => row.Texts), back.Rows.Select(row => row.Texts));
        Assert.Equal(sheet.UndoStep, back.UndoStep);
        Assert.Equal("Bookcase", (await Shop.Get<IIdeaService>().GetAsync(Project, TestShop.Cancel))!.Idea.Document.Name);
        Assert.Empty(await Trash.ListAsync(TestShop.Cancel));
    }

    [Fact]
    public async Task What_another_page_still_does_to_a_deleted_project_is_refused()
    {
        var sheet = (await Shop.Parts.GetAsync(Project, TestShop.Cancel))!;
        var idea = (await Shop.Get<IIdeaService>().StartAsync(Project, "bookcase", CommandId.New(), TestShop.Cancel)).Value!;
        await DeleteAsync();
        var before = Shop.CountRows();
        OutcomeKind[] kinds =
        [
            (await Shop.Parts.SaveAsync(Project, [Some.New(Some.Part())], TestShop.Cancel)).Kind,
            (await Shop.Parts.UndoAsync(Project, sheet.UndoStep!.Value, TestShop.Cancel)).Kind,
            (await Shop.Projects.SaveAsync(given.Project, TestShop.Cancel)).Kind,
            (await Shop.Get<IIdeaService>().SaveAsync(Project, idea.Idea, idea.Version, "width", TestShop.Cancel)).Kind,
            (await Shop.Get<IIdeaService>().UndoAsync(Project, idea.Version, TestShop.Cancel)).Kind,
            (await Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Kind,
        ];
        Assert.Equal(
            [
                OutcomeKind.Missing,
                OutcomeKind.Missing,
                OutcomeKind.Missing,
                OutcomeKind.Missing,
                OutcomeKind.Missing,
                OutcomeKind.Faulty,
            ],
            kinds
        );
        Assert.Equal(before, Shop.CountRows());
    }

    [Fact]
    public async Task Its_letters_stay_its_own()
    {
        await DeleteAsync();
        var other = await Some.ProjectAsync(Shop);
        Assert.NotEqual("BB", other.Code);
        var refused = await Shop.Projects.SaveAsync(other with { Code = "BB" }, TestShop.Cancel);
        Assert.Contains("Boot-room bench, which is in the trash", refused.Faults.Single().Message, StringComparison.Ordinal);
        await RestoreAsync();
        Assert.Equal("BB", (await ViewAsync()).Code);
    }

    [Fact]
    public async Task Its_open_plan_is_canceled_frees_its_pieces_and_comes_back_with_it()
    {
        var plan = (await given.PlanAsync()).Summary;
        var preview = (await Trash.PreviewAsync(Project, TestShop.Cancel))!;
        Assert.Equal((plan.Id, 0, 1), (preview.Canceled.Single().Id, preview.Kept.Length, preview.Freed));
        Assert.Equal(1, (await DeleteAsync()).Plans);
        Assert.Equal(PlanState.Withdrawn, await StateAsync(plan.Id));
        Assert.Null((await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
        var refused = await Shop.Plans.ReinstateAsync(plan.Id, TestShop.Cancel);
        Assert.Contains("restore the project from the trash", refused.Faults.Single().Message, StringComparison.Ordinal);
        Assert.Equal(Project, Assert.Single(await Trash.ListOfPlanAsync(plan.Id, TestShop.Cancel)).Id);

        var back = await RestoreAsync();
        Assert.Equal(plan.Id, back.Reinstated.Single().Id);
        Assert.Equal(PlanState.Ready, await StateAsync(plan.Id));
        Assert.Equal(plan.Id, (await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
    }

    [Fact]
    public async Task A_plan_whose_piece_was_taken_stays_canceled_and_says_who_has_it()
    {
        var plan = (await given.PlanAsync()).Summary.Id;
        var other = await Some.ProjectAsync(Shop, "Plant stand");
        await Shop.Parts.SaveAsync(other.Id, [Some.New(Some.Part("30", "A", "1"))], TestShop.Cancel);
        await DeleteAsync();
        await given.PlanAsync(given.Order() with { Projects = [other.Id] });
        var back = await RestoreAsync();
        var still = Assert.Single(back.StillCanceled);
        Assert.Equal((plan, "B1", "Plant stand"), (still.Plan.Id, still.Why.Single().Field, still.Why.Single().Value));
        Assert.Equal(PlanState.Withdrawn, await StateAsync(plan));
        Assert.NotNull(await Shop.Projects.GetAsync(Project, TestShop.Cancel));
    }

    [Fact]
    public async Task A_half_cut_board_stays_promised_and_is_finished_after_the_project_came_back()
    {
        var plan = (await given.PlanAsync()).Summary.Id;
        await TickAsync(plan, CommandId.New());
        Assert.Equal("B1", (await Trash.PreviewAsync(Project, TestShop.Cancel))!.HalfCut.Single());
        await DeleteAsync();
        Assert.Equal(plan, (await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
        var refused = await TickAsync(plan, CommandId.New());
        Assert.Contains("restore the project from the trash", refused.Faults.Single().Message, StringComparison.Ordinal);

        Assert.Single((await RestoreAsync()).Reinstated);
        Assert.Equal(PlanState.Cutting, await StateAsync(plan));
        Assert.True((await Shop.Bench.GetAsync(plan, TestShop.Cancel))!.Stocks[0].Cuts[0].Made);
        Assert.True((await FinishAsync(plan)).Ok);
    }

    [Fact]
    public async Task A_plan_that_covers_another_project_stays_until_that_one_is_deleted_too()
    {
        var other = await Some.ProjectAsync(Shop, "Plant stand");
        await Shop.Parts.SaveAsync(other.Id, [Some.New(Some.Part("20", "A", "1"))], TestShop.Cancel);
        var plan = (await given.PlanAsync(given.Order() with { Projects = [Project, other.Id] })).Summary.Id;
        var preview = (await Trash.PreviewAsync(Project, TestShop.Cancel))!;
        Assert.Equal((0, plan), (preview.Canceled.Length, preview.Kept.Single().Id));
        await DeleteAsync();
        var view = await given.ReadAsync(plan);
        Assert.Equal(PlanState.Ready, view.Summary.State);
        Assert.Contains("Boot-room bench was deleted: plan again to leave its parts out", view.Changes);
        Assert.Equal(plan, (await Shop.Stock.ListAsync(TestShop.Cancel)).Single().PromisedPlanId);
        await Trash.DeleteAsync(other.Id, TestShop.Cancel);
        Assert.Equal(PlanState.Withdrawn, await StateAsync(plan));
        Assert.Empty((await RestoreAsync()).Reinstated);
        Assert.Single((await Trash.RestoreAsync(other.Id, TestShop.Cancel)).Value!.Reinstated);
        Assert.Empty((await given.ReadAsync(plan)).Changes);
    }

    [Fact]
    public async Task A_plan_that_was_made_while_its_project_was_deleted_is_not_stored()
    {
        var (draft, plan) = await Drafts.WantingAsync(given, "B1");
        await DeleteAsync();
        var outcome = await Shop.Get<PlanStorage>().StoreAsync(draft, plan, "test", null, TestShop.Cancel);
        Assert.Equal((OutcomeKind.Conflict, "Boot-room bench"), (outcome.Kind, outcome.Faults.Single().Value));
        Assert.Equal((0, 0), (Shop.CountRows()["Plans"], Shop.CountRows()["Promises"]));
    }

    [Fact]
    public async Task Deleted_and_restored_twice_it_is_once()
    {
        Assert.Equal(await DeleteAsync(), await DeleteAsync());
        await RestoreAsync();
        Assert.Empty((await RestoreAsync()).StillCanceled);
        Assert.Equal(OutcomeKind.Missing, (await Trash.DeleteAsync(Guid.NewGuid(), TestShop.Cancel)).Kind);
        Assert.Equal(OutcomeKind.Missing, (await Trash.RestoreAsync(Guid.NewGuid(), TestShop.Cancel)).Kind);
        Assert.Null(await Trash.PreviewAsync(Guid.NewGuid(), TestShop.Cancel));
    }

    private async Task<TrashedProject> DeleteAsync()
    {
        var outcome = await Trash.DeleteAsync(Project, TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private async Task<RestoredProject> RestoreAsync()
    {
        var outcome = await Trash.RestoreAsync(Project, TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private async Task<Services.Projects.ProjectView> ViewAsync() => (await Shop.Projects.GetAsync(Project, TestShop.Cancel))!;

    private async Task<PlanState> StateAsync(Guid plan) => (await given.ReadAsync(plan)).Summary.State;

    private Task<Outcome<Done>> TickAsync(Guid plan, CommandId id) =>
        Shop.Bench.SetCutAsync(plan, 0, 1, 1, true, Some.Device, id, TestShop.Cancel);

    private Task<Outcome<Services.Bench.BenchView>> FinishAsync(Guid plan) =>
        Shop.Bench.FinishAsync(plan, new(0, 1, true, [new(0, "11", "", true)]), Some.Device, CommandId.New(), TestShop.Cancel);
}
