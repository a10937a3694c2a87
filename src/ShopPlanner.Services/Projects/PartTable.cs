using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Projects;

/// <summary>A line of a table as a row of a parts list.</summary>
/// <param name="Line">The line's number in the text, from 1.</param>
/// <param name="Texts">As typed, with lengths that mean the same in the project's unit.</param>
/// <param name="Faults">What was not understood, each naming a member of <see cref="PartTexts"/>.</param>
internal sealed record PartLine(long Line, PartTexts Texts, ImmutableArray<Fault> Faults);

/// <summary>Reads tables of parts: pasted from a spreadsheet or out of a file; with tabs, semicolons or commas; with a
/// heading that says what the columns are, else in the order of the page.</summary>
/// <param name="unit">Of the project.</param>
/// <param name="materials">Of the shop.</param>
internal sealed class PartTable(LengthUnit unit, MaterialIndex materials)
{
    private const int GrainOrNote = 6;

    // As the columns stand on the page.
    private static readonly PartCell[] Order =
    [
        PartCell.Mark,
        PartCell.Name,
        PartCell.Material,
        PartCell.Length,
        PartCell.Width,
        PartCell.Quantity,
        PartCell.Note,
        PartCell.Grain,
        PartCell.LongBy,
        PartCell.WideBy,
        PartCell.Practice,
    ];

    // Many lists have the grain before the note; it is told from a note by its words.
    private static readonly PartCell[] GrainFirst =
    [
        .. Order[..GrainOrNote],
        PartCell.Grain,
        PartCell.Note,
        .. Order[(GrainOrNote + 2)..],
    ];

    /// <summary>The rows that were read.</summary>
    public IReadOnlyList<PartLine> Lines { get; private set; } = [];

    /// <summary>Headings of columns that say nothing about parts.</summary>
    public ImmutableArray<string> Unused { get; private set; } = [];

    /// <summary>How the table was read.</summary>
    public TableFormat Format { get; private set; } = new(',', false, unit);

    /// <summary>Reads a file; its fault refuses it whole. What nobody says of it is found out.</summary>
    public Fault? Read(TableFile file)
    {
        var (text, fault) = TableDecoding.Read(file.Bytes);
        return text is null ? fault : Read(text, file.Choices, sizes => TableSizes.Unit(sizes, unit));
    }

    /// <summary>Reads a text that nobody looks at before it is stored: sizes without a unit are in the project's. Its
    /// fault refuses it whole.</summary>
    public Fault? Read(string text) => Read(text, TableChoices.Guess, _ => unit);

    private Fault? Read(string text, TableChoices choices, Func<IReadOnlyCollection<string>, LengthUnit> guess)
    {
        var (hint, plain) = Separators.Hint(text.TrimStart('\uFEFF'));
        var separator = choices.Separator ?? hint ?? Separators.Choose(plain, PartHeading.Known);
        using var reader = new StringReader(plain);
        var table = TableReader.Read(reader, separator, IPartService.MaxRows + 1);
        if (table.Fault is { Field: "table" })
            return PartPaste.TooMany(plain.AsSpan().Count('\n') + 1);
        if (table.Fault is not null || table.Lines.Count == 0)
            return table.Fault;
        var heading = PartHeading.Read(table.Lines[0], out var fault);
        if (fault is not null)
            return fault;
        var lines = heading is null ? table.Lines : [.. table.Lines.Skip(1)];
        heading ??= PartHeading.Usual(table.Lines.All(line => SaysGrain(line.Cells)) ? GrainFirst : Order);
        Unused = heading.Unused;
        var numbers = PartCsv.IsOwn(table.Lines[0].Cells, separator)
            ? TableNumbers.AsTyped
            : TableNumbers.Of(
                separator,
                [.. lines.SelectMany(line => PartLineReader.Numbers(heading, line))],
                choices.CommaIsDecimal
            );
        var unitless = lines.SelectMany(line => PartLineReader.Unitless(heading, line)).Select(numbers.Plain).ToList();
        Format = new(separator, numbers.CommaIsDecimal, choices.Unit ?? guess(unitless));
        var reading = new PartLineReader(heading, numbers, unit, new PartMaterial(materials), Format.Unit);
        Lines = [.. lines.Select(reading.Read)];
        return null;
    }

    private static bool SaysGrain(string[] cells) => cells.Length > GrainOrNote && GrainWords.IsGrain(cells[GrainOrNote]);
}
