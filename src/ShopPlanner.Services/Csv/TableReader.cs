using CsvHelper;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Csv;

/// <summary>A line of a table with its number in the text, from 1.</summary>
internal readonly record struct TableLine(long Number, string[] Cells);

/// <summary>What reading a table gave: lines, or the one fault that refuses it whole.</summary>
internal sealed record TableText(IReadOnlyList<TableLine> Lines, Fault? Fault);

/// <summary>Reads tables of text (RFC 4180, or with tabs), streamed and capped. Quotes in the middle of a cell are kept: builders
/// write inches with them.</summary>
internal static class TableReader
{
    public const int MostCells = 50,
        MostCellCharacters = 4_000;

    private const int MostLineBytes = 200_000;

    /// <summary>Reads at most so many lines; one more refuses the whole.</summary>
    public static TableText Read(TextReader text, char separator, int mostLines)
    {
        Fault? unclosed = null;
        var options = new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            TrackLineNumbers = true,
            MaxRecordSize = MostLineBytes,
            DetectSeparatorHint = false,
            OnMalformedRecord = record => unclosed ??= FindUnclosed(record),
        };
        using var reader = CsvReader.Create(text, options, leaveOpen: true);
        try
        {
            var lines = ReadLines(reader, mostLines, out var fault);
            return (fault ?? unclosed) is { } refused ? new TableText([], refused) : new TableText(lines, null);
        }
        catch (CsvFormatException problem)
        {
            return new TableText(
                [],
                new Fault(
                    $"line {Math.Max(1, problem.LineNumber)}",
                    "",
                    "can't be read as a table: look for a quotation mark that is never closed"
                )
            );
        }
    }

    private static List<TableLine> ReadLines(CsvReader reader, int mostLines, out Fault? fault)
    {
        var lines = new List<TableLine>();
        fault = null;
        while (fault is null && reader.Read())
        {
            if (lines.Count == mostLines)
                fault = new Fault("table", "", $"has more than {mostLines} lines: split it into smaller files");
            else if (reader.FieldCount > MostCells)
                fault = new Fault($"line {reader.LineNumber}", "", $"has more than {MostCells} cells: check the commas");
            else
                Take(reader, lines, ref fault);
        }

        return lines;
    }

    private static void Take(CsvReader reader, List<TableLine> lines, ref Fault? fault)
    {
        var cells = Enumerable.Range(0, reader.FieldCount).Select(reader.GetString).ToArray();
        var where = $"line {reader.LineNumber}";
        if (cells.Any(cell => cell.Contains('\0')))
            fault = new Fault(where, "", "isn't text: save the table as CSV");
        else if (cells.Any(cell => cell.Length > MostCellCharacters))
            fault = new Fault(where, "", $"has a cell longer than {MostCellCharacters} characters: shorten it");
        else if (cells.Any(cell => !string.IsNullOrWhiteSpace(cell)))
            lines.Add(new TableLine(reader.LineNumber, cells));
    }

    // A quote that is opened and not closed swallows the lines after it into one cell.
    private static Fault? FindUnclosed(CsvMalformedRecord record)
    {
        var swallowed = record.RawRecord.Contains('\n') && record.RawRecord.Count(c => c == '"') % 2 == 1;
        return swallowed || record.Reason == CsvMalformedReason.UnterminatedQuote
            ? Fault.Of(
                $"line {record.LineNumber}",
                record.RawRecord.Split('\n')[0].Trim(),
                "opens a quotation mark that is never closed"
            )
            : null;
    }
}
