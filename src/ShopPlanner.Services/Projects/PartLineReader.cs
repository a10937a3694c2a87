using System.Collections.Immutable;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Csv;

namespace ShopPlanner.Services.Projects;

/// <summary>Reads the lines of one table.</summary>
/// <param name="heading">Where its columns stand.</param>
/// <param name="numbers">How its numbers are written.</param>
/// <param name="unit">Of the project.</param>
/// <param name="material">Finds materials.</param>
/// <param name="written">Of sizes that name none.</param>
internal sealed class PartLineReader(
    PartHeading heading,
    TableNumbers numbers,
    LengthUnit unit,
    PartMaterial material,
    LengthUnit written
)
{
    private static readonly PartCell[] Measures =
    [
        PartCell.Length,
        PartCell.Width,
        PartCell.Thickness,
        PartCell.LongBy,
        PartCell.WideBy,
    ];

    /// <summary>Returns the cells of a line that should hold sizes.</summary>
    public static IEnumerable<string> Numbers(PartHeading heading, TableLine line) =>
        Measures.Select(cell => heading.Cell(cell, line.Cells)).Where(text => text.Length > 0);

    /// <summary>Returns those of them whose heading names no unit.</summary>
    public static IEnumerable<string> Unitless(PartHeading heading, TableLine line) =>
        heading.Cell(PartCell.Unit, line.Cells).Length > 0
            ? []
            : Measures
                .Where(cell => heading.UnitOf(cell) is null)
                .Select(cell => heading.Cell(cell, line.Cells))
                .Where(text => text.Length > 0);

    /// <summary>Reads a line.</summary>
    public PartLine Read(TableLine line)
    {
        var faults = ImmutableArray.CreateBuilder<Fault>();
        string Cell(PartCell cell) => FormulaGuard.Unquote(heading.Cell(cell, line.Cells));
        var rowUnit = RowUnit(Cell(PartCell.Unit), faults);
        string Size(PartCell cell) => SizeOf(cell, Cell(cell), heading.UnitOf(cell) ?? rowUnit ?? SuffixOf(written), faults);
        CheckEnd(line.Cells, faults);
        var width = Size(PartCell.Width);
        var texts = new PartTexts(
            Guid.CreateVersion7(),
            Cell(PartCell.Mark),
            Cell(PartCell.Name),
            material.Name(Cell(PartCell.Material), Size(PartCell.Thickness), width, unit),
            Size(PartCell.Length),
            width,
            numbers.Whole(Cell(PartCell.Quantity)),
            CanTurn(Cell(PartCell.Turn), Cell(PartCell.Grain), faults),
            Cell(PartCell.Note)
        )
        {
            LongBy = Size(PartCell.LongBy),
            WideBy = Size(PartCell.WideBy),
            Practice = numbers.Whole(Cell(PartCell.Practice)),
        };
        return new PartLine(line.Number, texts, faults.ToImmutable());
    }

    private void CheckEnd(string[] cells, ImmutableArray<Fault>.Builder faults)
    {
        if (cells.Length > heading.Count && cells.Skip(heading.Count).Any(cell => cell.Trim().Length > 0))
            faults.Add(
                Fault.Of(
                    "End of line",
                    cells[^1].Trim(),
                    "is one cell too many: put quotation marks around a cell that has a comma, or write 34.5 for 34,5"
                )
            );
    }

    private static string? RowUnit(string text, ImmutableArray<Fault>.Builder faults)
    {
        var found = UnitWords.Find(text);
        if (found is null && text.Length > 0)
            faults.Add(Fault.Of(nameof(PartCell.Unit), text, "is not a unit of length: write in, ft, mm, cm or m"));
        return found;
    }

    // As typed where it means the same in the project's unit; else exactly in the project's unit.
    private string SizeOf(PartCell cell, string text, string? suffix, ImmutableArray<Fault>.Builder faults)
    {
        var plain = TableSizes.Typed(numbers.Plain(text));
        if (plain.Length == 0 || suffix is null || suffix == SuffixOf(unit) || NamesUnit(plain))
            return plain;
        var read = LengthText.Parse($"{plain} {suffix}", unit);
        if (read.Ok)
            return LengthFormat.Exact(read.Value, unit);
        faults.Add(read.Fault.At(cell.ToString()));
        return plain;
    }

    private static string SuffixOf(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    private static bool NamesUnit(string text) =>
        LengthText.Parse(text, LengthUnit.Inch) is { Ok: true } inches
        && LengthText.Parse(text, LengthUnit.Millimetre) is { Ok: true } millimetres
        && inches.Value == millimetres.Value;

    private static bool CanTurn(string turn, string grain, ImmutableArray<Fault>.Builder faults)
    {
        var says =
            turn.Length > 0 ? GrainWords.CanTurn(turn)
            : grain.Length > 0 ? GrainWords.CanTurnBy(grain)
            : false;
        if (says is null)
            faults.Add(
                turn.Length > 0
                    ? Fault.Of(nameof(PartTexts.CanTurn), turn, "isn't yes or no: write one of them")
                    : Fault.Of(
                        nameof(PartTexts.CanTurn),
                        grain,
                        "isn't a grain direction: write length, or any for a part that can rotate"
                    )
            );
        // Kept along the length: that is the safe side.
        return says ?? false;
    }
}
