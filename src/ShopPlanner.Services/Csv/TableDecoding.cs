using System.Text;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Csv;

/// <summary>Bytes of a table to its text.</summary>
internal static class TableDecoding
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Returns the text; null with the fault of a file that is none.</summary>
    public static (string? Text, Fault? Fault) Read(ReadOnlyMemory<byte> file)
    {
        try
        {
            using var text = new StreamReader(new MemoryStream(file.ToArray()), Utf8, detectEncodingFromByteOrderMarks: true);
            return (text.ReadToEnd(), null);
        }
        catch (DecoderFallbackException)
        {
            return (null, new Fault("file", "", "isn't UTF-8 text: save it as “CSV UTF-8”"));
        }
    }
}
