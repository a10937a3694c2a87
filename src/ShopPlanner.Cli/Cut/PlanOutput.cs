namespace ShopPlanner.Cli.Cut;

/// <summary>
/// Where the plan goes: standard output, or a file that appears whole or not at all. Whether it can be written is tried before
/// the search, so that no one waits for a plan that has nowhere to go.
/// </summary>
internal sealed class PlanOutput
{
    private readonly string shown;
    private readonly string? file;

    private PlanOutput(string shown, string? file) => (this.shown, this.file) = (shown, file);

    /// <summary>The place named, <c>-</c> or nothing for standard output.</summary>
    public static PlanOutput At(string? to, string request)
    {
        if (to is null or "-") return new PlanOutput("standard output", null);
        var output = new PlanOutput(to, Resolve(to));
        if (IsSame(output.file!, request)) throw new Complaint($"'{to}' is the request itself: give the plan another name");
        output.Try();
        return output;
    }

    public void Write(string text) => Guard(() =>
    {
        if (file is null) WriteStandardOutput(text);
        else if (IsDevice) File.WriteAllText(file, text);
        else WriteWhole(text);
    });

    // A device such as /dev/null is written to; replacing it by a file would take it from everyone.
    private bool IsDevice => file!.StartsWith("/dev/", StringComparison.Ordinal);

    private static string Resolve(string to)
    {
        if (string.IsNullOrWhiteSpace(to)) throw new Complaint("the plan's file has no name");
        var full = Path.GetFullPath(to);
        return full.StartsWith("/dev/", StringComparison.Ordinal) || !File.Exists(full)
            ? full
            : File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full;
    }

    private static bool IsSame(string file, string request) =>
        request != RequestInput.StandardInput && File.Exists(file) && File.Exists(request) && Resolve(request) == file;

    private void Try()
    {
        if (IsDevice) return;
        if (Directory.Exists(file)) throw new Complaint($"'{shown}' is a folder: name the plan's file");
        if (!Directory.Exists(Path.GetDirectoryName(file))) throw new Complaint($"'{shown}' cannot be written: there is no folder '{Path.GetDirectoryName(file)}'");
        try
        {
            new FileStream(Beside(), FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose).Dispose();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new Complaint($"'{shown}' cannot be written: the folder '{Path.GetDirectoryName(file)}' takes no new file");
        }
    }

    private void WriteWhole(string text)
    {
        var whole = Beside();
        try
        {
            File.WriteAllText(whole, text);
            File.Move(whole, file!, overwrite: true);
        }
        finally
        {
            File.Delete(whole);
        }
    }

    private string Beside() => Path.Combine(Path.GetDirectoryName(file)!, $".{Path.GetFileName(file)}.{Guid.NewGuid():N}.tmp");

    private static void WriteStandardOutput(string text)
    {
        using var output = new StreamWriter(Console.OpenStandardOutput());
        output.Write(text);
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
