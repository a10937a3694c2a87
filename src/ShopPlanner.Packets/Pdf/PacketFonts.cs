using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Packets.Pdf;

/// <summary>Gives the PDF library the one typeface; no font of the machine is ever used, so a packet looks alike
/// everywhere.</summary>
internal sealed class PacketFonts : IFontResolver
{
    private static readonly XPdfFontOptions Options = new(PdfFontEncoding.Unicode);

    // The library keeps one resolver for the process; it is set before the first font is made.
    static PacketFonts() => GlobalFontSettings.FontResolver = new PacketFonts();

    private PacketFonts() { }

    /// <summary>A font of the typeface.</summary>
    public static XFont Of(Weight weight, double size) => new(weight.ToString(), size, XFontStyleEx.Regular, Options);

    /// <inheritdoc />
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        Enum.TryParse<Weight>(familyName, out _) ? new(familyName) : null;

    /// <inheritdoc />
    public byte[]? GetFont(string faceName) =>
        Enum.TryParse<Weight>(faceName, out var weight) ? Typeface.Of(weight).Bytes.ToArray() : null;
}
