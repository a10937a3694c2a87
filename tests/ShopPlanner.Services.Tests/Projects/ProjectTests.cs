using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

public sealed class ProjectTests : IAsyncLifetime
{
    private TestShop shop = null!;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Theory]
    [InlineData("Boot-room bench", "BB")]
    [InlineData("Tall pantry cupboard, left", "TPC")]
    [InlineData("Hocker", "HO")]
    [InlineData("🪑", "A")]
    [InlineData("מדף", "A")]
    public async Task A_code_is_made_from_the_name(string name, string code) =>
        Assert.Equal(code, (await Some.ProjectAsync(shop, name)).Code);

    [Fact]
    public async Task Codes_differ_for_any_number_of_projects_of_one_name()
    {
        for (var i = 0; i < 40; i++)
            await Some.ProjectAsync(shop, "Bench");
        var codes = (await shop.Projects.ListAsync(cancel: TestShop.Cancel)).Select(project => project.Code).ToList();
        Assert.Equal(40, codes.Distinct().Count());
        Assert.All(codes, code => Assert.True(ProjectCodes.IsCode(code), code));
    }

    [Fact]
    public async Task Newest_come_first_whatever_the_clock_says_and_those_put_away_only_when_asked()
    {
        var first = await Some.ProjectAsync(shop, "First");
        shop.Clock.AdjustTime(new DateTimeOffset(2020, 1, 1, 0, 0, 0, TimeSpan.Zero));
        await Some.ProjectAsync(shop, "Second");
        Assert.Equal(
            ["Second", "First"],
            (await shop.Projects.ListAsync(cancel: TestShop.Cancel)).Select(project => project.Name)
        );
        await shop.Projects.MoveAsync(first.Id, ProjectState.PutAway, TestShop.Cancel);
        Assert.Single(await shop.Projects.ListAsync(cancel: TestShop.Cancel));
        Assert.Equal(2, (await shop.Projects.ListAsync(true, TestShop.Cancel)).Count);
    }

    [Fact]
    public async Task Pieces_and_faulty_rows_are_counted()
    {
        var project = await Some.ProjectAsync(shop);
        await shop.Parts.SaveAsync(
            project.Id,
            [Some.New(Some.Part(quantity: "4")), Some.New(Some.Part(quantity: "")), Some.New(Some.Part("oops"))],
            TestShop.Cancel
        );
        var view = (await shop.Projects.GetAsync(project.Id, TestShop.Cancel))!;
        Assert.Equal((3, 5, 1), (view.PartKinds, view.Pieces, view.FaultyRows));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("a\0b")]
    public async Task A_name_that_is_none_is_refused(string name)
    {
        var rows = shop.CountRows();
        var outcome = await shop.Projects.CreateAsync(name, LengthUnit.Inch, CommandId.New(), TestShop.Cancel);
        Assert.Equal((OutcomeKind.Faulty, nameof(ProjectView.Name)), (outcome.Kind, outcome.Faults.Single().Field));
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task A_change_on_an_old_version_is_a_conflict_and_a_taken_code_is_refused()
    {
        var (bench, stand) = (await Some.ProjectAsync(shop), await Some.ProjectAsync(shop, "Plant stand"));
        Assert.Equal(2, (await shop.Projects.SaveAsync(bench with { Name = "Bench" }, TestShop.Cancel)).Value!.Version);
        var late = await shop.Projects.SaveAsync(bench with { Name = "Seat" }, TestShop.Cancel);
        Assert.Equal((OutcomeKind.Conflict, "Bench"), (late.Kind, late.Faults.Single().Value));
        Assert.Equal(OutcomeKind.Faulty, (await shop.Projects.SaveAsync(stand with { Code = "BB" }, TestShop.Cancel)).Kind);
        Assert.Equal(OutcomeKind.Faulty, (await shop.Projects.SaveAsync(stand with { Code = "b1" }, TestShop.Cancel)).Kind);
    }
}
