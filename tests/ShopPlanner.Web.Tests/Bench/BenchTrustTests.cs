using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using ShopPlanner.Services.Certificates;
using ShopPlanner.Web.Hosting;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>The page that explains how a tablet comes to trust the shop's computer.</summary>
public sealed class BenchTrustTests
{
    [Fact]
    public async Task It_names_the_command_and_then_hands_out_the_certificate_with_its_fingerprint()
    {
        await using var server = await ShopServer.OpenAsync();
        using var browser = server.Browse();
        var folder = server.Get<WebSettings>().DataFolder;
        Assert.Contains(
            $"shop-planner certificate --data \"{folder}\"",
            (await browser.OpenAsync(Links.BenchTrust)).Body!.TextContent
        );
        using var missing = await browser.GetAsync(Links.BenchAuthority);
        Assert.Equal(HttpStatusCode.NotFound, missing.StatusCode);

        var made = ShopCertificates.Make(folder, [], false, DateTimeOffset.UtcNow);

        Assert.Equal(made.Fingerprint, (await browser.OpenAsync(Links.BenchTrust)).QuerySelector(".fingerprint")!.TextContent);
        using var answer = await browser.GetAsync(Links.BenchAuthority);
        using var certificate = X509CertificateLoader.LoadCertificate(
            await answer.Content.ReadAsByteArrayAsync(ShopServer.Cancel)
        );
        Assert.False(certificate.HasPrivateKey);
        Assert.Equal(
            made.Fingerprint.Replace(" ", "", StringComparison.Ordinal),
            certificate.GetCertHashString(HashAlgorithmName.SHA256)
        );
    }
}
