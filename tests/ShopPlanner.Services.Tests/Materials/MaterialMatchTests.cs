using ShopPlanner.Core.Materials;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Materials;

/// <summary>What people type for a material.</summary>
public sealed class MaterialMatchTests
{
    private static readonly string[] Store = [.. MaterialCatalogue.StoreMaterials.Select(material => material.Name)];

    [Theory]
    [InlineData("Pine 1x12", "Pine 1x12")]
    [InlineData("1x12 pine", "Pine 1x12")]
    [InlineData("pine 1 x 12", "Pine 1x12")]
    [InlineData("PINE 1 × 12", "Pine 1x12")]
    [InlineData("pine, 1 by 12", "Pine 1x12")]
    [InlineData("1x3 pine board", "Pine 1x3")]
    [InlineData("1x4x8 poplar", "Poplar 1x4")]
    [InlineData("2x4x8' fir", "Douglas-fir 2x4")]
    [InlineData("doug fir 2x6", "Douglas-fir 2x6")]
    [InlineData("5/4x6 cedar", "Cedar 5/4x6")]
    [InlineData("spruce 2x10", "Whitewood 2x10")]
    [InlineData("Birch ply 3/4", "Birch plywood 3/4 in")]
    [InlineData("3/4 birch plywood", "Birch plywood 3/4 in")]
    [InlineData("3/4\" birch ply", "Birch plywood 3/4 in")]
    [InlineData(".75 birch ply", "Birch plywood 3/4 in")]
    [InlineData("18mm birch ply", "Birch plywood 18 mm")]
    [InlineData("birch ply 18", "Birch plywood 18 mm")]
    [InlineData("MDF 3/4", "MDF 3/4 in")]
    [InlineData("3/4-inch MDF", "MDF 3/4 in")]
    [InlineData("mdf 12 mm", "MDF 12 mm")]
    [InlineData("particle board", "Particleboard 3/4 in")]
    public void Words_in_any_order_find_the_one_that_is_meant(string typed, string meant) =>
        Assert.Equal([meant], MaterialMatch.Find(typed, Store, name => name));

    [Theory]
    [InlineData("3/4 plywood", "Birch plywood 3/4 in", "Red oak plywood 3/4 in", "Maple plywood 3/4 in")]
    [InlineData("2x4", "Whitewood 2x4", "Douglas-fir 2x4", "Cedar 2x4")]
    [InlineData("1x8", "Pine 1x8", "Poplar 1x8", "Red oak 1x8")]
    public void What_several_may_be_offers_those(string typed, params string[] few) =>
        Assert.Equal(few.Order(), MaterialMatch.Find(typed, Store, name => name).Order());

    [Theory]
    [InlineData("")]
    [InlineData("walnut 1x4")]
    [InlineData("pine 1x5")]
    [InlineData("birch ply 5/8")]
    public void What_is_not_there_finds_nothing(string typed) => Assert.Empty(MaterialMatch.Find(typed, Store, name => name));

    [Fact]
    public void The_same_words_win_over_more_words() =>
        Assert.Equal(["Pine 1x4"], MaterialMatch.Find("1x4 pine", ["Pine 1x4 clear", "Pine 1x4", "Pine 1x6"], name => name));

    [Fact]
    public async Task Parts_prices_and_pieces_take_it_and_keep_what_was_meant()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var part = Some.Part(material: "1 x 3 pine");
        var sheet = await shop.Parts.SaveAsync(project.Id, [Some.New(part)], TestShop.Cancel);
        Assert.Equal("Pine 1x3", sheet.Value!.Rows[0].Texts.Material);
        var store = await Some.StoreAsync(shop, Some.Price(material: "3/4 MDF", width: "48"));
        Assert.Equal("MDF 3/4 in", store.Prices.Single().MaterialName);
        var added = await shop.Stock.AddAsync(
            Some.Offcut("20", material: "pine 1x4"),
            Some.Inch,
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Equal("Pine 1x4", added.Value!.Single().MaterialName);
    }

    // A new row that is sent again, because its answer was lost, is the same row.
    [Fact]
    public async Task A_row_sent_twice_is_no_conflict()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var edit = Some.New(Some.Part(material: "1x3 pine", mark: "A"));
        Assert.True((await shop.Parts.SaveAsync(project.Id, [edit], TestShop.Cancel)).Ok);
        var again = await shop.Parts.SaveAsync(project.Id, [edit], TestShop.Cancel);
        Assert.True(again.Ok, string.Join("; ", again.Faults));
    }

    [Fact]
    public async Task What_may_be_meant_is_told_and_what_is_nowhere_too()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        PartEdit[] edits = [Some.New(Some.Part(material: "2x4")), Some.New(Some.Part(material: "walnut 1x4"))];
        var rows = (await shop.Parts.SaveAsync(project.Id, edits, TestShop.Cancel)).Value!.Rows;
        Assert.Equal("could be Cedar 2x4, Douglas-fir 2x4 or Whitewood 2x4: choose one", rows[0].Faults.Single().Message);
        Assert.Equal("isn't in your materials list: choose one from the list, or add your own", rows[1].Faults.Single().Message);
    }
}
