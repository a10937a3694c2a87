using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Bills;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Projects;

/// <summary>Turns a written bill into rows of a parts list, and into lines to look through.</summary>
/// <param name="unit">Of the project.</param>
/// <param name="materials">Of the shop.</param>
internal sealed class BillRows(LengthUnit unit, MaterialIndex materials)
{
    private readonly PartMaterial material = new(materials);

    /// <summary>Returns the row of a part: what the bill does not say is blank, never guessed.</summary>
    public PartTexts Row(BillPart part)
    {
        var (length, width) = (Say(part.Size.Length), Say(part.Size.Width));
        return new PartTexts(
            Guid.CreateVersion7(),
            "",
            Cut(Plain(part.Name), TextRules.CellCharacters),
            Cut(material.Name(Plain(part.Material ?? ""), Say(part.Size.Thickness), width, unit), TextRules.CellCharacters),
            length,
            width,
            part.Count?.ToString(CultureInfo.InvariantCulture) ?? "",
            CanTurn: false,
            Cut(Note(part), TextRules.NoteCharacters)
        );
    }

    /// <summary>Returns every line of the bill that says anything, in its order.</summary>
    public static ImmutableArray<BillLine> Lines(StockBill bill) =>
        [
            .. bill
                .Parts.Select(part => new BillLine(
                    part.Line,
                    BillLineKind.Part,
                    Bidi.Isolate(part.AsWritten),
                    Understood(part),
                    part.Doubts
                ))
                .Concat(
                    bill.Others.Select(other => new BillLine(
                        other.Line,
                        other.Kind == BillNoteKind.Heading ? BillLineKind.Heading : BillLineKind.Note,
                        Bidi.Isolate(other.AsWritten),
                        other.Says,
                        []
                    ))
                )
                .OrderBy(line => line.Line),
        ];

    /// <summary>Returns the lines that go into the project's note; empty where there are none.</summary>
    public static string NoteOf(StockBill bill)
    {
        var lines = bill
            .Others.Where(other => other.Kind != BillNoteKind.Heading)
            .Select(other => Plain(other.AsWritten))
            .ToList();
        return lines.Count == 0 ? "" : "From the stock bill: " + string.Join("; ", lines);
    }

    private static string Understood(BillPart part)
    {
        var count = part.Count is { } pieces ? pieces.ToString(CultureInfo.InvariantCulture) + " × " : "";
        string?[] told =
        [
            count + (part.Name.Length > 0 ? Bidi.Isolate(part.Name) : "part without a name"),
            Sides(part.Size, part.Unit),
            part.Bought is { } bought ? "bought as " + Sides(bought, part.Unit) : null,
            part.Material,
            part.Surfacing,
            .. part.Notes,
        ];
        return string.Join(", ", told.OfType<string>().Where(one => one.Length > 0));
    }

    private static string Sides(BillSize size, LengthUnit unit)
    {
        string Side(string name, Length? length) => $"{(length is { } told ? LengthFormat.WithUnit(told, unit) : "?")} {name}";
        return $"{Side("thick", size.Thickness)}, {Side("wide", size.Width)}, {Side("long", size.Length)}";
    }

    private static string Note(BillPart part)
    {
        string?[] told =
        [
            .. part.Notes,
            part.Surfacing,
            part.Bought is { } bought ? "bought as " + Sides(bought, part.Unit) : null,
            .. part.Doubts.Select(doubt => "Check: " + doubt),
        ];
        return Plain(string.Join("; ", told.OfType<string>()));
    }

    private string Say(Length? length) => length is { } told ? LengthFormat.Exact(told, unit) : "";

    // A bill out of a book brings whatever its page had.
    private static string Plain(string text) =>
        string.Concat(text.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' ? ' ' : c)).Trim();

    private static string Cut(string text, int most) =>
        text.Length <= most ? text : text[..(char.IsHighSurrogate(text[most - 2]) ? most - 2 : most - 1)] + "…";
}
