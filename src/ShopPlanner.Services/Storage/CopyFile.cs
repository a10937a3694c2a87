using System.Buffers.Binary;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ShopPlanner.Services.Storage;

/// <summary>Reads a copy of a shop's database as the one file it is. A write-ahead log that lies beside it belongs to something
/// else and is never applied (sqlite.org/uri.html, "immutable").</summary>
internal static class CopyFile
{
    private const int HeaderLength = 100;

    private static readonly byte[] Magic = "SQLite format 3\0"u8.ToArray();

    /// <summary>Opens a copy for reading.</summary>
    public static SqliteConnection Open(string file)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder
            {
                DataSource = new Uri(Path.GetFullPath(file)).AbsoluteUri + "?immutable=1",
                Mode = SqliteOpenMode.ReadOnly,
                Pooling = false,
            }.ToString()
        );
        connection.Open();
        return connection;
    }

    /// <summary>Looks at a file's header and length alone, which is quick: an empty, truncated or foreign file is
    /// found.</summary>
    /// <param name="file">The file.</param>
    /// <param name="countsPages">Whether its length must be what its header says; not where a log lies beside it.</param>
    /// <returns>What is wrong, to be read after the file's name; null where it looks whole.</returns>
    public static string? QuickFault(string file, bool countsPages = true)
    {
        try
        {
            using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var header = new byte[HeaderLength];
            var read = stream.ReadAtLeast(header, HeaderLength, throwOnEndOfStream: false);
            return read == 0 ? "is empty" : HeaderFault(header.AsSpan(0, read), countsPages ? stream.Length : null);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return $"cannot be read ({problem.Message.ReplaceLineEndings(" ")})";
        }
    }

    /// <summary>Checks every page and every reference of a file.</summary>
    /// <returns>What is wrong, to be read after the file's name; null where it is whole.</returns>
    public static string? Fault(string file)
    {
        if (QuickFault(file) is { } wrong)
            return wrong;
        try
        {
            using var connection = Open(file);
            return InnerFault(connection);
        }
        catch (SqliteException problem)
        {
            return Damaged(problem.Message);
        }
    }

    /// <summary>Checks every page and every reference of an open database.</summary>
    public static string? InnerFault(SqliteConnection connection)
    {
        var found = SqliteFacts.Ask(connection, "PRAGMA integrity_check(1)");
        if (found != "ok")
            return Damaged(found);
        var dangling = SqliteFacts.Ask(connection, "SELECT COUNT(*) FROM pragma_foreign_key_check");
        return dangling == "0" ? null : Damaged($"{dangling} rows refer to rows that are missing");
    }

    /// <summary>Says that a file is damaged, and how.</summary>
    public static string Damaged(string how) => $"is damaged ({how.ReplaceLineEndings(" ")})";

    // sqlite.org/fileformat2.html, section 1.3: page size at 16, size in pages at 28, application id at 68, all big-endian.
    private static string? HeaderFault(ReadOnlySpan<byte> header, long? length)
    {
        if (header.Length < HeaderLength || !header[..Magic.Length].SequenceEqual(Magic))
            return "is not a SQLite database";
        if (BinaryPrimitives.ReadInt32BigEndian(header[68..]) != SqliteFacts.ApplicationId)
            return "is another program's database";
        int size = BinaryPrimitives.ReadUInt16BigEndian(header[16..]);
        var whole = (size == 1 ? 65_536L : size) * BinaryPrimitives.ReadUInt32BigEndian(header[28..]);
        return length is null || length == whole
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"is cut off or overlong ({length} bytes of {whole})");
    }
}
