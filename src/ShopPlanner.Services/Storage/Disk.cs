using System.Security.Cryptography;

namespace ShopPlanner.Services.Storage;

/// <summary>What is asked of the disk besides reading and writing.</summary>
internal static class Disk
{
    /// <summary>Returns once what was written to a file is on the disk.</summary>
    public static void Flush(string file)
    {
        using var handle = File.OpenHandle(file, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        RandomAccess.FlushToDisk(handle);
    }

    /// <summary>Returns the SHA-256 of a file, in hexadecimal.</summary>
    public static string Hash(string file)
    {
        using var stream = File.OpenRead(file);
        return Convert.ToHexString(SHA256.HashData(stream));
    }

    /// <summary>Copies a file under a passing name, sees that every byte arrived, and gives it its name then.</summary>
    /// <exception cref="IOException">It did not arrive whole; nothing is left under the name.</exception>
    public static void CopyWhole(string from, string to)
    {
        var part = to + ".part";
        try
        {
            File.Copy(from, part, overwrite: true);
            // A backup that was marked read-only to be safe is not to become a shop that cannot be written.
            if (new FileInfo(part) is { IsReadOnly: true } marked)
                marked.IsReadOnly = false;
            Flush(part);
            if (Hash(part) != Hash(from))
                throw new IOException($"{to} is not what was written there.");
            File.Move(part, to, overwrite: true);
        }
        finally
        {
            File.Delete(part);
        }
    }
}
