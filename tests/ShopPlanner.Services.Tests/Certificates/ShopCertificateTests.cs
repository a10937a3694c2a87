using System.Net;
using ShopPlanner.Services.Certificates;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Certificates;

/// <summary>The shop's own authority. Oracle: the platform's chain builder, which holds certificates against RFC 5280.</summary>
public sealed class ShopCertificateTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 5, 2, 9, 30, 0, TimeSpan.Zero);
    private readonly string folder = TestShop.NewFolder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_certificate_is_for_this_computer_and_its_files_are_for_their_owner_alone()
    {
        var made = ShopCertificates.Make(folder, ["Workshop.example", "192.168.7.20"], false, Now);
        Assert.Contains("workshop.example", made.Names);
        Assert.Contains("192.168.7.20", made.Names);
        Assert.Contains("localhost", made.Names);
        Assert.InRange(made.ServerUntil - Now, TimeSpan.FromDays(396), TimeSpan.FromDays(398));
        Assert.Equal(made.Fingerprint, ShopCertificates.Find(folder)!.Fingerprint);
        using var server = ShopCertificates.ForServer(folder, [], Now);
        Assert.True(server.HasPrivateKey);
        Assert.True(server.MatchesHostname("workshop.example"));
        if (OperatingSystem.IsWindows())
            return;
        foreach (var file in Directory.EnumerateFiles(Path.Combine(folder, "certificate")))
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
    }

    [Fact]
    public void Renewed_the_authority_stays_and_a_month_before_the_end_a_start_renews_by_itself()
    {
        var first = ShopCertificates.Make(folder, [], false, Now);
        using (var same = ShopCertificates.ForServer(folder, [], Now.AddDays(300)))
            Assert.Equal(first.ServerUntil, same.NotAfter);
        using var renewed = ShopCertificates.ForServer(folder, [], Now.AddDays(380));
        Assert.True(renewed.NotAfter > first.ServerUntil);
        Assert.Equal(first.Fingerprint, ShopCertificates.Find(folder)!.Fingerprint);
        Assert.NotEqual(first.Fingerprint, ShopCertificates.Make(folder, [], true, Now).Fingerprint);
    }

    [Theory]
    [InlineData("bench.local", null, true)]
    [InlineData("bank.example", null, false)]
    [InlineData("bench.local", "10.1.2.3", true)]
    [InlineData("bench.local", "fd00::7", true)]
    [InlineData("bench.local", "203.0.113.9", false)]
    public void The_authority_signs_for_its_own_names_and_home_networks_alone(string name, string? address, bool holds)
    {
        using var authority = CertificateMaking.Authority(["bench.local"], [], Now);
        IPAddress[] addresses = address is null ? [] : [IPAddress.Parse(address)];
        using var server = CertificateMaking.Server(authority, [name], addresses, Now);
        Assert.Equal(holds, CertificateMaking.Holds(authority, server, Now));
        Assert.False(CertificateMaking.Holds(authority, server, Now.AddYears(2)));
    }

    [Fact]
    public void A_name_beyond_the_authority_is_refused_with_what_to_do()
    {
        ShopCertificates.Make(folder, [], false, Now);
        var problem = Assert.Throws<ShopStartException>(() => ShopCertificates.Make(folder, ["other.example"], false, Now));
        Assert.Contains("--new-authority", problem.Message);
        Assert.Contains("other.example", ShopCertificates.Make(folder, ["other.example"], true, Now).Names);
    }

    [Fact]
    public void Without_a_certificate_https_says_which_command_makes_one() =>
        Assert.Contains(
            "shop-planner certificate",
            Assert.Throws<ShopStartException>(() => ShopCertificates.ForServer(folder, [], Now)).Message
        );
}
