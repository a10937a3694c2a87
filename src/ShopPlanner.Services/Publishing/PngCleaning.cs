using System.Buffers.Binary;
using System.Text;

namespace ShopPlanner.Services.Publishing;

/// <summary>Writes a PNG picture (ISO/IEC 15948) with the chunks that its looks need, and no others.</summary>
internal static class PngCleaning
{
    private const string Kept = "IHDR PLTE IDAT IEND tRNS cHRM gAMA iCCP sBIT sRGB cICP bKGD pHYs";

    private const int Around = 12;

    /// <summary>What every PNG file begins with.</summary>
    public static readonly byte[] Signature = [0x89, .. "PNG\r\n\u001a\n"u8];

    /// <summary>Returns the clean file.</summary>
    /// <exception cref="InvalidDataException">It is damaged.</exception>
    public static byte[] Clean(ReadOnlySpan<byte> file)
    {
        using var clean = new MemoryStream();
        clean.Write(Signature);
        long at = Signature.Length;
        var kind = "";
        while (kind != "IEND")
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(CleanPhoto.Slice(file, at, 4));
            kind = Encoding.ASCII.GetString(CleanPhoto.Slice(file, at + 4, 4));
            var chunk = CleanPhoto.Slice(file, at, length + Around);
            if (Kept.Split(' ').Contains(kind, StringComparer.Ordinal))
                clean.Write(chunk);
            at += chunk.Length;
        }

        return clean.ToArray();
    }
}
