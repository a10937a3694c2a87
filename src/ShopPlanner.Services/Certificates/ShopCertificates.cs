using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Certificates;

/// <summary>The certificates of a shop, as they lie in its data folder.</summary>
/// <param name="AuthorityFile">The authority's certificate, to be trusted by tablets.</param>
/// <param name="Fingerprint">Of the authority, SHA-256, in pairs.</param>
/// <param name="AuthorityUntil">When the authority ends.</param>
/// <param name="ServerUntil">When the server's certificate ends; it is renewed a month before.</param>
/// <param name="Names">The names and addresses that the server's certificate is for.</param>
public sealed record ShopCertificate(
    string AuthorityFile,
    string Fingerprint,
    DateTimeOffset AuthorityUntil,
    DateTimeOffset ServerUntil,
    IReadOnlyList<string> Names
);

/// <summary>
/// An authority of this shop's own and a server's certificate signed by it, in the folder <c>certificate</c> of the shop's data,
/// each file for its owner alone. They are not part of backups: another computer makes its own.
/// </summary>
public static class ShopCertificates
{
    private const int RenewDays = 30;

    /// <summary>Returns the certificates of a data folder; null where there are none.</summary>
    public static ShopCertificate? Find(string dataFolder)
    {
        var files = new CertificateFiles(dataFolder);
        if (!files.Exist)
            return null;
        using var authority = files.ReadAuthority();
        using var server = files.ReadServer();
        return Report(files, authority, server);
    }

    /// <summary>Returns the authority's certificate as tablets install it (DER); null where there is none.</summary>
    public static byte[]? AuthorityOf(string dataFolder)
    {
        var files = new CertificateFiles(dataFolder);
        if (!files.Exist)
            return null;
        using var authority = files.ReadAuthority();
        return authority.RawData;
    }

    /// <summary>Makes what is missing and signs the server's certificate again.</summary>
    /// <param name="dataFolder">The shop's data folder.</param>
    /// <param name="more">Names or addresses beside this computer's own.</param>
    /// <param name="isNewAuthority">Whether to make another authority where there is one: tablets have to trust it again.</param>
    /// <param name="now">The time.</param>
    /// <exception cref="ShopStartException">A file cannot be read or written, or the authority does not permit a
    /// name.</exception>
    public static ShopCertificate Make(string dataFolder, IEnumerable<string> more, bool isNewAuthority, DateTimeOffset now)
    {
        var files = new CertificateFiles(dataFolder);
        var (names, addresses) = NamesWith(more);
        try
        {
            using var authority =
                files.Exist && !isNewAuthority
                    ? files.ReadAuthority()
                    : files.WriteAuthority(CertificateMaking.Authority(names, addresses, now));
            return Sign(files, authority, (names, addresses), now);
        }
        catch (Exception problem)
            when (problem is IOException or UnauthorizedAccessException or CryptographicException or ArgumentException)
        {
            throw new ShopStartException(
                $"The certificate in {files.Folder} cannot be made: {problem.Message.ReplaceLineEndings(" ")}",
                problem
            );
        }
    }

    /// <summary>Returns the server's certificate with its key, signed again where it ends within a month or lacks one of this
    /// computer's names and addresses.</summary>
    /// <exception cref="ShopStartException">There is none, or it cannot be read or renewed.</exception>
    public static X509Certificate2 ForServer(string dataFolder, IEnumerable<string> more, DateTimeOffset now)
    {
        if (Find(dataFolder) is not { } known)
            throw new ShopStartException(
                $"--https needs a certificate, and there is none in {dataFolder}: run 'shop-planner certificate --data "
                    + $"\"{dataFolder}\"' first."
            );
        var (names, addresses) = NamesWith(more);
        var isWhole = names
            .Concat(addresses.Select(Text))
            .All(name => known.Names.Contains(name, StringComparer.OrdinalIgnoreCase));
        if (!isWhole || known.ServerUntil < now.AddDays(RenewDays))
            Make(dataFolder, [.. more, .. known.Names], false, now);
        return new CertificateFiles(dataFolder).ReadServer();
    }

    private static ShopCertificate Sign(
        CertificateFiles files,
        X509Certificate2 authority,
        (List<string> Names, List<IPAddress> Addresses) of,
        DateTimeOffset now
    )
    {
        using var server = CertificateMaking.Server(authority, of.Names, of.Addresses, now);
        if (!CertificateMaking.Holds(authority, server, now))
            throw new ShopStartException(
                $"The authority in {files.Folder} has ended, or isn't for {string.Join(", ", of.Names)}: run 'shop-planner "
                    + "certificate --new-authority', then trust the new one on each tablet."
            );
        files.WriteServer(server);
        return Report(files, authority, server);
    }

    private static (List<string> Names, List<IPAddress> Addresses) NamesWith(IEnumerable<string> more)
    {
        var given = more.ToLookup(name => IPAddress.TryParse(name, out _));
        List<string> names = [.. OwnNames.Names().Concat(given[false].Select(name => name.ToLowerInvariant())).Distinct()];
        IEnumerable<IPAddress> own = [IPAddress.Loopback, IPAddress.IPv6Loopback, .. OwnNames.Addresses()];
        return (names, [.. own.Concat(given[true].Select(IPAddress.Parse)).Select(Plain).Distinct()]);
    }

    // A link-local address carries the number of its card, which no certificate has.
    private static IPAddress Plain(IPAddress address) => new(address.GetAddressBytes());

    private static string Text(IPAddress address) => address.ToString();

    private static ShopCertificate Report(CertificateFiles files, X509Certificate2 authority, X509Certificate2 server)
    {
        var names = server.Extensions.OfType<X509SubjectAlternativeNameExtension>().Single();
        return new(
            files.Authority,
            string.Join(' ', authority.GetCertHash(HashAlgorithmName.SHA256).Select(one => $"{one:X2}")),
            authority.NotAfter,
            server.NotAfter,
            [.. names.EnumerateDnsNames(), .. names.EnumerateIPAddresses().Select(Text)]
        );
    }
}
