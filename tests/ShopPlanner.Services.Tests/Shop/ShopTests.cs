using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Shop;

public sealed class ShopTests : IAsyncLifetime
{
    private TestShop shop = null!;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_new_shop_has_usual_settings_and_keeps_changed_ones()
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        Assert.Equal("1/8", settings.Kerf);
        Assert.True((await shop.Shop.SaveAsync(settings with { Kerf = "3/32", Paper = PaperSize.A4 }, TestShop.Cancel)).Ok);
        var now = await shop.Shop.GetAsync(TestShop.Cancel);
        Assert.Equal(("3/32", PaperSize.A4, 1), (now.Kerf, now.Paper, now.Version));
        Assert.Equal(OutcomeKind.Conflict, (await shop.Shop.SaveAsync(settings, TestShop.Cancel)).Kind);
    }

    [Fact]
    public async Task Every_wrong_setting_is_named_and_none_is_kept()
    {
        var rows = shop.CountRows();
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        var outcome = await shop.Shop.SaveAsync(
            settings with
            {
                Kerf = "-1",
                BoardEndTrim = "NaN",
                KeepBoardLength = "0",
                PlanSeconds = 0,
            },
            TestShop.Cancel
        );
        Assert.Equal(["Kerf", "BoardEndTrim", "KeepBoardLength", "PlanSeconds"], outcome.Faults.Select(fault => fault.Field));
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task A_blade_that_takes_nothing_is_refused()
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        var fault = Assert.Single((await shop.Shop.SaveAsync(settings with { Kerf = "0" }, TestShop.Cancel)).Faults);
        Assert.Equal(("Kerf", "0"), (fault.Field, fault.Value));
    }

    // 1/8 in must not become 1/8 mm because only the unit was switched.
    [Fact]
    public async Task Texts_left_alone_mean_the_same_in_a_new_unit()
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        var now = (
            await shop.Shop.SaveAsync(settings with { Unit = LengthUnit.Millimetre, BoardEndTrim = "10" }, TestShop.Cancel)
        ).Value!;
        Assert.Equal(("1/8 in", "10", "304.8"), (now.Kerf, now.BoardEndTrim, now.KeepBoardLength));
    }

    [Fact]
    public async Task What_saw_and_car_allow_is_kept_and_may_be_left_open_again()
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        Assert.Equal(
            ("", "", "", ""),
            (settings.WidestRip, settings.LongestCrosscut, settings.CarryLongest, settings.CarryWidest)
        );
        var limited = settings with { WidestRip = "24", LongestCrosscut = "12 1/4", CarryLongest = "6 ft", CarryWidest = "40" };
        var now = (await shop.Shop.SaveAsync(limited, TestShop.Cancel)).Value!;
        Assert.Equal(("24", "12 1/4", "6 ft", "40"), (now.WidestRip, now.LongestCrosscut, now.CarryLongest, now.CarryWidest));
        now = (await shop.Shop.SaveAsync(now with { Unit = LengthUnit.Millimetre }, TestShop.Cancel)).Value!;
        Assert.Equal(("609.6", "6 ft"), (now.WidestRip, now.CarryLongest));
        Assert.Equal("", (await shop.Shop.SaveAsync(now with { WidestRip = " " }, TestShop.Cancel)).Value!.WidestRip.Trim());
    }

    [Theory]
    [InlineData("0", "", "", "", "WidestRip")]
    [InlineData("wide", "", "", "", "WidestRip")]
    [InlineData("", "-3", "", "", "LongestCrosscut")]
    [InlineData("", "", "1e9", "", "CarryLongest")]
    [InlineData("", "", "", "4,5", "CarryWidest")]
    [InlineData("", "", "40", "80", "CarryWidest")]
    public async Task A_limit_that_is_none_is_named_and_nothing_is_kept(
        string rip,
        string crosscut,
        string longest,
        string widest,
        string field
    )
    {
        var rows = shop.CountRows();
        var wanted = await shop.Shop.GetAsync(TestShop.Cancel) with
        {
            WidestRip = rip,
            LongestCrosscut = crosscut,
            CarryLongest = longest,
            CarryWidest = widest,
        };
        Assert.Equal(field, Assert.Single((await shop.Shop.SaveAsync(wanted, TestShop.Cancel)).Faults).Field);
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task Nothing_worth_keeping_is_a_setting_too()
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        Assert.True(
            (
                await shop.Shop.SaveAsync(
                    settings with
                    {
                        KeepBoardLength = "",
                        KeepSheetLength = "",
                        KeepSheetWidth = "",
                    },
                    TestShop.Cancel
                )
            ).Ok
        );
    }
}
