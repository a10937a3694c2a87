using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Shop;

namespace ShopPlanner.Services.Tests.Shop;

/// <summary>What the shop cuts with, and what a plan takes from it.</summary>
public sealed class ToolTests : IAsyncLifetime
{
    private TestShop shop = null!;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_new_shop_has_a_table_saw_of_the_usual_kerf_and_no_limits()
    {
        var tools = ShopTools.Of(await shop.Shop.GetAsync(TestShop.Cancel));
        Assert.Equal(new ShopTools(new TableSaw(In("1/8"), null, null), null, null, null), tools);
        Assert.Equal((In("1/8"), null, null), (tools.WidestKerf, tools.WidestRip, tools.LongestCrosscut));
    }

    [Fact]
    public async Task Tools_are_kept_with_their_kerfs_and_mean_the_same_in_a_new_unit()
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        var wanted = settings with
        {
            HasTableSaw = false,
            HasGuideSaw = true,
            GuideKerf = "3/32",
            HasMiterSaw = true,
            MiterKerf = "1/8",
            MiterCrosscut = "12",
            HasHandSaw = true,
            HandKerf = "1/16",
            SetupCards = 2,
        };
        var kept = Sure(await shop.Shop.SaveAsync(wanted, TestShop.Cancel));
        Assert.Equal(wanted with { Version = kept.Version }, kept);
        var turned = Sure(await shop.Shop.SaveAsync(kept with { Unit = LengthUnit.Millimetre }, TestShop.Cancel));
        Assert.Equal("304.8", turned.MiterCrosscut);
        Assert.Equal(ShopTools.Of(kept), ShopTools.Of(turned));
    }

    // A plan made for a thinner cut than the tool's leaves the last piece short.
    [Theory]
    [InlineData(true, true, true, true, "1/8")]
    [InlineData(false, true, true, true, "7/64")]
    [InlineData(false, true, false, true, "3/32")]
    [InlineData(false, false, false, true, "3/64")]
    public async Task A_plan_takes_the_widest_kerf_of_the_tools_in_use(bool table, bool guide, bool miter, bool hand, string kerf)
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel) with
        {
            HasTableSaw = table,
            HasGuideSaw = guide,
            GuideKerf = "3/32",
            HasMiterSaw = miter,
            MiterKerf = "7/64",
            HasHandSaw = hand,
            HandKerf = "3/64",
        };
        Sure(await shop.Shop.SaveAsync(settings, TestShop.Cancel));
        Assert.Equal(In(kerf), (await RequestAsync()).Saw.Kerf);
    }

    [Theory]
    [InlineData(true, "16", false, false, "", "16")]
    [InlineData(true, "16", false, true, "12", "16")]
    [InlineData(true, "8", false, true, "12", "12")]
    [InlineData(true, "8", false, true, "", "8")]
    [InlineData(true, "8", true, true, "12", null)]
    [InlineData(false, "8", false, true, "12", "12")]
    [InlineData(false, "8", false, false, "12", null)]
    public async Task A_plan_crosscuts_what_one_of_the_tools_reaches(
        bool table,
        string crosscut,
        bool guide,
        bool miter,
        string miterCrosscut,
        string? most
    )
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel) with
        {
            HasTableSaw = table,
            LongestCrosscut = crosscut,
            HasGuideSaw = guide,
            HasMiterSaw = miter,
            MiterCrosscut = miterCrosscut,
        };
        Sure(await shop.Shop.SaveAsync(settings, TestShop.Cancel));
        Assert.Equal(most is null ? (Length?)null : In(most), (await RequestAsync()).Saw.LongestCrosscut);
    }

    [Theory]
    [InlineData("0", "", "", "GuideKerf")]
    [InlineData("", "2", "", "MiterKerf")]
    [InlineData("", "", "wide", "MiterCrosscut")]
    public async Task A_tool_that_is_wrong_is_named_and_nothing_is_kept(string guide, string miter, string crosscut, string field)
    {
        var rows = shop.CountRows();
        var wanted = await shop.Shop.GetAsync(TestShop.Cancel) with
        {
            GuideKerf = guide,
            MiterKerf = miter,
            MiterCrosscut = crosscut,
        };
        Assert.Equal(field, Assert.Single((await shop.Shop.SaveAsync(wanted, TestShop.Cancel)).Faults).Field);
        Assert.Equal(rows, shop.CountRows());
    }

    private async Task<CutRequest> RequestAsync()
    {
        var project = await Some.ProjectAsync(shop, "Bench");
        await shop.Stock.AddAsync(Some.Offcut("60"), Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        await shop.Parts.PasteAsync(project.Id, "A\tRail\tpine-1x3\t12\t\t2", CommandId.New(), TestShop.Cancel);
        var order = new PlanOrder([project.Id], null, [], true, true, 1, []);
        var preview = await shop.Plans.PreviewAsync(order, TestShop.Cancel);
        Assert.True(preview.Ok, string.Join("; ", preview.Faults));
        return preview.Value!.Request;
    }

    private static ShopSettings Sure(Outcome<ShopSettings> outcome)
    {
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value!;
    }

    private static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
