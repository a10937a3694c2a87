using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace ShopPlanner.Services.Certificates;

/// <summary>Makes an authority of this shop's own and what it signs. The profile is that of RFC 5280 for P-256 keys.</summary>
internal static class CertificateMaking
{
    private const int AuthorityYears = 10;

    // Browsers refuse a server's certificate that holds longer (CA/Browser Forum baseline requirements, 6.3.2).
    private const int ServerDays = 397;
    private const int SerialBytes = 16;
    private const string ServerUse = "1.3.6.1.5.5.7.3.1";

    // A tablet whose clock is a little slow.
    private static readonly TimeSpan Before = TimeSpan.FromDays(1);

    /// <summary>Makes an authority with its key, limited to names and to private networks.</summary>
    public static X509Certificate2 Authority(IEnumerable<string> names, IEnumerable<IPAddress> addresses, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest(
            $"CN=Shop Planner on {Plain(Environment.MachineName)}",
            key,
            HashAlgorithmName.SHA256
        );
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, true, 0, true));
        request.CertificateExtensions.Add(
            new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign | X509KeyUsageFlags.CrlSign, true)
        );
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, false));
        request.CertificateExtensions.Add(PermittedNames.Of(names, addresses));
        return request.CreateSelfSigned(now - Before, now.AddYears(AuthorityYears));
    }

    /// <summary>Makes a server's certificate with its key.</summary>
    public static X509Certificate2 Server(
        X509Certificate2 authority,
        IReadOnlyList<string> names,
        IEnumerable<IPAddress> addresses,
        DateTimeOffset now
    )
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest($"CN={Plain(names[0])}", key, HashAlgorithmName.SHA256);
        var alternatives = new SubjectAlternativeNameBuilder();
        foreach (var name in names)
            alternatives.AddDnsName(name);
        foreach (var address in addresses)
            alternatives.AddIpAddress(address);
        request.CertificateExtensions.Add(alternatives.Build());
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(false, false, 0, true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid(ServerUse)], false));
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, false));
        request.CertificateExtensions.Add(X509AuthorityKeyIdentifierExtension.CreateFromCertificate(authority, true, false));
        var until = now.AddDays(ServerDays) < authority.NotAfter ? now.AddDays(ServerDays) : authority.NotAfter;
        var from = now - Before > authority.NotBefore ? now - Before : authority.NotBefore;
        using var signed = request.Create(authority, from, until, Serial());
        return signed.CopyWithPrivateKey(key);
    }

    /// <summary>Whether devices that trust the authority take the server's certificate.</summary>
    public static bool Holds(X509Certificate2 authority, X509Certificate2 server, DateTimeOffset now)
    {
        using var chain = new X509Chain();
        chain.ChainPolicy.TrustMode = X509ChainTrustMode.CustomRootTrust;
        chain.ChainPolicy.CustomTrustStore.Add(authority);
        chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
        chain.ChainPolicy.VerificationTime = now.LocalDateTime;
        return chain.Build(server);
    }

    // Positive, as a serial number has to be.
    private static byte[] Serial()
    {
        var serial = RandomNumberGenerator.GetBytes(SerialBytes);
        serial[0] = (byte)((serial[0] & 0x7F) | 0x40);
        return serial;
    }

    private static string Plain(string name) => string.Concat(name.Where(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.'));
}
