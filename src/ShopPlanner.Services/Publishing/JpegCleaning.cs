using System.Buffers.Binary;

namespace ShopPlanner.Services.Publishing;

/// <summary>Writes a JPEG picture (ITU-T T.81) without what a camera adds. Kept are tables, frames and scans, the color profile,
/// and which way up it is.</summary>
internal static class JpegCleaning
{
    private const byte Mark = 0xFF,
        Start = 0xD8,
        End = 0xD9,
        Scan = 0xDA,
        App0 = 0xE0,
        App1 = 0xE1,
        App2 = 0xE2,
        App14 = 0xEE,
        Restart0 = 0xD0,
        Restart7 = 0xD7;

    private const int Upright = 1,
        MostTurned = 8,
        OrientationTag = 0x0112;

    // A JFIF header without the small picture that may follow it: version 1.1, square pixels.
    private static readonly byte[] Jfif = [Mark, App0, 0, 16, .. "JFIF\0"u8, 1, 1, 0, 0, 1, 0, 1, 0, 0];

    /// <summary>Returns the clean file.</summary>
    /// <exception cref="InvalidDataException">It is damaged.</exception>
    public static byte[] Clean(ReadOnlySpan<byte> file)
    {
        using var clean = new MemoryStream();
        clean.Write([Mark, Start]);
        var at = 2L;
        var turned = Upright;
        while (true)
        {
            var code = NextMarker(file, ref at);
            if (code == End)
                break;
            var segment = Segment(file, at);
            if (code == App1 && Orientation(segment) is { } found)
                turned = found;
            else if (code == App0 && segment.StartsWith("JFIF\0"u8))
                clean.Write(Jfif);
            else if (IsKept(code, segment))
                Write(clean, code, segment);
            at += segment.Length + 2;
            if (code == Scan)
                at += CopyScan(clean, file, at);
        }

        clean.Write([Mark, End]);
        return turned == Upright ? clean.ToArray() : WithTurn(clean.ToArray(), turned);
    }

    private static byte NextMarker(ReadOnlySpan<byte> file, ref long at)
    {
        if (CleanPhoto.Slice(file, at, 1)[0] != Mark)
            throw new InvalidDataException("a marker is missing");
        while (CleanPhoto.Slice(file, at, 1)[0] == Mark)
            at++;
        return file[(int)at++];
    }

    // What follows a marker's length, without the length itself.
    private static ReadOnlySpan<byte> Segment(ReadOnlySpan<byte> file, long at) =>
        CleanPhoto.Slice(file, at + 2, CleanPhoto.TwoBytes(file, at) - 2);

    // Frames, tables, scans and restart intervals; of the applications' own segments the color profile and Adobe's transform.
    private static bool IsKept(byte code, ReadOnlySpan<byte> segment) =>
        code switch
        {
            App2 => segment.StartsWith("ICC_PROFILE\0"u8),
            App14 => segment.StartsWith("Adobe"u8),
            >= 0xC0 and <= 0xCF or (>= Scan and <= 0xDF) => true,
            _ => false,
        };

    private static void Write(MemoryStream clean, byte code, ReadOnlySpan<byte> segment)
    {
        Span<byte> length = stackalloc byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(length, (ushort)(segment.Length + 2));
        clean.Write([Mark, code]);
        clean.Write(length);
        clean.Write(segment);
    }

    // The picture's own bytes go on up to the next marker that is neither stuffing nor a restart.
    private static long CopyScan(MemoryStream clean, ReadOnlySpan<byte> file, long from)
    {
        var at = from;
        while (true)
        {
            var pair = CleanPhoto.Slice(file, at, 2);
            if (pair[0] == Mark && pair[1] is not (0 or Mark or (>= Restart0 and <= Restart7)))
                break;
            at++;
        }

        clean.Write(file[(int)from..(int)at]);
        return at - from;
    }

    // Exif: a TIFF header in either byte order, then the entries of the first directory.
    private static int? Orientation(ReadOnlySpan<byte> segment)
    {
        if (!segment.StartsWith("Exif\0\0"u8) || segment.Length < 16)
            return null;
        var tiff = segment[6..];
        var isLittle = tiff[0] == 'I';
        int Two(ReadOnlySpan<byte> bytes) =>
            isLittle ? BinaryPrimitives.ReadUInt16LittleEndian(bytes) : BinaryPrimitives.ReadUInt16BigEndian(bytes);
        var first = isLittle
            ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..])
            : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]);
        if (first + 2 > tiff.Length)
            return null;
        for (var at = (int)first + 2; at + 12 <= tiff.Length && at < first + 2 + (12 * Two(tiff[(int)first..])); at += 12)
            if (Two(tiff[at..]) == OrientationTag && Two(tiff[(at + 8)..]) is >= Upright and <= MostTurned and var turned)
                return turned;
        return null;
    }

    // An Exif segment that says which way up the picture is, and nothing else.
    private static byte[] WithTurn(byte[] clean, int turned)
    {
        byte[] exif = [.. "Exif\0\0MM\0*"u8, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)turned, 0, 0, 0, 0, 0, 0];
        using var whole = new MemoryStream();
        whole.Write(clean.AsSpan(0, 2));
        Write(whole, App1, exif);
        whole.Write(clean.AsSpan(2));
        return whole.ToArray();
    }
}
