using System.Collections.Immutable;

namespace ShopPlanner.Core.Bills;

/// <summary>A part as its own words tell it, before the bill as a whole is looked at.</summary>
/// <param name="Line">The line it begins in.</param>
/// <param name="AsWritten">Its words.</param>
internal sealed record BillEntry(int Line, string AsWritten)
{
    /// <summary>What it is called; empty where nothing says it.</summary>
    public string Name { get; init; } = "";

    /// <summary>Whether the name is only a word for a piece of wood.</summary>
    public bool IsGeneric { get; init; }

    /// <summary>Whether the name stands apart from a word for a piece, which alone may follow later:
    /// <c>Rails: 4 pieces</c>.</summary>
    public bool IsNamedApart { get; init; }

    /// <summary>How many.</summary>
    public int? Count { get; init; }

    /// <summary>Whether an article says that it is one.</summary>
    public bool HasArticle { get; init; }

    /// <summary>Whether marks say that something is as above.</summary>
    public bool IsDitto { get; init; }

    /// <summary>The size, finished where both are told.</summary>
    public ImmutableArray<WrittenSide> Sides { get; init; } = [];

    /// <summary>The size as bought, where both are told.</summary>
    public ImmutableArray<WrittenSide> Bought { get; init; } = [];

    /// <summary>Whether the only size is called one as bought.</summary>
    public bool IsBoughtOnly { get; init; }

    /// <summary>The wood.</summary>
    public string? Material { get; init; }

    /// <summary>Whether that wood is also that of the parts after it.</summary>
    public bool SetsMaterial { get; init; }

    /// <summary>Which faces are planed.</summary>
    public string? Surfacing { get; init; }

    /// <summary>The order that a heading of columns names.</summary>
    public SizeOrder? Order { get; init; }

    /// <summary>The thickness that a heading gives to what is below it.</summary>
    public WrittenSide? HeadingThickness { get; init; }

    /// <summary>Whether that heading is running text.</summary>
    public bool IsThicknessFromText { get; init; }

    /// <summary>What else it says.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What isn't certain.</summary>
    public ImmutableArray<string> Doubts { get; init; } = [];

    /// <summary>How many of thickness, width and length its words tell.</summary>
    public int Told => Sides.Sum(side => side.Tells);

    /// <summary>The same with one more doubt.</summary>
    public BillEntry Doubt(string doubt) => this with { Doubts = Doubts.Add(doubt) };
}
