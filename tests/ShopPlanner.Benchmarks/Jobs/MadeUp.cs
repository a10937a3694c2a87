using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Benchmarks;

/// <summary>Short ways to write an invented request down, in inches.</summary>
internal static class MadeUp
{
    /// <summary>Kerf 1/8, board ends squared by 1/2, sheet edges by 1/4.</summary>
    public static CutRequest Request(CutMaterial[] materials, CutStock[] stock, CutPart[] parts) =>
        new(
            LengthUnit.Inch,
            new(Of("1/8"), Of("1/2"), Of("1/4")),
            new(Of("12"), Of("12"), Of("6")),
            [.. materials],
            [.. stock],
            [.. parts],
            new(10)
        );

    public static CutMaterial Board(string id, string width) => new(id, StockForm.Board, null, Of(width));

    public static CutMaterial Sheet(string id) => new(id, StockForm.Sheet, null, null);

    public static CutStock Stock(string id, string material, string length, string width, decimal price) =>
        new(id, material, Of(length), Of(width), Money.From(price), null, false);

    public static CutStock Offcut(string id, string material, string length, string width) =>
        new(id, material, Of(length), Of(width), Money.Zero, 1, true);

    public static CutPart Part(
        string id,
        string material,
        string length,
        int quantity,
        string width,
        Grain grain = Grain.Length
    ) => new(id, id, material, Of(length), Of(width), grain, quantity);

    private static Length Of(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
