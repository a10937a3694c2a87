using System.Text.RegularExpressions;
using CsvHelper;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Projects;

/// <summary>Writes a parts list as CSV (RFC 4180) that reads back the same.</summary>
internal static partial class PartCsv
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
            Spread(texts.Length),
            Spread(texts.Width),
            texts.Quantity,
            texts.Note,
            texts.CanTurn ? "yes" : "no",
            Spread(texts.LongBy),
            Spread(texts.WideBy),
            texts.Practice,
        ];
    }

    /// <summary>Returns a size as it was typed, without the nought that keeps a spreadsheet from reading 3/4 as a day of
    /// March.</summary>
    public static string Typed(string size) =>
        Spreadable().Match(size) is { Success: true } spread ? spread.Groups["size"].Value : size;

    private static string Spread(string size) => Fraction().IsMatch(size) ? "0 " + size : size;

    [GeneratedRegex(@"^\d+/\d+$")]
    private static partial Regex Fraction();

    [GeneratedRegex(@"^0 (?<size>\d+/\d+)$")]
    private static partial Regex Spreadable();
}
