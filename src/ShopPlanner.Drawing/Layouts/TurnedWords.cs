namespace ShopPlanner.Drawing.Layouts;

/// <summary>Says of a piece that it lies across the sheet: an arrow along the sheet's grain, and the word.</summary>
public static class TurnedWords
{
    /// <summary>The arrow: it lies as the face grain does in the drawing of a sheet.</summary>
    public const string Arrow = "↔";

    /// <summary>The arrow with the word, beside a part in a list.</summary>
    public const string Both = Arrow + " turned";

    /// <summary>The mark of a piece with the arrow where it is turned.</summary>
    internal static string Mark(string mark, PiecePicture piece) => piece.Turned ? $"{mark} {Arrow}" : mark;

    /// <summary>A text about a piece, with the word where it is turned.</summary>
    internal static string After(string text, bool turned) => turned ? $"{text}, turned" : text;

    /// <summary>What the arrow means, for the foot of a drawing; null where no piece is turned.</summary>
    internal static string? Note(LayoutPicture picture) =>
        !picture.Pieces.Any(piece => piece.Turned) ? null
        : picture.HasGrain ? $"{Both}: the grain runs across the part"
        : $"{Both}: the part lies across the sheet";
}
