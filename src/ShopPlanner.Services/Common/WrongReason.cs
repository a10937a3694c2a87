namespace ShopPlanner.Services.Common;

/// <summary>Why a piece is of no use as the part it was to be.</summary>
public enum WrongReason
{
    /// <summary>Too short or too narrow.</summary>
    Short,

    /// <summary>Chipped or torn out.</summary>
    Chipped,

    /// <summary>The good face is on the wrong side, or the piece is turned.</summary>
    WrongFace,

    /// <summary>Anything else.</summary>
    Other,
}
