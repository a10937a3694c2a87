using System.Buffers.Binary;
using System.Text;

namespace ShopPlanner.Services.Tests.Publishing;

/// <summary>Small picture files with what cameras add.</summary>
internal static class Pictures
{
    public const string Place = "GPS 52.5200 N";

    /// <summary>A JPEG (ITU-T T.81) of segments: Exif with a turn and a place, XMP, a comment, tables, frame, scan, and bytes after
    /// the end as a motion photo has them.</summary>
    public static byte[] Jpeg(int turned = 6) =>
        [
            0xFF,
            0xD8,
            .. Segment(0xE0, [.. "JFIF\0"u8, 1, 2, 0, 0, 1, 0, 1, 2, 2, .. new byte[12]]),
            .. Segment(
                0xE1,
                [.. "Exif\0\0II*\0"u8, 8, 0, 0, 0, 2, 0, .. Entry(0x0112, turned), .. Entry(0x8825, 99), .. Bytes(Place)]
            ),
            .. Segment(0xE1, [.. "http://ns.adobe.com/xap/1.0/\0"u8, .. Bytes(Place)]),
            .. Segment(0xE2, [.. "ICC_PROFILE\0"u8, 1, 1, 7, 7]),
            .. Segment(0xED, Bytes("Photoshop " + Place)),
            .. Segment(0xFE, Bytes(Place)),
            .. Segment(0xDB, new byte[65]),
            .. Segment(0xC0, [8, 0, 16, 0, 16, 1, 1, 0x11, 0]),
            .. Segment(0xC4, new byte[20]),
            .. Segment(0xDA, [1, 1, 0, 0, 63, 0]),
            .. Scan,
            0xFF,
            0xD9,
            .. Bytes("ftyp " + Place),
        ];

    /// <summary>The picture's own bytes in it, with a stuffed byte and a restart.</summary>
    public static byte[] Scan => [1, 2, 0xFF, 0, 3, 0xFF, 0xD0, 4];

    /// <summary>A PNG (ISO/IEC 15948) with a text and Exif.</summary>
    public static byte[] Png() =>
        [
            0x89,
            .. "PNG\r\n"u8,
            0x1A,
            0x0A,
            .. Chunk("IHDR", new byte[13]),
            .. Chunk("eXIf", Bytes(Place)),
            .. Chunk("tEXt", Bytes("Comment\0" + Place)),
            .. Chunk("tIME", new byte[7]),
            .. Chunk("IDAT", [1, 2, 3]),
            .. Chunk("IEND", []),
            .. Bytes(Place),
        ];

    /// <summary>A WebP (RFC 9649) with Exif and XMP.</summary>
    public static byte[] Webp()
    {
        byte[] chunks =
        [
            .. Riff("VP8X", [0b0010_1100, 0, 0, 0, 15, 0, 0, 15, 0, 0]),
            .. Riff("ICCP", [1, 2]),
            .. Riff("VP8 ", [1, 2, 3]),
            .. Riff("EXIF", Bytes(Place)),
            .. Riff("XMP ", Bytes(Place)),
        ];
        return [.. "RIFF"u8, .. Little(chunks.Length + 4), .. "WEBP"u8, .. chunks];
    }

    private static byte[] Segment(byte code, byte[] content) => [0xFF, code, .. Two(content.Length + 2), .. content];

    private static byte[] Entry(ushort tag, int value) => [(byte)tag, (byte)(tag >> 8), 3, 0, 1, 0, 0, 0, (byte)value, 0, 0, 0];

    private static byte[] Chunk(string kind, byte[] content) =>
        [0, 0, .. Two(content.Length), .. Bytes(kind), .. content, 0, 0, 0, 0];

    private static byte[] Riff(string kind, byte[] content) =>
        [.. Bytes(kind), .. Little(content.Length), .. content, .. new byte[content.Length % 2]];

    private static byte[] Two(int number) => [(byte)(number >> 8), (byte)number];

    private static byte[] Little(int number)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, number);
        return bytes;
    }

    private static byte[] Bytes(string text) => Encoding.ASCII.GetBytes(text);
}
