using System.Collections.Immutable;
using System.Globalization;
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
    /// <summary>The bills of the file beside the tests, by title.</summary>
    public static ImmutableDictionary<string, StockBill> All { get; } =
        ReadAll(File.ReadLines(Path.Combine(AppContext.BaseDirectory, "StockBills", "stock-bills.txt")))
            .ToImmutableDictionary(bill => bill.Title);

    private static IEnumerable<StockBill> ReadAll(IEnumerable<string> lines)
    {
        StockBill? bill = null;
        foreach (var line in lines.Where(line => line.Length > 0 && line[0] != '#'))
        {
            if (line[0] != '=')
            {
                bill = bill! with
                {
                    Pieces = bill.Pieces.Add(Piece([.. line.Split(['|', 'x'], 6, StringSplitOptions.TrimEntries)])),
                };
                continue;
            }

            if (bill is not null)
                yield return bill;
            var head = line.Split('=', 3, StringSplitOptions.TrimEntries);
            bill = new(head[1], head[2], []);
        }

        yield return bill!;
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
