using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using ShopPlanner.Services;
using ShopPlanner.Services.Access;
using ShopPlanner.Services.Opening;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>Who is let in, as the owner, a tablet and a thief see it.</summary>
public sealed class AccessTests(OwnedShopFixture shop) : IClassFixture<OwnedShopFixture>
{
    // What the owner is promised: out within five seconds.
    private static readonly PageAssertionsToHaveURLOptions AtOnce = new() { Timeout = 5_000 };

    [Fact]
    public async Task A_tablet_is_paired_by_its_link_and_a_live_page_that_is_signed_out_leaves_at_once()
    {
        var here = await shop.OpenAsync(Screen.Desktop);
        await SignInAsync(here);
        await using var other = await here.Context.Browser!.NewContextAsync(new() { BaseURL = shop.Address.ToString() });
        var there = await other.NewPageAsync();
        await SignInAsync(there);
        await there.GotoAsync("/projects");
        await Fields.SettledAsync(there);

        await here.GotoAsync("/shop/access");
        await here.GetByLabel("Name").FillAsync("Shop tablet");
        await here.GetByRole(AriaRole.Button, new() { Name = "Make a code" }).ClickAsync();
        var code = (await here.Locator(".access-letters").InnerTextAsync()).Trim();
        await using var far = await here.Context.Browser!.NewContextAsync(new() { BaseURL = shop.Address.ToString() });
        var tablet = await far.NewPageAsync();
        await tablet.GotoAsync($"/pair#{code}");
        await Expect(tablet.GetByLabel("Code")).ToHaveValueAsync(code);
        Assert.DoesNotContain(code, tablet.Url, StringComparison.Ordinal);
        await tablet.GetByRole(AriaRole.Button, new() { Name = "Pair this device" }).ClickAsync();
        await Expect(tablet.Locator(".bench-bar")).ToBeVisibleAsync();
        Assert.Equal(403, (await tablet.GotoAsync("/shop"))!.Status);

        await here.GotoAsync("/shop/access");
        await here.Locator("li")
            .Filter(new() { HasNotText = "(this browser)" })
            .Filter(new() { HasText = "For everything" })
            .GetByRole(AriaRole.Button)
            .Last.ClickAsync();
        await Expect(there).ToHaveURLAsync($"{shop.Address}sign-in", AtOnce);
        await here.GetByRole(AriaRole.Button, new() { Name = "Sign Shop tablet out" }).ClickAsync();
        await tablet.GotoAsync("/bench");
        await Expect(tablet).ToHaveURLAsync($"{shop.Address}sign-in?to=%2Fbench");
    }

    private static async Task SignInAsync(IPage page)
    {
        await page.GotoAsync("/");
        await page.GetByLabel("The owner's password").FillAsync(OwnedShopFixture.Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Navigation, new() { Name = "Places" })).ToBeVisibleAsync();
    }
}

/// <summary>A shop that has an owner.</summary>
public sealed class OwnedShopFixture : BrowserFixture
{
    /// <summary>The owner's password.</summary>
    public const string Password = "a plane in the drawer";

    protected override Task<RunningApp> StartAsync(CancellationToken cancel) => RunningApp.StartEmptyAsync(Own, cancel);

    private static void Own(string folder)
    {
        using var services = new ServiceCollection()
            .AddShopPlanner(new ServicesOptions(folder, Demo: false))
            .BuildServiceProvider();
        var access = services.GetRequiredService<IAccessService>();
        Assert.True(access.BecomeOwner(access.OwnerCode!, new("Ana", Password), "First desk", "test").Ok);
    }
}
