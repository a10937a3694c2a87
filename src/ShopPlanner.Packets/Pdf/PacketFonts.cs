using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Packets.Pdf;

/// <summary>Gives the PDF library the one typeface, so that a packet looks alike everywhere; a font of the machine only for
/// letters that it lacks.</summary>
internal sealed class PacketFonts : IFontResolver
{
    private static readonly ConcurrentDictionary<string, OtherFont> Others = new(StringComparer.Ordinal);
    private static readonly XPdfFontOptions Options = new(PdfFontEncoding.Unicode);

    // The library keeps one resolver for the process; it is set before the first font is made.
    static PacketFonts() => GlobalFontSettings.FontResolver = new PacketFonts();

    private PacketFonts() { }

    /// <summary>A font of the typeface, or the other one.</summary>
    public static XFont Of(Weight weight, OtherFont? other, double size) =>
        new(other is null ? weight.ToString() : Keep(other), size, XFontStyleEx.Regular, Options);

    private static string Keep(OtherFont other)
    {
        Others[other.File] = other;
        return other.File;
    }

    /// <inheritdoc />
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        Enum.TryParse<Weight>(familyName, out _) || Others.ContainsKey(familyName) ? new(familyName) : null;

    /// <inheritdoc />
    public byte[]? GetFont(string faceName) =>
        Enum.TryParse<Weight>(faceName, out var weight) ? Typeface.Of(weight).Bytes.ToArray()
        : Others.TryGetValue(faceName, out var other) ? other.Font.Bytes.ToArray()
        : null;
}
