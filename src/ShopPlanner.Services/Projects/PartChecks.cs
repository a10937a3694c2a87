using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Projects;

/// <summary>What no row may hold, however faulty it may otherwise be.</summary>
internal static class PartChecks
{
    private const int MostFaults = 100;

    /// <summary>Faults of texts that cannot be kept; fields name the row from 0 and the member.</summary>
    public static List<Fault> Find(IEnumerable<PartTexts> rows) =>
        [.. rows.SelectMany((row, index) => Find(row, $"rows[{index}].")).Take(MostFaults)];

    /// <summary>Faults of texts that cannot be kept; fields name the line of the file and the member.</summary>
    public static List<Fault> Find(IEnumerable<PartLine> lines) =>
        [.. lines.SelectMany(line => Find(line.Texts, $"line {line.Line}, ")).Take(MostFaults)];

    private static IEnumerable<Fault> Find(PartTexts row, string where)
    {
        if (row.Id == Guid.Empty)
            yield return new Fault(where + nameof(row.Id), "", "is empty: a row needs an id");
        foreach (var (field, text) in Cells(row))
            if (TextRules.Line(where + field, text, TextRules.CellCharacters) is { } fault)
                yield return fault;
        if (TextRules.Free(where + nameof(row.Note), row.Note, TextRules.NoteCharacters) is { } note)
            yield return note;
    }

    private static IEnumerable<(string Field, string Text)> Cells(PartTexts row) =>
        [
            (nameof(row.Mark), row.Mark),
            (nameof(row.Name), row.Name),
            (nameof(row.Material), row.Material),
            (nameof(row.Length), row.Length),
            (nameof(row.Width), row.Width),
            (nameof(row.Quantity), row.Quantity),
            (nameof(row.LongBy), row.LongBy),
            (nameof(row.WideBy), row.WideBy),
            (nameof(row.Practice), row.Practice),
        ];
}
