using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Packets;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>A plan over a project in inches and one in millimetres: each keeps its figures, and none is rounded into the other's.
/// Three pine legs of 30 in, two poplar rails of 600 mm.</summary>
public sealed class MixedUnitTests : IAsyncLifetime
{
    private const string Poplar = "poplar-1x2";

    private PlannedShop given = null!;
    private PlanView plan = null!;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        var stand = (
            await given.Shop.Projects.CreateAsync("Plant stand", LengthUnit.Millimetre, CommandId.New(), TestShop.Cancel)
        ).Value!;
        await given.Shop.Parts.SaveAsync(
            stand.Id,
            [Some.New(Some.Part("600", "R", "2", Poplar) with { Name = "Rail" })],
            TestShop.Cancel
        );
        await given.Shop.Stores.SavePriceAsync(given.Store.Id, Some.Price(material: Poplar), CommandId.New(), TestShop.Cancel);
        plan = await given.PlanAsync(given.Order() with { Projects = [given.Project.Id, stand.Id] });
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    private int LayoutOf(string material) =>
        plan
            .Plan.Layouts.Select(layout => plan.Request.Stock.Single(stock => stock.Id == layout.Stock).Material)
            .ToList()
            .IndexOf(material);

    [Theory]
    [InlineData(Some.Pine, LengthUnit.Inch)]
    [InlineData(Poplar, LengthUnit.Millimetre)]
    public void A_layout_is_drawn_in_the_unit_of_its_project(string material, LengthUnit unit)
    {
        var index = LayoutOf(material);
        Assert.Equal(unit, plan.UnitOfLayout(index));
        Assert.Equal(unit, PlanPictures.ForLayout(plan, index).Unit);
        Assert.All(plan.Plan.Layouts[index].Pieces, piece => Assert.Equal(unit, plan.UnitOfPart(piece.Part)));
    }

    [Fact]
    public void A_layout_with_parts_of_both_is_in_the_plan_s_unit()
    {
        var (pine, poplar) = (plan.Plan.Layouts[LayoutOf(Some.Pine)], plan.Plan.Layouts[LayoutOf(Poplar)]);
        var both = plan with { Plan = plan.Plan with { Layouts = [pine with { Pieces = [.. pine.Pieces, .. poplar.Pieces] }] } };
        Assert.Equal(plan.Request.Unit, both.UnitOfLayout(0));
    }

    [Fact]
    public async Task A_leftover_is_measured_in_the_unit_that_its_board_is_drawn_in()
    {
        var entries = await given.Shop.Bench.FinishAsync(
            plan.Summary.Id,
            new FinishedStock(LayoutOf(Poplar), 1, true, [new MeasuredLeftover(0, "1150", "", true)]),
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.True(entries.Ok, string.Join("; ", entries.Faults));
        var binned = Assert.Single(await given.Shop.Stock.ListAsync(TestShop.Cancel));
        Assert.Equal(Length.FromMillimetres(1150), binned.Length);
    }

    [Fact]
    public async Task On_paper_the_other_unit_is_named_beside_each_figure()
    {
        var basis = (await Drafts.WantingAsync(given, "")).Draft.Basis;
        basis = basis with { Materials = basis.Materials.SetItem(Poplar, "Poplar 1x2") };
        var model = new PacketBuilder(
            plan,
            new(new DateOnly(2026, 5, 2), Services.Common.PaperSize.Letter, "$", 1, basis)
        ).Build();
        var words = PacketWriter
            .Pages(model)
            .SelectMany(page => page.Drawing.Primitives().OfType<Caption>())
            .Select(caption => caption.Words)
            .ToList();
        Assert.Contains("inches, some mm", words);
        Assert.Contains("lengths in inches, or as marked", words);
        Assert.Contains("600 mm", words);
        Assert.Contains("600 × 38.1 mm", words);
        Assert.Contains("30", words);
        Assert.DoesNotContain(words, word => word.Contains("23 ⅝", StringComparison.Ordinal));
        Assert.DoesNotContain(words, word => word.Contains("just ", StringComparison.Ordinal));
    }
}
