using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace ShopPlanner.Packets.Pdf;

/// <summary>
/// The PDF library draws lots for the names of embedded fonts and links and for the file's identity, and has no setting for
/// either. They are replaced here by others of the same length, so that every offset in the file stays true and equal packets
/// are equal bytes.
/// </summary>
internal static partial class Repeatable
{
    private const int TagLength = 6;

    /// <summary>The same file with names that follow from its facts.</summary>
    public static byte[] Make(byte[] file, FileFacts facts)
    {
        // Latin-1 gives every byte its own character and back.
        var text = Encoding.Latin1.GetString(file);
        var tags = new Dictionary<string, string>();
        text = FontTag()
            .Replace(text, match => tags.TryGetValue(match.Value, out var tag) ? tag : tags[match.Value] = Tag(tags.Count));
        var identity = new Guid(
            SHA256.HashData(Encoding.UTF8.GetBytes($"{facts.Title}\n{facts.Date:O}\n{facts.Seed}")).AsSpan(0, 16)
        );
        var links = 0;
        text = LinkName().Replace(text, _ => Link(links++));
        text = LinkDay().Replace(text, facts.Date.ToString("yyyyMMdd000000", CultureInfo.InvariantCulture));
        text = Uuid().Replace(text, identity.ToString("D"));
        return Encoding.Latin1.GetBytes(FileId().Replace(text, identity.ToString("N").ToUpperInvariant()));
    }

    private static string Link(int number) => new Guid(number, 0, 0, new byte[8]).ToString("D");

    private static string Tag(int number) => new string('A', TagLength - 1) + (char)('A' + number);

    [GeneratedRegex(@"(?<=/)[A-Z]{6}(?=\+[A-Za-z])")]
    private static partial Regex FontTag();

    [GeneratedRegex(@"(?<=/NM\s*\()[0-9a-f-]{36}(?=\))")]
    private static partial Regex LinkName();

    [GeneratedRegex(@"(?<=/M\s*\(D:)[0-9]{14}")]
    private static partial Regex LinkDay();

    [GeneratedRegex("(?<=<xmpMM:(?:DocumentID|InstanceID)>uuid:)[0-9a-f-]{36}(?=<)")]
    private static partial Regex Uuid();

    [GeneratedRegex(@"(?<=/ID\s*\[(?:<[0-9A-F]{32}>)?<)[0-9A-F]{32}(?=>)")]
    private static partial Regex FileId();
}
