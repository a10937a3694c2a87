namespace ShopPlanner.Services.Common;

/// <summary>Paper that packets are printed on.</summary>
public enum PaperSize
{
    /// <summary>8.5 × 11 in.</summary>
    Letter,

    /// <summary>210 × 297 mm.</summary>
    A4,
}
