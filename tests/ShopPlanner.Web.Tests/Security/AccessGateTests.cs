using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Routing;
using ShopPlanner.Services.Access;
using ShopPlanner.Web.Security;

namespace ShopPlanner.Web.Tests.Security;

/// <summary>Who is let in, and where to.</summary>
public sealed partial class AccessGateTests
{
    private const string Password = "a plane in the drawer";

    [Theory]
    [InlineData("/")]
    [InlineData("/bench")]
    [InlineData("/shop/archive.zip")]
    [InlineData("/owner")]
    [InlineData("/sign-in")]
    public async Task Without_an_owner_only_this_computer_is_served(string path)
    {
        await using var shop = await ShopServer.OpenAsync();
        var far = await new Device(shop).GetAsync(path);
        Assert.Equal(403, far.Status);
        Assert.Contains("This shop has no owner yet", far.Body, StringComparison.Ordinal);
        Assert.Equal(200, (await new Device(shop, "127.0.0.1").GetAsync(path)).Status);
        Assert.Equal(200, (await new Device(shop, "::1").GetAsync(path)).Status);
    }

    [Theory]
    [InlineData("/healthz")]
    [InlineData("/readyz")]
    public async Task Whether_the_program_serves_anybody_may_ask(string path)
    {
        await using var shop = await ShopServer.OpenAsync();
        var far = await new Device(shop).GetAsync(path);
        Assert.Equal((200, "ok\n"), (far.Status, far.Body));
    }

    // What an unnamed proxy on this computer passes on comes from anywhere.
    [Theory]
    [InlineData("X-Forwarded-For")]
    [InlineData("Forwarded")]
    [InlineData("X-Real-IP")]
    public async Task What_a_proxy_passes_on_is_not_this_computer(string header)
    {
        await using var shop = await ShopServer.OpenAsync();
        var passed = new Device(shop, "127.0.0.1") { Headers = { [header] = "127.0.0.1" } };
        Assert.Equal(403, (await passed.GetAsync("/")).Status);
    }

    [Fact]
    public async Task A_named_proxy_is_believed_and_nobody_else()
    {
        var proxy = IPAddress.Parse("127.0.0.1");
        await using var shop = await ShopServer.OpenAsync(asked => asked with { Proxies = [proxy] });
        Own(shop);
        var behind = new Device(shop, "127.0.0.1")
        {
            Headers = { ["X-Forwarded-For"] = "192.168.1.44", ["X-Forwarded-Proto"] = "https" },
        };
        var signed = await behind.PostAsync("/sign-in/password", ("Password", Password));
        Assert.Equal(303, signed.Status);
        Assert.Contains("__Host-shop-planner-device=", behind.Set[0], StringComparison.Ordinal);
        Assert.Contains("secure", behind.Set[0], StringComparison.OrdinalIgnoreCase);
        Assert.Equal("max-age=31536000", signed.Headers.StrictTransportSecurity.ToString());
        var forger = new Device(shop, "192.168.1.9")
        {
            Headers = { ["X-Forwarded-Proto"] = "https", ["X-Forwarded-For"] = "::1" },
        };
        Assert.Equal(
            "",
            (await forger.PostAsync("/sign-in/password", ("Password", Password))).Headers.StrictTransportSecurity.ToString()
        );
        Assert.DoesNotContain("secure", forger.Set[0], StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task With_an_owner_everybody_signs_in_this_computer_too()
    {
        await using var shop = await ShopServer.OpenAsync();
        Own(shop);
        foreach (var device in new[] { new Device(shop), new Device(shop, "127.0.0.1") })
        {
            var asked = await device.GetAsync("/plans?find=a");
            Assert.Equal((303, "/sign-in?to=%2Fplans%3Ffind%3Da"), (asked.Status, asked.To));
            Assert.Equal(401, (await device.PostAsync("/bench/commands")).Status);
            Assert.Equal(401, (await device.PostAsync("/_blazor/negotiate")).Status);
            Assert.Equal(401, (await device.GetAsync("/_blazor")).Status);
            Assert.Equal(200, (await device.GetAsync(asked.To)).Status);
        }
    }

    [Theory]
    [InlineData("/plans?find=a", "/plans?find=a")]
    [InlineData("//elsewhere.example/", "/")]
    [InlineData("/\\elsewhere.example", "/")]
    [InlineData("https://elsewhere.example/", "/")]
    [InlineData("", "/")]
    public async Task The_owner_signs_in_and_is_led_to_a_page_of_ours(string to, string led)
    {
        await using var shop = await ShopServer.OpenAsync();
        Own(shop);
        var device = new Device(shop);
        var wrong = await device.PostAsync("/sign-in/password", ("Password", "guess"), ("To", to));
        Assert.Equal(422, wrong.Status);
        Assert.Contains("Is wrong.", PlainText(wrong.Body), StringComparison.Ordinal);
        Assert.Empty(device.Cookies);
        var right = await device.PostAsync("/sign-in/password", ("Password", Password), ("To", to));
        Assert.Equal((303, led), (right.Status, right.To));
        Assert.Equal(200, (await device.GetAsync("/projects")).Status);
        var cookie = Assert.Single(device.Set, one => one.StartsWith("shop-planner-device=", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        await device.PostAsync("/sign-out");
        Assert.Equal(303, (await device.GetAsync("/projects")).Status);
    }

    [Fact]
    public async Task The_owner_is_made_with_the_code_and_the_way_is_closed_then()
    {
        await using var shop = await ShopServer.OpenAsync();
        var here = new Device(shop, "127.0.0.1");
        var access = shop.Get<IAccessService>();
        var (code, name) = (access.OwnerCode!, ("Name", "Ana"));
        Assert.Equal(422, (await here.PostAsync("/owner/account", ("Code", "x"), name, ("Password", Password))).Status);
        var refused = await here.PostAsync("/owner/account", ("Code", code), name, ("Password", "short"));
        Assert.Equal(422, refused.Status);
        Assert.Contains($"value=\"{code}\"", refused.Body, StringComparison.Ordinal);
        Assert.Equal(
            403,
            (await new Device(shop).PostAsync("/owner/account", ("Code", code), name, ("Password", Password))).Status
        );
        Assert.Equal(303, (await here.PostAsync("/owner/account", ("Code", code), name, ("Password", Password))).Status);
        Assert.Equal(200, (await here.GetAsync("/shop/access")).Status);
        Assert.Equal(410, (await new Device(shop).GetAsync("/owner")).Status);
        Assert.Equal(
            409,
            (await new Device(shop).PostAsync("/owner/account", ("Code", code), name, ("Password", Password))).Status
        );
    }

    // Every address there is, so that a new one is tried too.
    [Theory]
    [InlineData(AccessRole.Bench, "/bench")]
    [InlineData(AccessRole.Household, "/shopping")]
    public async Task A_paired_device_gets_the_addresses_of_its_role_and_no_other(AccessRole role, string own)
    {
        await using var shop = await ShopServer.OpenAsync();
        var device = Paired(shop, role);
        var others = shop.Get<EndpointDataSource>()
            .Endpoints.OfType<RouteEndpoint>()
            .Select(one =>
                "/" + Parameter().Replace(one.RoutePattern.RawText!.TrimStart('/'), "018f3c5e-0000-7000-8000-00000000abcd")
            )
            .Where(path => path != "/" && !AccessRules.IsOpen(path) && !path.StartsWith(own, StringComparison.Ordinal))
            .Append("/_blazor/negotiate")
            .Distinct()
            .ToList();
        Assert.InRange(others.Count, 60, 500);
        foreach (var path in others)
        {
            Assert.Equal((path, 403), (path, (await device.GetAsync(path)).Status));
            Assert.Equal((path, 403), (path, (await device.PostAsync(path)).Status));
        }

        var home = await device.GetAsync("/");
        Assert.Equal((303, own), (home.Status, home.To));
        Assert.Equal(200, (await device.GetAsync(own)).Status);
    }

    [Fact]
    public async Task A_tablet_is_paired_once_works_at_the_bench_and_is_out_at_once()
    {
        await using var shop = await ShopServer.OpenAsync();
        Own(shop);
        var access = shop.Get<IAccessService>();
        var owner = new Device(shop);
        await owner.PostAsync("/sign-in/password", ("Password", Password));
        var offered = await owner.PostAsync("/shop/access/pair", ("Name", "Shop <tablet>"), ("Role", "Bench"));
        Assert.Contains("<svg", offered.Body, StringComparison.Ordinal);
        var code = Code().Match(offered.Body).Value;
        var tablet = new Device(shop, "192.168.1.21");
        var paired = await tablet.PostAsync("/pair/code", ("Code", code));
        Assert.Equal((303, "/bench"), (paired.Status, paired.To));
        Assert.Equal(422, (await new Device(shop, "192.168.1.22").PostAsync("/pair/code", ("Code", code))).Status);
        Assert.Equal(200, (await tablet.GetAsync("/bench/bin")).Status);
        Assert.NotEqual(401, (await tablet.PostAsync("/bench/commands")).Status);
        var listed = await owner.GetAsync("/shop/access");
        Assert.Contains("Shop &lt;tablet&gt;", listed.Body, StringComparison.Ordinal);
        var id = access.Get().Devices.Single(one => one.Role == AccessRole.Bench).Id;
        Assert.Equal(303, (await owner.PostAsync("/shop/access/out", ("Device", id.ToString()))).Status);
        Assert.Equal(303, (await tablet.GetAsync("/bench/bin")).Status);
        Assert.Equal(401, (await tablet.PostAsync("/bench/commands")).Status);
    }

    [Fact]
    public async Task The_demo_needs_no_sign_in_on_this_computer_and_says_so()
    {
        await using var shop = await ShopServer.OpenAsync(asked => asked with { Demo = true });
        Own(shop);
        Assert.Equal(200, (await new Device(shop, "127.0.0.1").GetAsync("/projects")).Status);
        Assert.Equal(303, (await new Device(shop).GetAsync("/projects")).Status);
        var page = await new Device(shop, "127.0.0.1").GetAsync("/shop/access");
        Assert.Contains("The demo needs no sign-in on this computer", page.Body, StringComparison.Ordinal);
    }

    private static void Own(ShopServer shop)
    {
        var access = shop.Get<IAccessService>();
        Assert.True(access.BecomeOwner(access.OwnerCode!, new("Ana", Password), "Desk", "desk").Ok);
    }

    private static Device Paired(ShopServer shop, AccessRole role)
    {
        Own(shop);
        var access = shop.Get<IAccessService>();
        var signed = access.Pair(access.OfferPairing(role, "Tablet").Value!.Code, "tablet").Value!;
        return new(shop) { Headers = { ["Cookie"] = "shop-planner-device=" + signed.Token } };
    }

    private static string PlainText(string page) => WebUtility.HtmlDecode(Tag().Replace(page, ""));

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Parameter();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("[0-9A-Z]{5}-[0-9A-Z]{5}")]
    private static partial Regex Code();
}
