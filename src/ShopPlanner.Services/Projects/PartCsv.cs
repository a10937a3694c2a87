using CsvHelper;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Csv;

namespace ShopPlanner.Services.Projects;

/// <summary>Writes a parts list as CSV (RFC 4180) that reads back the same.</summary>
internal static class PartCsv
{
    /// <summary>Returns the table: a heading that names the unit, and the rows as typed.</summary>
    public static string Write(PartSheet sheet)
    {
        using var text = new StringWriter();
        using (var csv = CsvWriter.Create(text, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord(Heading(sheet.Unit));
            foreach (var row in sheet.Rows)
                csv.WriteRecord([.. Cells(row).Select(FormulaGuard.Quote)]);
        }

        return text.ToString();
    }

    /// <summary>Whether a table with that heading was written here and not by a spreadsheet since.</summary>
    public static bool IsOwn(string[] heading, char separator) =>
        separator == ','
        && (heading.SequenceEqual(Heading(LengthUnit.Inch)) || heading.SequenceEqual(Heading(LengthUnit.Millimetre)));

    private static string[] Heading(LengthUnit unit)
    {
        var sign = unit == LengthUnit.Inch ? "in" : "mm";
        return
        [
            "Mark",
            "Part",
            "Material",
            $"Length ({sign})",
            $"Width ({sign})",
            "Pieces",
            "Note",
            "Can rotate",
            $"Cut long by ({sign})",
            $"Cut wide by ({sign})",
            "Test pieces",
        ];
    }

    private static string[] Cells(PartRow row)
    {
        var texts = row.Texts;
        return
        [
            texts.Mark,
            texts.Name,
            row.MaterialName,
            TableSizes.Spread(texts.Length),
            TableSizes.Spread(texts.Width),
            texts.Quantity,
            texts.Note,
            texts.CanTurn ? "yes" : "no",
            TableSizes.Spread(texts.LongBy),
            TableSizes.Spread(texts.WideBy),
            texts.Practice,
        ];
    }
}
