namespace ShopPlanner.Core.Bills;

/// <summary>What a token of a bill is.</summary>
internal enum TokenKind
{
    /// <summary>A figure: whole, mixed, a fraction or a decimal.</summary>
    Number,

    /// <summary>A word or an abbreviation with its period.</summary>
    Word,

    /// <summary>A unit right after a figure.</summary>
    Unit,

    /// <summary>What stands between two sides: by, ×.</summary>
    By,

    /// <summary>Which faces are planed: S-4-S.</summary>
    Surfacing,

    /// <summary>The same as above: ", do.</summary>
    Ditto,

    /// <summary>A comma.</summary>
    Comma,

    /// <summary>The end of a sentence.</summary>
    Period,

    /// <summary>A colon.</summary>
    Colon,

    /// <summary>A semicolon.</summary>
    Semicolon,

    /// <summary>A hyphen or dash.</summary>
    Dash,

    /// <summary>Opens parentheses.</summary>
    Open,

    /// <summary>Closes parentheses.</summary>
    Close,

    /// <summary>A vertical line between two columns.</summary>
    Bar,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>A unit as bills write it.</summary>
internal enum SizeUnit
{
    /// <summary>None is written.</summary>
    None,

    /// <summary>Inches.</summary>
    Inch,

    /// <summary>Feet.</summary>
    Foot,

    /// <summary>Millimeters.</summary>
    Millimetre,

    /// <summary>Centimeters.</summary>
    Centimetre,

    /// <summary>Meters.</summary>
    Metre,
}

/// <summary>A token of a bill.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">As compared: lower case, without the period of an abbreviation.</param>
/// <param name="Start">Where it begins in its text.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Gap">Spaces before it; a tab counts as several.</param>
internal sealed record BillToken(TokenKind Kind, string Text, int Start, int End, int Gap)
{
    /// <summary>The gap that parts two columns of a table.</summary>
    public const int ColumnGap = 2;

    /// <summary>The figure; null for other kinds.</summary>
    public BillNumber? Number { get; init; }

    /// <summary>The unit, for one.</summary>
    public SizeUnit Unit { get; init; }

    /// <summary>Whether it begins with a capital letter.</summary>
    public bool IsCapital { get; init; }

    /// <summary>Whether it is this word.</summary>
    public bool Is(string word) => Kind == TokenKind.Word && string.Equals(Text, word, StringComparison.Ordinal);

    /// <summary>Whether it is one of these words.</summary>
    public bool IsIn(IReadOnlySet<string> words) => Kind == TokenKind.Word && words.Contains(Text);
}

/// <summary>A figure of a bill.</summary>
/// <param name="Plain">As <see cref="Measures.LengthText"/> reads it: <c>1 3/4</c>.</param>
internal sealed record BillNumber(string Plain)
{
    /// <summary>The value, where it is a whole number of at most nine digits.</summary>
    public int? Whole { get; init; }

    /// <summary>The numerator of its fraction; 0 without one.</summary>
    public long Numerator { get; init; }

    /// <summary>The denominator of its fraction; 0 without one.</summary>
    public long Denominator { get; init; }

    /// <summary>The whole part before the fraction; null where there is none.</summary>
    public int? Before { get; init; }

    /// <summary>Whether a space alone, or a dash between spaces, stands before the fraction, so that the whole part may be a
    /// count.</summary>
    public bool IsSpaced { get; init; }

    /// <summary>Whether a letter that looks like a digit was taken for one.</summary>
    public bool IsCorrected { get; init; }

    /// <summary>Why it is not read; null where it is.</summary>
    public string? Flaw { get; init; }

    /// <summary>Whether it has a fraction.</summary>
    public bool HasFraction => Denominator > 0;
}
