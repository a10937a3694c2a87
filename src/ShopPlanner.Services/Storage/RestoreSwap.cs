using System.Globalization;
using System.Text.Json;

namespace ShopPlanner.Services.Storage;

/// <summary>
/// Puts a copy in the place of the database, and takes that back. A marker stands on the disk from before the first file moves
/// until the restored shop was opened; where a start finds it, the restore was cut short, and everything goes back. Only to be
/// used while the folder's lock is held and no connection is open.
/// </summary>
internal sealed class RestoreSwap(DataFolder folder, TimeProvider clock, StorageSteps steps)
{
    private sealed record Marker(string Aside, bool HadDatabase);

    /// <summary>Whether a restore was begun and not finished.</summary>
    public bool IsUnfinished => File.Exists(folder.RestoreMarker);

    private string Log => folder.Database + "-wal";

    /// <summary>Sets aside what is there and puts a copy in its place. The copy itself stays where it is.</summary>
    /// <exception cref="IOException">A step failed: <see cref="GoBack"/> is to be called.</exception>
    public void Put(string copy)
    {
        steps.Reach("bring the copy");
        Disk.CopyWhole(copy, folder.Restored);
        if (CopyFile.Fault(folder.Restored) is { } fault)
            throw new IOException($"{folder.Restored} {fault}.");
        var marker = new Marker(FreeName(), File.Exists(folder.Database));
        var aside = InFull(marker);
        steps.Reach("make the folder for what is there");
        Directory.CreateDirectory(aside);
        steps.Reach("write the marker");
        WriteMarker(marker);
        steps.Reach("set the log aside");
        Move(Log, aside);
        File.Delete(folder.Database + "-shm");
        steps.Reach("set the database aside");
        Move(folder.Database, aside);
        steps.Reach("put the copy in place");
        File.Move(folder.Restored, folder.Database);
        steps.Reach("open what was restored");
    }

    /// <summary>The restored shop is the shop from here on.</summary>
    /// <param name="keepsAside">Whether what was there before stays in its folder.</param>
    /// <returns>The folder that was kept; null where none was.</returns>
    public string? Finish(bool keepsAside)
    {
        var aside = InFull(ReadMarker()!);
        steps.Reach("remove the marker");
        File.Delete(folder.RestoreMarker);
        try
        {
            steps.Reach("remove what was set aside");
            if (keepsAside && Directory.EnumerateFiles(aside).Any())
                return aside;
            Directory.Delete(aside, recursive: true);
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The shop is restored; what lies aside takes room and nothing else.
            return aside;
        }
    }

    /// <summary>Puts back what was set aside. Cut short itself, it can be done again.</summary>
    public void GoBack()
    {
        if (ReadMarker() is { } marker)
            PutBack(marker);
        steps.Reach("remove the marker after going back");
        File.Delete(folder.Restored);
        File.Delete(folder.RestoreMarker);
    }

    // The database first: while it lies aside, what is in its place is the copy and goes with its log; once it is back, only its
    // own log can be missing.
    private void PutBack(Marker marker)
    {
        var aside = InFull(marker);
        var database = Path.Combine(aside, Path.GetFileName(folder.Database));
        if (File.Exists(database))
        {
            steps.Reach("remove the copy's log");
            File.Delete(Log);
            File.Delete(folder.Database + "-shm");
            steps.Reach("put the database back");
            File.Move(database, folder.Database, overwrite: true);
        }
        else if (!marker.HadDatabase && File.Exists(folder.Database))
        {
            File.Delete(Log);
            File.Delete(folder.Database + "-shm");
            File.Delete(folder.Database);
        }

        steps.Reach("put the log back");
        var log = Path.Combine(aside, Path.GetFileName(Log));
        if (File.Exists(log))
            File.Move(log, Log, overwrite: true);
        if (Directory.Exists(aside))
            Directory.Delete(aside, recursive: true);
    }

    // By its name alone: the data folder may be moved meanwhile.
    private string InFull(Marker marker) => Path.Combine(folder.Root, Path.GetFileName(marker.Aside));

    private string FreeName()
    {
        for (var at = clock.GetUtcNow().UtcDateTime; ; at = at.AddMilliseconds(1))
        {
            var name = "set-aside-" + at.ToString("yyyy-MM-dd'T'HHmmss.fff'Z'", CultureInfo.InvariantCulture);
            if (!Directory.Exists(Path.Combine(folder.Root, name)))
                return name;
        }
    }

    private static void Move(string file, string aside)
    {
        if (File.Exists(file))
            File.Move(file, Path.Combine(aside, Path.GetFileName(file)));
    }

    private void WriteMarker(Marker marker)
    {
        var part = folder.RestoreMarker + ".part";
        File.WriteAllText(part, JsonSerializer.Serialize(marker));
        Disk.Flush(part);
        File.Move(part, folder.RestoreMarker, overwrite: true);
    }

    private Marker? ReadMarker() =>
        IsUnfinished ? JsonSerializer.Deserialize<Marker>(File.ReadAllText(folder.RestoreMarker)) : null;
}
