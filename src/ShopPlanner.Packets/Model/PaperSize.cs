namespace ShopPlanner.Packets.Model;

/// <summary>A size of paper.</summary>
public enum PaperSize
{
    /// <summary>US Letter, 8.5 × 11 in.</summary>
    Letter,

    /// <summary>ISO 216 A4, 210 × 297 mm.</summary>
    A4,
}

/// <summary>Pages in points of 1/72 in.</summary>
internal static class Paper
{
    /// <summary>Kept clear all round: home printers leave about 1/4 in (common practice); twice that for punching.</summary>
    public const double Margin = 36;

    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>Width and height.</summary>
    public static (double Width, double Height) Of(PaperSize paper) =>
        paper == PaperSize.Letter ? (8.5 * 72, 11 * 72) : (210 * PointsPerMillimetre, 297 * PointsPerMillimetre);
}
