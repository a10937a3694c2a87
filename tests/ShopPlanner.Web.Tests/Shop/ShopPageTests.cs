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
    private readonly FakeShop shop = new();

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
        await Named(page, "Kerf").ChangeAsync(new() { Value = "3/32" });
        Assert.Equal("3/32", shop.Settings.Kerf);
        Assert.Equal("Saved", page.Find("[role=status]").TextContent);
    }

    [Fact]
    public async Task A_wrong_setting_is_marked_beside_its_field_and_nothing_is_saved()
    {
        var page = Render<ShopPage>();
        await Named(page, "Kerf").ChangeAsync(new() { Value = "thick" });
        var field = Named(page, "Kerf");
        Assert.Equal(("true", "thick"), (field.GetAttribute("aria-invalid"), field.GetAttribute("value")));
        Assert.Contains(
            "‘thick’ is not a length",
            page.Find("#" + field.GetAttribute("aria-describedby")).TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("1/8", shop.Settings.Kerf);
        Assert.Contains("Not saved", page.Find("[role=status]").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Widest rip", "24")]
    [InlineData("Longest crosscut", "12 1/4")]
    [InlineData("Car: longest piece", "6 ft")]
    [InlineData("Car: widest sheet", "40")]
    public async Task What_saw_and_car_allow_is_saved(string field, string text)
    {
        var page = Render<ShopPage>();
        await Named(page, field).ChangeAsync(new() { Value = text });
        Assert.Equal(text, Named(page, field).GetAttribute("value"));
        var settings = shop.Settings;
        Assert.Contains(
            text,
            new[] { settings.WidestRip, settings.LongestCrosscut, settings.CarryLongest, settings.CarryWidest }
        );
        Assert.Contains("Your saw's manual comes first", page.Find(".mind").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Seconds_that_are_no_number_are_marked_too()
    {
        var page = Render<ShopPage>();
        await Named(page, "Look for better").ChangeAsync(new() { Value = "ten" });
        Assert.Equal("true", Named(page, "Look for better").GetAttribute("aria-invalid"));
        Assert.Equal(10, shop.Settings.PlanSeconds);
    }

    [Fact]
    public async Task What_another_device_saved_first_is_shown()
    {
        var page = Render<ShopPage>();
        shop.Settings = shop.Settings with { Kerf = "0.1", Version = 7 };
        await Named(page, "Currency sign").ChangeAsync(new() { Value = "€" });
        Assert.Equal("0.1", Named(page, "Kerf").GetAttribute("value"));
        Assert.Equal("$", shop.Settings.CurrencySign);
    }

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
