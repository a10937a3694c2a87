using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>A stock bill as read.</summary>
/// <param name="Unit">Of a figure without one.</param>
/// <param name="Order">In which the three figures of a size stand.</param>
/// <param name="Parts">In the order written.</param>
/// <param name="Others">All lines, or ends of lines, that aren't parts, in order.</param>
/// <param name="Remarks">What holds for the bill as a whole, in plain sentences.</param>
public sealed record StockBill(
    LengthUnit Unit,
    SizeOrder Order,
    ImmutableArray<BillPart> Parts,
    ImmutableArray<BillNote> Others,
    ImmutableArray<string> Remarks
);

/// <summary>In which order a bill writes the three figures of a size.</summary>
public enum SizeOrder
{
    /// <summary>Thickness, width, length: the usual one.</summary>
    ThicknessWidthLength,

    /// <summary>Thickness, length, width.</summary>
    ThicknessLengthWidth,

    /// <summary>Length, width, thickness.</summary>
    LengthWidthThickness,

    /// <summary>Width, length, thickness.</summary>
    WidthLengthThickness,
}

/// <summary>A size; a side that isn't told, or can't be read, is null.</summary>
/// <param name="Thickness">The thickness.</param>
/// <param name="Width">The width, across the grain.</param>
/// <param name="Length">The length, along the grain.</param>
public readonly record struct BillSize(Length? Thickness, Length? Width, Length? Length)
{
    /// <summary>Whether all three sides are there.</summary>
    public bool IsWhole => Thickness is not null && Width is not null && Length is not null;
}

/// <summary>A part as read from a bill.</summary>
/// <param name="Line">The line of the text it begins in, from 1.</param>
/// <param name="Name">What it is called; empty where nothing says it.</param>
/// <param name="Count">How many pieces; null where nothing says it.</param>
/// <param name="Size">The size in the finished piece, or the only one told.</param>
/// <param name="Unit">The unit it is written in.</param>
/// <param name="AsWritten">Its words in the bill.</param>
public sealed record BillPart(int Line, string Name, int? Count, BillSize Size, LengthUnit Unit, string AsWritten)
{
    /// <summary>The size as bought, where the text tells both.</summary>
    public BillSize? Bought { get; init; }

    /// <summary>The wood, on the line itself or from a heading; null where nothing says it.</summary>
    public string? Material { get; init; }

    /// <summary>Which faces are planed, like <c>S-4-S</c>; null where nothing says it.</summary>
    public string? Surfacing { get; init; }

    /// <summary>What else the line says.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What isn't certain, in plain sentences; none where the line can be read in one way only.</summary>
    public ImmutableArray<string> Doubts { get; init; } = [];
}

/// <summary>What a line that isn't a part was taken for.</summary>
public enum BillNoteKind
{
    /// <summary>A title, or a heading that sets something for the lines below it.</summary>
    Heading,

    /// <summary>Screws, hinges, glue: what is bought ready made or isn't wood.</summary>
    Hardware,

    /// <summary>Pieces that no size is written for.</summary>
    NoSize,

    /// <summary>Anything else.</summary>
    Text,
}

/// <summary>A line, or the end of one, that isn't a part.</summary>
/// <param name="Line">The line of the text it begins in, from 1.</param>
/// <param name="Kind">What it was taken for.</param>
/// <param name="Says">What was understood, in plain words; empty where nothing was.</param>
/// <param name="AsWritten">Its words in the bill.</param>
public sealed record BillNote(int Line, BillNoteKind Kind, string Says, string AsWritten);

/// <summary>What reading a text as a bill gave.</summary>
/// <param name="Bill">The bill; null where no part was found.</param>
/// <param name="Faults">Why there is none.</param>
public sealed record BillReading(StockBill? Bill, ImmutableArray<Fault> Faults);
