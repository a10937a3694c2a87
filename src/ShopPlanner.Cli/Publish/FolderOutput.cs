using ShopPlanner.Services.Publishing;

namespace ShopPlanner.Cli.Publish;

/// <summary>Where a publication goes: a zip file, or a folder that is new or empty. Either appears whole or not at all.</summary>
internal sealed class FolderOutput
{
    private const string Zip = ".zip";

    private readonly string shown;
    private readonly string full;

    private FolderOutput(string shown, string full) => (this.shown, this.full) = (shown, full);

    private bool IsZip => full.EndsWith(Zip, StringComparison.OrdinalIgnoreCase);

    private string Parent => Path.GetDirectoryName(full)!;

    /// <summary>The place named. Whether it can be written is looked at before the work.</summary>
    /// <param name="to">As given.</param>
    /// <param name="what">What is written there.</param>
    public static FolderOutput At(string to, string what)
    {
        if (string.IsNullOrWhiteSpace(to) || to == DocumentInput.StandardInput)
            throw new Complaint($"-o: name a folder or a {Zip} file for the {what}");
        var output = new FolderOutput(to, Path.TrimEndingDirectorySeparator(Path.GetFullPath(to)));
        output.Check(what);
        return output;
    }

    /// <summary>Writes all files.</summary>
    public void Write(Publication publication, DateOnly day)
    {
        var beside = Path.Combine(Parent, $".{Path.GetFileName(full)}.{Guid.NewGuid():N}.tmp");
        try
        {
            if (IsZip)
                WriteZip(publication, day, beside);
            else
                WriteFolder(publication, beside);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw Complaint.About($"'{shown}' cannot be written", exception);
        }
        finally
        {
            if (Directory.Exists(beside))
                Directory.Delete(beside, recursive: true);
            else
                File.Delete(beside);
        }
    }

    private void Check(string what)
    {
        if (!Directory.Exists(Parent))
            throw new Complaint($"'{shown}' cannot be written: there is no folder '{Parent}'");
        if (IsZip && Directory.Exists(full))
            throw new Complaint($"'{shown}' is a folder: name the {what}'s file");
        if (!IsZip && File.Exists(full))
            throw new Complaint($"'{shown}' is a file: name a folder, or a file that ends in {Zip}");
        if (!IsZip && Directory.Exists(full) && Directory.EnumerateFileSystemEntries(full).Any())
            throw new Complaint($"'{shown}' is not empty: name a new folder, so that nothing in it is lost");
    }

    private void WriteZip(Publication publication, DateOnly day, string beside)
    {
        File.WriteAllBytes(beside, publication.Zip(day));
        File.Move(beside, full, overwrite: true);
    }

    private void WriteFolder(Publication publication, string beside)
    {
        foreach (var file in publication.Files)
        {
            var path = Path.Combine(beside, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, file.Bytes.ToArray());
        }

        // Empty, as was seen before.
        if (Directory.Exists(full))
            Directory.Delete(full);
        Directory.Move(beside, full);
    }
}
