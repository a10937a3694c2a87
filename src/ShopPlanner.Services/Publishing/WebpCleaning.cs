using System.Buffers.Binary;
using System.Text;

namespace ShopPlanner.Services.Publishing;

/// <summary>Writes a WebP picture (RFC 9649) without the chunks that tell of camera and place.</summary>
internal static class WebpCleaning
{
    private const string Kept = "VP8X|VP8 |VP8L|ALPH|ICCP|ANIM|ANMF";

    private const int HeaderLength = 12,
        ChunkHeader = 8;

    // In the first byte of VP8X: Exif and XMP follow.
    private const byte Told = 0b0000_1100;

    /// <summary>Returns the clean file.</summary>
    /// <exception cref="InvalidDataException">It is damaged.</exception>
    public static byte[] Clean(ReadOnlySpan<byte> file)
    {
        using var chunks = new MemoryStream();
        long at = HeaderLength;
        var end = Math.Min(file.Length, BinaryPrimitives.ReadUInt32LittleEndian(CleanPhoto.Slice(file, 4, 4)) + 8L);
        while (at + ChunkHeader <= end)
        {
            var kind = Encoding.ASCII.GetString(CleanPhoto.Slice(file, at, 4));
            var length = BinaryPrimitives.ReadUInt32LittleEndian(CleanPhoto.Slice(file, at + 4, 4));
            var chunk = CleanPhoto.Slice(file, at, ChunkHeader + length + (length % 2)).ToArray();
            if (kind == "VP8X" && length > 0)
                chunk[ChunkHeader] = (byte)(chunk[ChunkHeader] & ~Told);
            if (Kept.Split('|').Contains(kind, StringComparer.Ordinal))
                chunks.Write(chunk);
            at += chunk.Length;
        }

        var size = new byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(size, (uint)(chunks.Length + 4));
        return [.. "RIFF"u8, .. size, .. "WEBP"u8, .. chunks.ToArray()];
    }
}
