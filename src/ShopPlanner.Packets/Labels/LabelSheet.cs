using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Labels;

/// <summary>A sheet of labels: where each of them lies.</summary>
/// <param name="Key">Names it in addresses and on the command line.</param>
/// <param name="Name">As people choose it.</param>
/// <param name="Paper">The size of the sheet.</param>
/// <param name="Columns">Labels side by side.</param>
/// <param name="Rows">Labels one below the other.</param>
/// <param name="Wide">A label's width.</param>
/// <param name="High">A label's height.</param>
/// <param name="Left">From the left edge of the sheet to the first label.</param>
/// <param name="Top">From the top edge of the sheet to the first label.</param>
/// <param name="Across">From a label to the next one at its right.</param>
/// <param name="Down">From a label to the next one below.</param>
/// <param name="Radius">Of the labels' corners.</param>
public sealed record LabelSheet(
    string Key,
    string Name,
    PaperSize Paper,
    int Columns,
    int Rows,
    Length Wide,
    Length High,
    Length Left,
    Length Top,
    Length Across,
    Length Down,
    Length Radius
)
{
    /// <summary>Whether it is plain paper, on which lines are printed to cut along.</summary>
    public bool IsPlain { get; init; }

    /// <summary>How many labels it has.</summary>
    public int Count => Columns * Rows;
}

/// <summary>
/// The sheets that can be printed on. Figures of the 30-up and 21-up sheets are those of two open label databases, read there;
/// the 65-up sheets lie in the middle of the paper, which follows from their labels and pitch (one database has their left
/// margin so wide that the last column would lie beyond the paper). What a printer is off by is nudged.
/// </summary>
public static class LabelSheets
{
    private static readonly Length Sixteenth = Length.FromInches(0.0625m);

    /// <summary>All of them.</summary>
    public static ImmutableArray<LabelSheet> All { get; } =
    [
        new(
            "letter-30",
            "Letter, 30 labels, 2 5/8 × 1 in",
            PaperSize.Letter,
            3,
            10,
            In(2.625m),
            In(1),
            In(0.1875m),
            In(0.5m),
            In(2.75m),
            In(1),
            Sixteenth
        ),
        new(
            "letter-30-wide",
            "Letter, 30 labels, 2 5/8 × 1 in, wider gaps",
            PaperSize.Letter,
            3,
            10,
            In(2.625m),
            In(1),
            In(0.15625m),
            In(0.5m),
            In(2.78125m),
            In(1),
            Sixteenth
        ),
        new(
            "letter-plain",
            "Letter, plain paper to cut, 24 labels, 2 1/2 × 1 1/4 in",
            PaperSize.Letter,
            3,
            8,
            In(2.5m),
            In(1.25m),
            In(0.5m),
            In(0.5m),
            In(2.5m),
            In(1.25m),
            Length.Zero
        )
        {
            IsPlain = true,
        },
        new(
            "a4-21",
            "A4, 21 labels, 63.5 × 38.1 mm",
            PaperSize.A4,
            3,
            7,
            Mm(63.5m),
            Mm(38.1m),
            Mm(7.21m),
            Mm(15.15m),
            Mm(66.04m),
            Mm(38.1m),
            Mm(3)
        ),
        new(
            "a4-65",
            "A4, 65 labels, 38.1 × 21.2 mm, no gaps",
            PaperSize.A4,
            5,
            13,
            Mm(38.1m),
            Mm(21.2m),
            Mm(9.75m),
            Mm(10.7m),
            Mm(38.1m),
            Mm(21.2m),
            Length.Zero
        ),
        new(
            "a4-65-gaps",
            "A4, 65 labels, 38.1 × 21.2 mm, gaps between columns",
            PaperSize.A4,
            5,
            13,
            Mm(38.1m),
            Mm(21.2m),
            Mm(4.67m),
            Mm(10.7m),
            Mm(40.64m),
            Mm(21.2m),
            Mm(1)
        ),
        new(
            "a4-plain",
            "A4, plain paper to cut, 24 labels, 63 × 34 mm",
            PaperSize.A4,
            3,
            8,
            Mm(63),
            Mm(34),
            Mm(10.5m),
            Mm(12.5m),
            Mm(63),
            Mm(34),
            Length.Zero
        )
        {
            IsPlain = true,
        },
    ];

    /// <summary>The one with a key; null for none.</summary>
    public static LabelSheet? Find(string? key) => All.FirstOrDefault(sheet => sheet.Key == key);

    /// <summary>The one to begin with on a size of paper.</summary>
    public static LabelSheet Usual(PaperSize paper) => All.First(sheet => sheet.Paper == paper);

    private static Length In(decimal inches) => Length.FromInches(inches);

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}
