using System.Text;

namespace ShopPlanner.Cli;

/// <summary>
/// Where a result goes: standard output, or a file that appears whole or not at all. Whether it can be written is tried before
/// the work, so that no one waits for a plan that has nowhere to go.
/// </summary>
internal sealed class TextOutput
{
    private readonly string shown;
    private readonly string what;
    private readonly string? file;

    private TextOutput(string shown, string? file, string what) => (this.shown, this.file, this.what) = (shown, file, what);

    /// <summary>The place named, <c>-</c> or nothing for standard output.</summary>
    /// <param name="to">As given.</param>
    /// <param name="what">What is written there: <c>plan</c>.</param>
    /// <param name="from">The file that it is made from, which is not to be lost.</param>
    /// <param name="source">What that file holds: <c>request</c>.</param>
    public static TextOutput At(string? to, string what, string from, string source)
    {
        if (to is null or "-")
            return new TextOutput("standard output", null, what);
        var output = new TextOutput(to, Resolve(to, what), what);
        if (IsSame(output.file!, from, what))
            throw new Complaint($"'{to}' is the {source} itself: choose another name for the {what}");
        output.Try();
        return output;
    }

    public void Write(string text) => Write(new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text));

    public void Write(byte[] bytes) =>
        Guard(() =>
        {
            if (file is null)
                WriteStandardOutput(bytes);
            else if (IsDevice)
                File.WriteAllBytes(file, bytes);
            else
                WriteWhole(bytes);
        });

    // A device such as /dev/null is written to; replacing it by a file would take it from everyone.
    private bool IsDevice => file!.StartsWith("/dev/", StringComparison.Ordinal);

    private static string Resolve(string to, string what)
    {
        if (string.IsNullOrWhiteSpace(to))
            throw new Complaint($"the {what}'s file has no name");
        var full = Path.GetFullPath(to);
        return full.StartsWith("/dev/", StringComparison.Ordinal) || !File.Exists(full)
            ? full
            : File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full;
    }

    private static bool IsSame(string file, string from, string what) =>
        from != DocumentInput.StandardInput && File.Exists(file) && File.Exists(from) && Resolve(from, what) == file;

    private void Try()
    {
        if (IsDevice)
            return;
        if (Directory.Exists(file))
            throw new Complaint($"'{shown}' is a folder: name the {what}'s file");
        if (!Directory.Exists(Path.GetDirectoryName(file)))
            throw new Complaint($"'{shown}' cannot be written: there is no folder '{Path.GetDirectoryName(file)}'");
        try
        {
            new FileStream(
                Beside(),
                FileMode.CreateNew,
                FileAccess.Write,
                FileShare.None,
                1,
                FileOptions.DeleteOnClose
            ).Dispose();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new Complaint(
                $"'{shown}' cannot be written: the folder '{Path.GetDirectoryName(file)}' does not allow new files"
            );
        }
    }

    private void WriteWhole(byte[] bytes)
    {
        var whole = Beside();
        try
        {
            File.WriteAllBytes(whole, bytes);
            File.Move(whole, file!, overwrite: true);
        }
        finally
        {
            File.Delete(whole);
        }
    }

    private string Beside() => Path.Combine(Path.GetDirectoryName(file)!, $".{Path.GetFileName(file)}.{Guid.NewGuid():N}.tmp");

    private static void WriteStandardOutput(byte[] bytes)
    {
        using var output = Console.OpenStandardOutput();
        output.Write(bytes);
    }

    private void Guard(Action write)
    {
        try
        {
            write();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw Complaint.About($"'{shown}' cannot be written", exception);
        }
    }
}
