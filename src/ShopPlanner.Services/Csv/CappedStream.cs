namespace ShopPlanner.Services.Csv;

/// <summary>Takes a stream into memory as long as it is no larger than allowed.</summary>
internal static class CappedStream
{
    /// <summary>Null when there is more.</summary>
    public static async Task<MemoryStream?> TakeAsync(Stream source, int mostBytes, CancellationToken cancel)
    {
        var taken = new MemoryStream();
        var buffer = new byte[81_920];
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
