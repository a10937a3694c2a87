using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>The parts of a piece as a table of text (RFC 4180): a heading, then a row for each part. Lengths are decimals of the
/// design's unit, for a spreadsheet would read 3/4 as a day of March. A text that a spreadsheet would take for a formula has a
/// <c>'</c> before it.</summary>
public static class PartsCsv
{
    private static readonly string[] Heading =
    [
        "mark",
        "name",
        "material",
        "quantity",
        "length",
        "width",
        "thickness",
        "rough length",
        "rough width",
        "unit",
        "grain",
        "purpose",
    ];

    /// <summary>The table; lines end with CR LF, as the standard has it.</summary>
    public static string Write(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return string.Concat(piece.Parts.Select(part => Row(part, piece.Unit)).Prepend(Heading).Select(Line));
    }

    private static string[] Row(PiecePart part, LengthUnit unit)
    {
        string Size(Length length) => JsonOutput.Number(length, unit);
        return
        [
            part.Id,
            part.Name,
            part.Material.Name,
            part.Quantity.ToString(CultureInfo.InvariantCulture),
            Size(part.Length.Value),
            Size(part.Width.Value),
            Size(part.Thickness.Value),
            Size(part.RoughLength),
            Size(part.RoughWidth),
            unit == LengthUnit.Inch ? "in" : "mm",
            Words.Grain(part),
            Words.Purpose(part) ?? "",
        ];
    }

    private static string Line(string[] cells) =>
        string.Join(',', cells.Select(cell => Quoted(FormulaGuard.Quote(cell)))) + "\r\n";

    private static string Quoted(string cell) =>
        cell.AsSpan().ContainsAny(",\"\r\n") ? "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : cell;
}
