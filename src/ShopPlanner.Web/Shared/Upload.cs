using Microsoft.AspNetCore.Components.Forms;
using Microsoft.JSInterop;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Shared;

/// <summary>What came of reading a chosen file: its bytes, or why they are not there.</summary>
/// <param name="Bytes">The whole file; null where it did not arrive.</param>
/// <param name="Fault">Why not; null where it arrived.</param>
internal sealed record Upload(byte[]? Bytes, Fault? Fault)
{
    // Less than the three minutes that the server waits for a browser to come back, so that it finds the answer on the page.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private const int ChunkBytes = 32 * 1024;

    /// <summary>Reads a file whole. Where the line breaks or falls silent, a fault says so.</summary>
    /// <param name="file">The chosen file.</param>
    /// <param name="most">Bytes that it may have.</param>
    /// <param name="tooLarge">What is wrong with one that has more.</param>
    /// <param name="clock">Tells how long the line has been silent.</param>
    public static async Task<Upload> ReadAsync(IBrowserFile file, long most, string tooLarge, TimeProvider clock)
    {
        if (file.Size > most)
            return new(null, Fault.Of("file", file.Name, tooLarge));
        try
        {
            var bytes = await TakeAsync(file, most, clock);
            return bytes.Length == file.Size ? new(bytes, null) : NotWhole(file);
        }
        catch (Exception problem) when (IsOfTheLine(problem))
        {
            return NotWhole(file);
        }
    }

    private static async Task<byte[]> TakeAsync(IBrowserFile file, long most, TimeProvider clock)
    {
        using var taken = new MemoryStream();
        await using var stream = file.OpenReadStream(most);
        var chunk = new byte[ChunkBytes];
        while (taken.Length < file.Size)
        {
            var read = await stream.ReadAsync(chunk).AsTask().WaitAsync(Patience, clock);
            if (read == 0)
                break;
            taken.Write(chunk, 0, read);
        }

        return taken.ToArray();
    }

    // The framework tells a line that broke as an invalid operation, one that fell silent as a timeout.
    private static bool IsOfTheLine(Exception problem) =>
        problem
            is IOException
                or TimeoutException
                or InvalidOperationException
                or OperationCanceledException
                or JSException
                or JSDisconnectedException;

    private static Upload NotWhole(IBrowserFile file) =>
        new(null, Fault.Of("file", file.Name, "did not arrive complete, and nothing was changed: choose it again"));
}
