using QRCoder;

namespace ShopPlanner.Packets.Labels;

/// <summary>A QR code (ISO/IEC 18004) for a screen.</summary>
public static class CodePicture
{
    private const int Module = 4;

    /// <summary>The code of a text as an SVG picture, dark on white whatever the page looks like: a camera reads no light code on
    /// dark. It can be read with up to 15% of it gone (level M).</summary>
    /// <param name="text">An address, up to 500 characters.</param>
    public static string Svg(string text)
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        using var picture = new SvgQRCode(data);
        return picture.GetGraphic(Module, "#000000", "#ffffff", drawQuietZones: true);
    }
}
