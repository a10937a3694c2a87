using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.StockBills;

/// <summary>One line of a stock bill, sizes as printed.</summary>
internal sealed record BillPiece(int Count, Length Thickness, Length Width, Length Length, string Wood, string Name)
{
    public Volume Volume => BoardMeasure.Counted(Thickness, Width, Length, Count, ThinStock.RealThickness);
}

/// <summary>A book's list of the pieces to order for one piece of furniture.</summary>
internal sealed record StockBill(string Title, string Source, ImmutableArray<BillPiece> Pieces)
{
    private static readonly string Path = System.IO.Path.Combine("shared", "bench", "stockbills", "stockbills.jsonl");

    /// <summary>Reads lines of <c>count | thickness x width x length | wood | name</c>, sizes in inches.</summary>
    public static StockBill Read(string title, string source, string lines) =>
        new(
            title,
            source,
            [.. lines.Split('\n').Select(line => Piece([.. line.Split(['|', 'x'], 6, StringSplitOptions.TrimEntries)]))]
        );

    /// <summary>The bills of the folder beside the repository; null where there is none.</summary>
    public static List<StockBill>? FromFile()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (System.IO.Path.Combine(at.FullName, Path) is var file && File.Exists(file))
                return [.. File.ReadLines(file).Select(FromJson)];
        return null;
    }

    private static StockBill FromJson(string line)
    {
        using var bill = JsonDocument.Parse(line);
        string Text(JsonElement of, string name) => of.GetProperty(name).GetString()!;
        var pieces = bill
            .RootElement.GetProperty("pieces")
            .EnumerateArray()
            .Select(piece =>
                Piece([
                    piece.GetProperty("count").GetInt32().ToString(CultureInfo.InvariantCulture),
                    Text(piece, "thickness_in"),
                    Text(piece, "width_in"),
                    Text(piece, "length_in"),
                    Text(piece, "material"),
                    Text(piece, "name"),
                ])
            );
        return new(Text(bill.RootElement, "title"), Text(bill.RootElement, "source"), [.. pieces]);
    }

    private static BillPiece Piece(string[] cells) =>
        new(
            int.Parse(cells[0], CultureInfo.InvariantCulture),
            Inches(cells[1]),
            Inches(cells[2]),
            Inches(cells[3]),
            cells[4],
            cells[5]
        );

    private static Length Inches(string text) => LengthText.ParsePositive(text, LengthUnit.Inch).Value;
}
