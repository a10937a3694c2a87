using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Shop;
using ShopPlanner.Web.Features.Shop;

namespace ShopPlanner.Web.Tests.Shop;

public sealed class ShopPageTests : PageContext
{
    private static readonly string[] Labels =
    [
        "Table saw: kerf",
        "Table saw: widest rip",
        "Table saw: longest crosscut",
        "Track or circular saw: kerf",
        "Miter saw: kerf",
        "Miter saw: widest board",
        "Hand saw: kerf",
        "Car: longest piece",
        "Car: widest sheet",
        "Squaring a board's end",
        "Edge trim",
        "Board: shortest length",
        "Sheet: shortest long side",
        "Sheet: shortest short side",
        "Currency sign",
    ];

    // No two settings are alike, so that none can stand for another.
    private static readonly ShopSettings Distinct = new(
        LengthUnit.Inch,
        "1/8",
        "1/2",
        "1/4",
        "12",
        "14",
        "6",
        PaperSize.Letter,
        "$",
        10,
        1
    )
    {
        WidestRip = "24",
        LongestCrosscut = "13 1/4",
        HasGuideSaw = true,
        GuideKerf = "3/32",
        HasMiterSaw = true,
        MiterKerf = "5/64",
        MiterCrosscut = "11 7/8",
        HasHandSaw = true,
        HandKerf = "1/32",
        CarryLongest = "6 ft",
        CarryWidest = "40",
    };

    private readonly FakeShop shop = new();

    public static TheoryData<string> Fields() => [.. Labels];

    public ShopPageTests()
    {
        Services.AddSingleton<IShopService>(shop);
        Services.AddSingleton<IMaterialService>(new NoMaterials());
        ComponentFactories.AddStub<Copies>();
    }

    [Fact]
    public async Task A_right_setting_is_saved_as_it_is_left()
    {
        var page = Render<ShopPage>();
        await Named(page, "Table saw: kerf").TypedAsync("3/32");
        Assert.Equal("3/32", shop.Settings.Kerf);
        var field = Named(page, "Table saw: kerf");
        Assert.Equal(("3/32", "3/32"), (field.GetAttribute("data-kept"), field.GetAttribute("data-shown")));
    }

    [Fact]
    public async Task A_wrong_setting_is_marked_beside_its_field_and_nothing_is_saved()
    {
        var page = Render<ShopPage>();
        await Named(page, "Table saw: kerf").TypedAsync("thick");
        var field = Named(page, "Table saw: kerf");
        Assert.Equal(("true", "thick"), (field.GetAttribute("aria-invalid"), field.GetAttribute("data-shown")));
        Assert.Contains(
            "‘thick’ is not a length",
            page.Find("#" + field.GetAttribute("aria-describedby")).TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("1/8", shop.Settings.Kerf);
        Assert.Equal("1/8", field.GetAttribute("data-kept"));
    }

    [Fact]
    public void Each_setting_is_shown_in_its_own_field()
    {
        shop.Settings = Distinct;
        var page = Render<ShopPage>();
        Assert.Equal(Texts(Distinct), Labels.Select(label => Named(page, label).GetAttribute("data-shown")!));
        Assert.Contains("Your saw's manual comes first", page.Find(".mind").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Fields))]
    public async Task What_is_typed_changes_its_own_setting_and_no_other(string label)
    {
        shop.Settings = Distinct;
        var page = Render<ShopPage>();
        await Named(page, label).TypedAsync("15/16");
        Assert.Equal("15/16", Named(page, label).GetAttribute("data-kept"));
        Assert.Equal(Labels.Select((one, at) => one == label ? "15/16" : Texts(Distinct)[at]), Texts(shop.Settings));
    }

    [Fact]
    public async Task A_tool_that_is_ticked_asks_for_its_kerf_and_one_that_is_not_asks_for_nothing()
    {
        var page = Render<ShopPage>();
        Assert.DoesNotContain("Miter saw: kerf", page.Markup, StringComparison.Ordinal);
        await page.Find("input[data-field='miter saw']").TypedAsync("true");
        Assert.True(shop.Settings.HasMiterSaw);
        await Named(page, "Miter saw: widest board").TypedAsync("12");
        Assert.Equal("12", shop.Settings.MiterCrosscut);
        await page.Find("input[data-field='table saw']").TypedAsync("false");
        Assert.False(shop.Settings.HasTableSaw);
        Assert.DoesNotContain("Table saw: kerf", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_measured_kerf_is_shown_with_its_working_and_stored_for_its_saw()
    {
        var page = Render<ShopPage>();
        await Named(page, "Saw").TypedAsync("Miter saw");
        await Named(page, "Scrap before the cuts").TypedAsync("12");
        await Named(page, "All pieces together, after").TypedAsync("11 17/32");
        Assert.Contains("÷", page.Find(".measure-kerf .formula").TextContent, StringComparison.Ordinal);
        await Named(page, "Use this kerf").PressAsync();
        Assert.Equal(("1/8", true, "3/32"), (shop.Settings.Kerf, shop.Settings.HasMiterSaw, shop.Settings.MiterKerf));
    }

    [Fact]
    public async Task A_kerf_that_cannot_be_is_marked_and_not_stored()
    {
        var page = Render<ShopPage>();
        await Named(page, "Scrap before the cuts").TypedAsync("12");
        await Named(page, "All pieces together, after").TypedAsync("13");
        await Named(page, "Use this kerf").PressAsync();
        Assert.Equal("true", Named(page, "All pieces together, after").GetAttribute("aria-invalid"));
        Assert.Equal(1, shop.Settings.Version);
    }

    [Fact]
    public async Task An_option_that_is_none_is_not_called_stored()
    {
        var page = Render<ShopPage>();
        await Named(page, "Paper").TypedAsync("Papyrus");
        Assert.Equal(("Letter", "Papyrus"), (Kept("data-kept"), Kept("data-shown")));
        Assert.Equal(PaperSize.Letter, shop.Settings.Paper);

        string? Kept(string attribute) => Named(page, "Paper").GetAttribute(attribute);
    }

    [Fact]
    public async Task Seconds_that_are_no_number_are_marked_too()
    {
        var page = Render<ShopPage>();
        await Named(page, "Keep searching for up to").TypedAsync("ten");
        Assert.Equal("true", Named(page, "Keep searching for up to").GetAttribute("aria-invalid"));
        Assert.Equal(10, shop.Settings.PlanSeconds);
    }

    [Fact]
    public async Task Another_devices_change_of_another_field_is_taken_over_and_holds_nothing_back()
    {
        var page = Render<ShopPage>();
        shop.Settings = shop.Settings with { Kerf = "0.1", Version = 7 };
        await Named(page, "Currency sign").TypedAsync("€");
        Assert.Equal("0.1", Named(page, "Table saw: kerf").GetAttribute("data-shown"));
        Assert.Equal(("0.1", "€"), (shop.Settings.Kerf, shop.Settings.CurrencySign));
    }

    [Fact]
    public async Task Another_devices_change_of_the_same_field_is_shown_beside_what_was_typed()
    {
        var page = Render<ShopPage>();
        shop.Settings = shop.Settings with { Kerf = "0.1", Version = 7 };
        await Named(page, "Table saw: kerf").TypedAsync("3/32");
        var said = page.Find("[role=alert]").TextContent;
        Assert.Contains("‘0.1’", said, StringComparison.Ordinal);
        Assert.Contains("‘3/32’", said, StringComparison.Ordinal);
        Assert.Equal("0.1", shop.Settings.Kerf);
        await Named(page, "Keep ‘3/32’").ClickAsync(new());
        Assert.Equal("3/32", shop.Settings.Kerf);
        Assert.Empty(page.FindAll("[role=alert]"));
    }

    [Fact]
    public async Task A_wrong_setting_holds_no_other_back()
    {
        var page = Render<ShopPage>();
        await Named(page, "Table saw: kerf").TypedAsync("thick");
        await Named(page, "Table saw: widest rip").TypedAsync("24");
        Assert.Equal(("1/8", "24"), (shop.Settings.Kerf, shop.Settings.WidestRip));
        Assert.Equal("thick", Named(page, "Table saw: kerf").GetAttribute("data-shown"));
        Assert.Equal("true", Named(page, "Table saw: kerf").GetAttribute("aria-invalid"));
    }

    // In the order of the labels.
    private static string[] Texts(ShopSettings of) =>
        [
            of.Kerf,
            of.WidestRip,
            of.LongestCrosscut,
            of.GuideKerf,
            of.MiterKerf,
            of.MiterCrosscut,
            of.HandKerf,
            of.CarryLongest,
            of.CarryWidest,
            of.BoardEndTrim,
            of.SheetEdgeTrim,
            of.KeepBoardLength,
            of.KeepSheetLength,
            of.KeepSheetWidth,
            of.CurrencySign,
        ];

    private sealed class FakeShop : IShopService
    {
        public ShopSettings Settings { get; set; } =
            new(LengthUnit.Inch, "1/8", "1/2", "1/4", "12", "12", "6", PaperSize.Letter, "$", 10, 1);

        public Task<ShopSettings> GetAsync(CancellationToken cancel = default) => Task.FromResult(Settings);

        public Task<Outcome<ShopSettings>> SaveAsync(ShopSettings settings, CancellationToken cancel = default)
        {
            if (settings.Version != Settings.Version)
                return Task.FromResult(Outcome.Conflict<ShopSettings>(new Fault("Version", "", "is not the latest")));
            var kerf = LengthText.Parse(settings.Kerf, settings.Unit);
            if (!kerf.Ok)
                return Task.FromResult(Outcome.Faulty<ShopSettings>(kerf.Fault.At(nameof(settings.Kerf))));
            Settings = settings with { Version = settings.Version + 1 };
            return Task.FromResult<Outcome<ShopSettings>>(Settings);
        }
    }

    private sealed class NoMaterials : IMaterialService
    {
        public Task<IReadOnlyList<MaterialView>> ListAsync(CancellationToken cancel = default) =>
            Task.FromResult<IReadOnlyList<MaterialView>>([]);

        public Task<Outcome<MaterialView>> SaveAsync(
            MaterialEdit edit,
            LengthUnit unit,
            CommandId command,
            CancellationToken cancel = default
        ) => throw new NotSupportedException();
    }
}
