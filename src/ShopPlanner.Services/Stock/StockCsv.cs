using System.Collections.Immutable;
using CsvHelper;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stock;

/// <summary>What a column of a table of stock can say.</summary>
internal enum StockCell
{
    Tag,
    Where,
    Material,
    Length,
    Width,
    Pieces,
    Note,
    Edges,
    BadPlaces,
}

/// <summary>A line of such a table that was understood.</summary>
internal sealed record StockLineRead(
    long Line,
    string Tag,
    StockPlace Place,
    StoredMaterial Material,
    Length Length,
    Length Width,
    StockCondition Condition,
    int Pieces,
    string Note
);

/// <summary>A table of stock that was read.</summary>
internal sealed record StockTable(
    IReadOnlyList<StockLineRead> Lines,
    IReadOnlyList<Fault> Faults,
    TableFormat Format,
    ImmutableArray<string> Unused
);

/// <summary>Rack and bin as CSV (RFC 4180).</summary>
internal static class StockCsv
{
    private const string Heading = "tag, where, material, length, width, pieces, note";

    private static readonly Dictionary<string, StockCell> Names = new()
    {
        ["tag"] = StockCell.Tag,
        ["where"] = StockCell.Where,
        ["place"] = StockCell.Where,
        ["material"] = StockCell.Material,
        ["length"] = StockCell.Length,
        ["width"] = StockCell.Width,
        ["pieces"] = StockCell.Pieces,
        ["quantity"] = StockCell.Pieces,
        ["qty"] = StockCell.Pieces,
        ["note"] = StockCell.Note,
        ["notes"] = StockCell.Note,
        ["edges as bought"] = StockCell.Edges,
        ["bad places"] = StockCell.BadPlaces,
    };

    private static readonly StockCell[] Measures = [StockCell.Length, StockCell.Width];

    /// <summary>Returns the table.</summary>
    public static string Write(IEnumerable<StockPiece> pieces, LengthUnit unit)
    {
        using var text = new StringWriter();
        using (var csv = CsvWriter.Create(text, CsvWriterOptions.Default, leaveOpen: true))
        {
            var sign = unit == LengthUnit.Inch ? "in" : "mm";
            csv.WriteRecord([
                "tag",
                "where",
                "material",
                $"length ({sign})",
                $"width ({sign})",
                "pieces",
                "note",
                "edges as bought",
                $"bad places ({sign})",
            ]);
            foreach (var piece in pieces)
                csv.WriteRecord(Cells(piece, unit));
        }

        return text.ToString();
    }

    /// <summary>Reads all lines, or says what is wrong with each cell.</summary>
    public static StockTable Read(TableFile file, LengthUnit usual, MaterialIndex materials)
    {
        var format = new TableFormat(',', false, usual);
        var (text, undecoded) = TableDecoding.Read(file.Bytes);
        if (text is null)
            return new([], [undecoded!], format, []);
        var wanted = (ImmutableArray.Create(StockCell.Material, StockCell.Length), Heading);
        var (table, fault) = TableColumns<StockCell>.Read(text, file.Choices.Separator, IStockExchange.MostPieces, Names, wanted);
        if (table is null)
            return new([], [fault!], format, []);
        var sizes = table.Lines.SelectMany(line => Measures.Select(cell => table.Cell(cell, line))).Where(one => one.Length > 0);
        var numbers = TableNumbers.Of(table.Separator, [.. sizes], file.Choices.CommaIsDecimal);
        var unitless = Measures.Where(cell => table.UnitOf(cell) is null);
        var told = table.Lines.SelectMany(line => unitless.Select(cell => numbers.Plain(table.Cell(cell, line))));
        format = new(table.Separator, numbers.CommaIsDecimal, file.Choices.Unit ?? TableSizes.Unit([.. told], usual));
        var faults = new FaultList();
        var reader = new StockLineReader(table, numbers, format.Unit, materials, faults);
        IReadOnlyList<StockLineRead> lines = [.. table.Lines.Select(reader.Read).OfType<StockLineRead>()];
        if (table.Lines.Count == 0)
            faults.Add(new Fault("file", "", $"has no pieces: write a line for each below the heading {Heading}"));
        return new(lines, faults.ToImmutable(), format, table.Unused);
    }

    private static string[] Cells(StockPiece piece, LengthUnit unit) =>
        [
            piece.Tag,
            piece.Place == StockPlace.Rack ? "rack" : "bin",
            FormulaGuard.Quote(piece.MaterialName),
            TableSizes.Spread(LengthFormat.Exact(piece.Length, unit)),
            TableSizes.Spread(LengthFormat.Exact(piece.Width, unit)),
            "1",
            FormulaGuard.Quote(piece.Note),
            ConditionText.Edges(piece.Condition.Untrimmed),
            ConditionText.Places(piece.Condition.BadPlaces, unit),
        ];
}
