using System.Globalization;
using CsvHelper;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Book;

/// <summary>Writes the book as CSV (RFC 4180), one line an entry.</summary>
internal static class BookCsv
{
    private const int Decimals = 4;

    public static string Write(IEnumerable<BookEntry> entries, LengthUnit unit)
    {
        using var text = new StringWriter();
        using (var csv = CsvWriter.Create(text, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord([
                "Date",
                "Entry",
                "Project",
                "Store",
                "Material",
                "What",
                "Money",
                unit == LengthUnit.Inch ? "Sq ft" : "m²",
                "Minutes",
            ]);
            foreach (var entry in entries)
                csv.WriteRecord([.. Cells(entry, unit).Select(FormulaGuard.Quote)]);
        }

        return text.ToString();
    }

    private static string[] Cells(BookEntry entry, LengthUnit unit) =>
        [
            entry.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Word(entry.Figure),
            entry.ProjectName,
            entry.Store,
            entry.Material,
            entry.What,
            entry.Figure == BookFigure.Spent ? entry.Money.ToString() : "",
            entry.Figure is BookFigure.Spent or BookFigure.Hours ? "" : Face(entry.Area, unit),
            entry.Figure == BookFigure.Hours ? entry.Minutes.ToString(CultureInfo.InvariantCulture) : "",
        ];

    private static string Face(Area area, LengthUnit unit) =>
        Math.Round(unit == LengthUnit.Inch ? area.ToSquareFeet() : area.ToSquareMetres(), Decimals)
            .ToString("0.####", CultureInfo.InvariantCulture);

    private static string Word(BookFigure figure) =>
        figure switch
        {
            BookFigure.Spent => "money spent",
            BookFigure.Bought => "wood bought",
            BookFigure.Used => "wood in parts",
            BookFigure.Kept => "wood kept",
            BookFigure.Hours => "time at work",
            _ => "wood wasted",
        };
}
