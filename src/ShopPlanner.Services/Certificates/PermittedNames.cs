using System.Formats.Asn1;
using System.Net;
using System.Security.Cryptography.X509Certificates;

namespace ShopPlanner.Services.Certificates;

/// <summary>
/// Limits an authority to a few names and to private networks (name constraints, RFC 5280, section 4.2.1.10), so that its key,
/// lost, opens no other site: devices that trust it refuse what it signs for anything else.
/// </summary>
internal static class PermittedNames
{
    private const string Id = "2.5.29.30";
    private static readonly Asn1Tag Permitted = new(TagClass.ContextSpecific, 0),
        DnsName = new(TagClass.ContextSpecific, 2),
        Address = new(TagClass.ContextSpecific, 7);

    // RFC 1918, RFC 4193, link-local and loopback.
    private static readonly IPNetwork[] Private =
    [
        .. new[]
        {
            "10.0.0.0/8",
            "172.16.0.0/12",
            "192.168.0.0/16",
            "169.254.0.0/16",
            "127.0.0.0/8",
            "fc00::/7",
            "fe80::/10",
            "::1/128",
        }.Select(IPNetwork.Parse),
    ];

    /// <summary>Returns the extension.</summary>
    /// <param name="names">Names that are permitted, with what stands below them.</param>
    /// <param name="addresses">Addresses that are permitted beside those of private networks.</param>
    public static X509Extension Of(IEnumerable<string> names, IEnumerable<IPAddress> addresses)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        using (writer.PushSequence(Permitted))
        {
            foreach (var name in names)
                using (writer.PushSequence())
                    writer.WriteCharacterString(UniversalTagNumber.IA5String, name, DnsName);
            var others = addresses.Where(one => !Private.Any(net => net.Contains(one)));
            foreach (var net in Private.Concat(others.Select(one => new IPNetwork(one, one.GetAddressBytes().Length * 8))))
                using (writer.PushSequence())
                    writer.WriteOctetString([.. net.BaseAddress.GetAddressBytes(), .. Mask(net)], Address);
        }

        return new X509Extension(Id, writer.Encode(), critical: true);
    }

    private static IEnumerable<byte> Mask(IPNetwork net) =>
        Enumerable
            .Range(0, net.BaseAddress.GetAddressBytes().Length)
            .Select(i => (byte)(0xFF00 >> Math.Clamp(net.PrefixLength - (i * 8), 0, 8)));
}
