using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>Writes the open stock bill format, version 1 (<c>shop-planner/stock-bill</c>): see the README beside this
/// file.</summary>
public static class BillJson
{
    private static readonly Dictionary<string, BillNoteKind> Kinds = new()
    {
        ["heading"] = BillNoteKind.Heading,
        ["hardware"] = BillNoteKind.Hardware,
        ["no-size"] = BillNoteKind.NoSize,
        ["text"] = BillNoteKind.Text,
    };

    private static readonly Dictionary<string, SizeOrder> Orders = new()
    {
        ["thickness-width-length"] = SizeOrder.ThicknessWidthLength,
        ["thickness-length-width"] = SizeOrder.ThicknessLengthWidth,
        ["length-width-thickness"] = SizeOrder.LengthWidthThickness,
        ["width-length-thickness"] = SizeOrder.WidthLengthThickness,
    };

    /// <summary>Returns a bill as an indented document, ended by a line feed.</summary>
    public static string Write(StockBill bill)
    {
        ArgumentNullException.ThrowIfNull(bill);
        return JsonOutput.Object(writer =>
        {
            writer.WriteString("format", "shop-planner/stock-bill");
            writer.WriteNumber("version", 1);
            writer.WriteString("unit", DocumentWords.Of(DocumentWords.Units, bill.Unit));
            writer.WriteString("order", DocumentWords.Of(Orders, bill.Order));
            writer.List("parts", bill.Parts, Part);
            writer.List("others", bill.Others, Other);
            writer.Texts("remarks", bill.Remarks);
        });
    }

    private static void Part(Utf8JsonWriter writer, BillPart part)
    {
        writer.WriteNumber("line", part.Line);
        writer.WriteString("name", part.Name);
        if (part.Count is { } count)
            writer.WriteNumber("count", count);
        else
            writer.WriteNull("count");
        Size(writer, part.Size, part.Unit);
        writer.WriteString("unit", DocumentWords.Of(DocumentWords.Units, part.Unit));
        if (part.Bought is { } bought)
            writer.Member("bought", inner => Size(inner, bought, part.Unit));
        writer.WriteString("material", part.Material);
        writer.WriteString("surfacing", part.Surfacing);
        writer.WriteString("note", Joined(part.Notes, "; "));
        writer.WriteString("doubt", Joined(part.Doubts, " "));
        writer.WriteString("as_written", part.AsWritten);
    }

    private static void Size(Utf8JsonWriter writer, BillSize size, LengthUnit unit)
    {
        Side(writer, "thickness", size.Thickness, unit);
        Side(writer, "width", size.Width, unit);
        Side(writer, "length", size.Length, unit);
    }

    private static void Side(Utf8JsonWriter writer, string name, Length? side, LengthUnit unit)
    {
        if (side is { } length)
            writer.Length(name, length, unit);
        else
            writer.WriteNull(name);
    }

    private static void Other(Utf8JsonWriter writer, BillNote note)
    {
        writer.WriteNumber("line", note.Line);
        writer.WriteString("kind", DocumentWords.Of(Kinds, note.Kind));
        writer.WriteString("says", note.Says.Length > 0 ? note.Says : null);
        writer.WriteString("as_written", note.AsWritten);
    }

    private static string? Joined(IReadOnlyCollection<string> texts, string mark) =>
        texts.Count > 0 ? string.Join(mark, texts) : null;
}
