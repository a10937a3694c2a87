namespace ShopPlanner.Core.Documents;

/// <summary>Takes a stream into memory, but not much more of it than is allowed.</summary>
public static class CappedReading
{
    private const int Chunk = 81_920;

    /// <summary>Returns all of the stream; where it is longer than allowed, enough of it to see that.</summary>
    /// <param name="source">Read from where it stands; left open.</param>
    /// <param name="mostBytes">The greatest length allowed.</param>
    public static ReadOnlyMemory<byte> Take(Stream source, int mostBytes)
    {
        ArgumentNullException.ThrowIfNull(source);
        using var taken = new MemoryStream();
        var buffer = new byte[Chunk];
        int read;
        while (taken.Length <= mostBytes && (read = source.Read(buffer)) > 0)
            taken.Write(buffer, 0, read);
        return taken.GetBuffer().AsMemory(0, (int)taken.Length);
    }

    /// <summary>Returns all of the stream, from its beginning; null where it is longer than allowed.</summary>
    /// <param name="source">Read from where it stands; left open.</param>
    /// <param name="mostBytes">The greatest length allowed.</param>
    /// <param name="cancel">Ends the reading.</param>
    public static async Task<MemoryStream?> TakeAsync(Stream source, int mostBytes, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(source);
        var taken = new MemoryStream();
        var buffer = new byte[Chunk];
        int read;
        while ((read = await source.ReadAsync(buffer, cancel)) > 0)
        {
            if (taken.Length + read > mostBytes)
                return null;
            taken.Write(buffer, 0, read);
        }

        taken.Position = 0;
        return taken;
    }
}
