using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>The bench over https, with the certificate of the shop's own authority, by the computer's name: it opens while the
/// program does not run.</summary>
public sealed class BenchSecureTests(SecureFixture secure) : IClassFixture<SecureFixture>
{
    private static readonly LocatorAssertionsToContainTextOptions Patient = new() { Timeout = 60_000 };

    [Fact]
    public async Task The_bench_opens_while_the_program_does_not_run_and_sends_its_marks_later()
    {
        var profile = Directory.CreateTempSubdirectory("shop-planner-tablet-").FullName;
        var tablet = await secure.OpenTabletAsync(profile);
        var page = await tablet.NewPageAsync();
        await page.GotoAsync("/bench");
        await page.GotoAsync((await page.Locator(".bench-list a[href^='/bench/']").First.GetAttributeAsync("href"))!);
        await Expect(page.Locator("[data-kept]")).ToContainTextAsync("opens again on this tablet without a network", Patient);
        await page.WaitForFunctionAsync(
            """
            async () => {
              const cache = await caches.open("shop-planner pages"), kept = (await cache.keys()).map(one => one.url);
              return navigator.serviceWorker.controller && kept.includes(location.href)
                && kept.some(one => one.includes("idb.js"));
            }
            """
        );
        await page.ReloadAsync();
        await Expect(page.Locator("[data-saved] [role=status]")).ToContainTextAsync("Saved on the shop's computer", Patient);
        await secure.App.KillAsync();
        var later = await tablet.NewPageAsync();
        await later.GotoAsync(page.Url + "/3");
        await Expect(later.Locator("h1")).ToContainTextAsync("Board 3 of 3", Patient);
        await Expect(later.Locator("[data-saved] [role=status]")).ToContainTextAsync("No connection", Patient);
        await later.Locator(".bench-now .huge:visible").ClickAsync();
        await Expect(later.Locator("[data-saved] [role=status]")).ToContainTextAsync("1 mark waiting", Patient);
        await later.ReloadAsync();
        await Expect(later.Locator("[data-saved] [role=status]")).ToContainTextAsync("1 mark waiting", Patient);
        await Expect(later.Locator(".bench-own li.made")).ToHaveCountAsync(1);
        await secure.App.StartAgainAsync(TestContext.Current.CancellationToken);
        await later.EvaluateAsync("() => { dispatchEvent(new Event('online')); }");
        await Expect(later.Locator("[data-saved] [role=status]")).ToContainTextAsync("Saved on the shop's computer", Patient);
        await later.GotoAsync("/bench/trust");
        await Expect(later.Locator(".fingerprint")).ToHaveTextAsync(secure.Fingerprint);
        await tablet.CloseAsync();
        Directory.Delete(profile, recursive: true);
    }
}

/// <summary>A program that serves https besides, with a certificate made as the command makes it.</summary>
public sealed class SecureFixture : BrowserFixture
{
    private readonly int port = FreePort();
    private string key = "";

    public string Fingerprint { get; private set; } = "";

    /// <summary>A tablet that trusts the certificate and opens the program by the computer's name.</summary>
    public Task<IBrowserContext> OpenTabletAsync(string profile)
    {
        var name = Environment.MachineName.ToLowerInvariant();
        return OpenProfileAsync(
            profile,
            new Uri($"https://{name}:{port}"),
            $"--host-resolver-rules=MAP {name} 127.0.0.1",
            $"--ignore-certificate-errors-spki-list={key}"
        );
    }

    protected override Task<RunningApp> StartAsync(CancellationToken cancel) =>
        RunningApp.StartAsync(Certify, ["--https", $"{port}"], cancel);

    private void Certify(string data)
    {
        Fingerprint = Services.Certificates.ShopCertificates.Make(data, [], false, DateTimeOffset.UtcNow).Fingerprint;
        using var server = X509CertificateLoader.LoadCertificateFromFile(Path.Combine(data, "certificate", "server.pem"));
        key = Convert.ToBase64String(SHA256.HashData(server.PublicKey.ExportSubjectPublicKeyInfo()));
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
