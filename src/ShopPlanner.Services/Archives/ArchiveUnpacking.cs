using System.Globalization;
using System.IO.Compression;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Archives;

/// <summary>Unpacks a zip file that may be meant to harm: nothing is written to disk, names are checked, and bytes are counted as
/// they come, since a zip can say anything of itself.</summary>
internal static partial class ArchiveUnpacking
{
    /// <summary>The most entries.</summary>
    public const int MostEntries = 100;

    /// <summary>The most bytes of all entries together, unpacked.</summary>
    public const int MostUnpacked = 200_000_000;

    private const int Chunk = 81_920;

    /// <summary>Returns the entries by name, or the one fault that refuses the file.</summary>
    /// <param name="file">The zip file.</param>
    /// <param name="mostUnpacked">The most bytes that may come out of it.</param>
    public static (Dictionary<string, ReadOnlyMemory<byte>> Entries, Fault? Fault) Unpack(
        ReadOnlyMemory<byte> file,
        int mostUnpacked = MostUnpacked
    )
    {
        try
        {
            using var zip = new ZipArchive(new MemoryStream(file.ToArray()), ZipArchiveMode.Read);
            return zip.Entries.Count > MostEntries
                ? Refuse(
                    "archive",
                    zip.Entries.Count.ToString(CultureInfo.InvariantCulture),
                    $"entries are more than the {MostEntries} that a shop archive can have: nothing was read"
                )
                : Unpack(zip, mostUnpacked);
        }
        catch (Exception problem) when (problem is InvalidDataException or NotSupportedException or EndOfStreamException)
        {
            return Refuse("archive", "", "isn't a zip file that can be read: choose a file that Export shop made");
        }
    }

    private static (Dictionary<string, ReadOnlyMemory<byte>>, Fault?) Unpack(ZipArchive zip, int mostUnpacked)
    {
        var entries = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);
        var left = mostUnpacked;
        foreach (var entry in zip.Entries)
        {
            if (Name(entry.FullName) is { } wrong)
                return ([], wrong);
            if (Take(entry, left) is not { } taken)
                return Refuse(
                    entry.FullName,
                    $"more than {mostUnpacked / 1_000_000} MB",
                    "come out of this file, too much for a shop: nothing was read"
                );
            left -= taken.Length;
            if (!entries.TryAdd(entry.FullName, taken))
                return Refuse("archive", entry.FullName, "is in this file twice: nothing was read");
        }

        return (entries, null);
    }

    private static Fault? Name(string name) =>
        Document().IsMatch(name) ? null
        : name.Contains("..", StringComparison.Ordinal) || name.StartsWith('/') || name.Contains('\\') || name.Contains(':')
            ? Fault.Of("archive", name, "points to a place outside the archive: this file may be meant to harm, nothing was read")
        : Fault.Of("archive", name, "is no document of a shop archive: choose a file that Export shop made");

    // Null where more comes than is allowed.
    private static ReadOnlyMemory<byte>? Take(ZipArchiveEntry entry, int most)
    {
        using var taken = new MemoryStream();
        using var stream = entry.Open();
        var buffer = new byte[Chunk];
        int read;
        while ((read = stream.Read(buffer)) > 0)
        {
            if (taken.Length + read > most)
                return null;
            taken.Write(buffer, 0, read);
        }

        return taken.GetBuffer().AsMemory(0, (int)taken.Length);
    }

    private static (Dictionary<string, ReadOnlyMemory<byte>>, Fault?) Refuse(string field, string value, string message) =>
        ([], Fault.Of(field, value, message));

    [GeneratedRegex("^[a-z0-9]+(?:-[a-z0-9]+)*\\.json$")]
    private static partial Regex Document();
}
