using System.Diagnostics;

namespace ShopPlanner.Services.Tests.Storage;

/// <summary>A disk in memory of a few megabytes, unmounted afterwards. Only the superuser of Linux may mount one.</summary>
internal sealed class SmallDisk : IDisposable
{
    private SmallDisk(string folder) => Folder = folder;

    public string Folder { get; }

    private string Filler => Path.Combine(Folder, "filler");

    /// <summary>Mounts one; skips the test where that is not allowed.</summary>
    public static SmallDisk Mount(int kilobytes)
    {
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && Environment.UserName == "root",
            "only root of Linux can mount a small disk"
        );
        var folder = TestShop.NewFolder();
        var mounted = Run("mount", "-t", "tmpfs", "-o", $"size={kilobytes}k", "tmpfs", folder);
        Assert.SkipUnless(mounted, "this system does not let a small disk be mounted");
        return new SmallDisk(folder);
    }

    /// <summary>Fills the disk up to some bytes.</summary>
    public void Fill(long leave)
    {
        using var file = new FileStream(Filler, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 1);
        var page = new byte[4096];
        while (new DriveInfo(Folder).AvailableFreeSpace > leave)
            file.Write(page);
    }

    /// <summary>Makes room again.</summary>
    public void Clear() => File.Delete(Filler);

    public void Dispose()
    {
        Run("umount", Folder);
        Directory.Delete(Folder);
    }

    private static bool Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
