using System.Buffers.Binary;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Publishing;

/// <summary>A photo that says nothing but what is seen on it: no place, no time, no camera, no smaller picture of what was cut
/// away.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Ending">Of its name: <c>jpg</c>, <c>png</c> or <c>webp</c>.</param>
public sealed record CleanPhoto(ReadOnlyMemory<byte> Bytes, string Ending)
{
    /// <summary>The largest photo that is taken, in bytes.</summary>
    public const int MostBytes = 20_000_000;

    /// <summary>The most photos of a publication.</summary>
    public const int Most = 10;

    /// <summary>Returns the photo cleaned. The picture itself is copied as it is, so that nothing of its quality is lost; of what
    /// stands around it only what the picture needs is written again.</summary>
    /// <param name="name">The file's name, for the fault.</param>
    /// <param name="file">JPEG, PNG or WebP.</param>
    public static (CleanPhoto? Photo, Fault? Fault) Of(string name, ReadOnlyMemory<byte> file)
    {
        if (file.Length > MostBytes)
            return (null, Fault.Of("photos", name, "is larger than 20 MB, the most that a photo may have"));
        var bytes = file.Span;
        try
        {
            if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]))
                return (new(JpegCleaning.Clean(bytes), "jpg"), null);
            if (bytes.StartsWith(PngCleaning.Signature))
                return (new(PngCleaning.Clean(bytes), "png"), null);
            if (bytes.Length > 16 && bytes.StartsWith("RIFF"u8) && bytes[8..].StartsWith("WEBP"u8))
                return (new(WebpCleaning.Clean(bytes), "webp"), null);
        }
        catch (InvalidDataException)
        {
            return (null, Fault.Of("photos", name, "is cut off or damaged: save it again as JPEG"));
        }

        return (null, Fault.Of("photos", name, "isn't a JPEG, PNG or WebP picture: save it as JPEG"));
    }

    /// <summary>Returns a piece of a file; a file that ends before is damaged.</summary>
    internal static ReadOnlySpan<byte> Slice(ReadOnlySpan<byte> bytes, long at, long length) =>
        at < 0 || length < 0 || at + length > bytes.Length
            ? throw new InvalidDataException("the file ends too soon")
            : bytes.Slice((int)at, (int)length);

    /// <summary>Returns a number of two bytes, the first one greater.</summary>
    internal static int TwoBytes(ReadOnlySpan<byte> bytes, long at) => BinaryPrimitives.ReadUInt16BigEndian(Slice(bytes, at, 2));
}
