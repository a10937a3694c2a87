namespace ShopPlanner.Cli;

/// <summary>Where a document comes from: a file, or standard input for <c>-</c>.</summary>
internal static class DocumentInput
{
    public const string StandardInput = "-";

    /// <summary>What the reader makes of it.</summary>
    /// <param name="from">As given.</param>
    /// <param name="what">What is wanted there: <c>request</c>.</param>
    /// <param name="read">Takes the bytes.</param>
    public static T Read<T>(string from, string what, Func<Stream, T> read)
    {
        if (Directory.Exists(from))
            throw new Complaint($"'{from}' is a folder: name the {what}'s file");
        try
        {
            using var stream = from == StandardInput ? Console.OpenStandardInput() : File.OpenRead(from);
            return read(stream);
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new Complaint($"'{from}': there is no such file");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw Complaint.About($"'{from}' cannot be read", exception);
        }
    }
}
