using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Tests.Materials;

public sealed class MaterialTests : IAsyncLifetime
{
    private TestShop shop = null!;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_new_shop_knows_what_stores_stock_with_true_sizes()
    {
        var all = await shop.Materials.ListAsync(TestShop.Cancel);
        Assert.Equal(MaterialCatalogue.StoreMaterials.Length, all.Count);
        var pine = all.Single(material => material.Id == "pine-1x3");
        Assert.Equal((Length.FromInches(0, 3, 4), Length.FromInches(2, 1, 2), false), (pine.Thickness, pine.Width, pine.Own));
        Assert.Equal(all.OrderBy(material => material.Form), all);
    }

    [Fact]
    public async Task An_own_material_is_added_changed_and_understood_by_name()
    {
        var added = (
            await shop.Materials.SaveAsync(
                new(null, "Barn  oak", StockForm.Board, "7/8", "5 1/4"),
                Some.Inch,
                CommandId.New(),
                TestShop.Cancel
            )
        ).Value!;
        Assert.Equal(("own-barn-oak", "Barn oak", true), (added.Id, added.Name, added.Own));
        var changed = (
            await shop.Materials.SaveAsync(
                new(added.Id, "Barn oak", StockForm.Board, "1", "5 1/4"),
                Some.Inch,
                CommandId.New(),
                TestShop.Cancel
            )
        ).Value!;
        Assert.Equal(Length.FromInches(1), changed.Thickness);
        var project = await Some.ProjectAsync(shop);
        var sheet = (
            await shop.Parts.SaveAsync(project.Id, [Some.New(Some.Part(material: " barn OAK"))], TestShop.Cancel)
        ).Value!;
        Assert.Equal((added.Id, "Barn oak"), (sheet.Rows[0].Part!.Material, sheet.Rows[0].MaterialName));
    }

    [Fact]
    public async Task A_name_that_is_taken_or_a_size_that_is_none_is_refused()
    {
        var rows = shop.CountRows();
        Assert.Equal(nameof(MaterialEdit.Name), await FaultAsync(new(null, "pine 1×3", StockForm.Board, "3/4", "2")));
        Assert.Equal(nameof(MaterialEdit.Thickness), await FaultAsync(new(null, "Mine", StockForm.Board, "0", "2")));
        Assert.Equal(nameof(MaterialEdit.Width), await FaultAsync(new(null, "Mine", StockForm.Board, "3/4", "")));
        Assert.Equal(nameof(MaterialEdit.Id), await FaultAsync(new("pine-1x3", "Pine 1x3", StockForm.Board, "1", "3")));
        Assert.Equal(rows, shop.CountRows());
    }

    private async Task<string> FaultAsync(MaterialEdit edit)
    {
        var outcome = await shop.Materials.SaveAsync(edit, Some.Inch, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        return outcome.Faults.Single().Field;
    }
}
