using System.Collections.Immutable;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>Rows that are wanted only if they come free. Three legs of 30 in from a board of 96 in leave too little for anything;
/// two leave 35 in.</summary>
public sealed class SpareTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private Guid slat;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync(change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        await given.Shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part("10", "S", "5"))], TestShop.Cancel);
        var rows = (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows;
        var legs = rows.Single(row => row.Texts.Mark == "A");
        await given.Shop.Parts.SaveAsync(
            given.Project.Id,
            [new PartEdit(legs.Texts with { Quantity = "2" }, legs.Version)],
            TestShop.Cancel
        );
        slat = rows.Single(row => row.Texts.Mark == "S").Texts.Id;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    // 35 1/4 in of a board at 6.48 are worth 2.38, and three slats of 10 in take all of it. Two leave 15 in to keep, so they take
    // 1.37; one takes 0.68.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.6, 0)]
    [InlineData(0.7, 2)]
    [InlineData(0.9, 3)]
    public async Task Spare_pieces_take_an_offcut_that_is_worth_less(decimal worth, int pieces)
    {
        var plan = await given.PlanAsync(Order(worth));
        Assert.Equal(6.48m, plan.Plan.Cost.Amount);
        Assert.Equal(
            pieces,
            plan.Plan.Layouts.Sum(layout =>
                layout.Copies * layout.Pieces.Count(piece => piece.Part.EndsWith(" S", StringComparison.Ordinal))
            )
        );
        Assert.Single(plan.SpareParts);
        Assert.False(plan.OutOfDate, string.Join("; ", plan.Changes));
        var project = (await given.Shop.Projects.ListAsync(cancel: TestShop.Cancel)).Single();
        Assert.NotEqual(Services.Common.ProjectState.Planning, project.State);
    }

    [Fact]
    public async Task A_plan_of_spare_parts_alone_is_refused()
    {
        var rows = (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows.Select(row => row.Texts.Id);
        var all = rows.ToImmutableSortedDictionary(row => row, _ => 1m);
        var preview = await given.Shop.Plans.PreviewAsync(given.Order() with { Spares = all }, TestShop.Cancel);
        Assert.Contains("are all spare parts", preview.Faults.Single().Message);
    }

    [Fact]
    public async Task A_worth_below_nothing_is_refused()
    {
        var preview = await given.Shop.Plans.PreviewAsync(Order(-1), TestShop.Cancel);
        Assert.Equal("Spares", preview.Faults.Single().Field);
    }

    private PlanOrder Order(decimal worth) =>
        given.Order() with
        {
            Spares = ImmutableSortedDictionary<Guid, decimal>.Empty.Add(slat, worth),
        };
}
