using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.BadWood;

/// <summary>Stock with bad places; lengths are texts in inches.</summary>
internal static class Bad
{
    public static BadPlace Place(string x, string y, string dx, string dy) =>
        new(Some.Of(x), Some.Of(y), Some.Of(dx), Some.Of(dy));

    /// <summary>A place across the whole of a board 2 1/2 in wide.</summary>
    public static BadPlace Across(string x, string dx) => Place(x, "0", dx, "2 1/2");

    public static CutStock At(this CutStock stock, params BadPlace[] places) =>
        stock with
        {
            BadPlaces = [.. places],
            Quantity = 1,
        };

    public static CutStock Raw(this CutStock stock, StockEdges edges) => stock with { Untrimmed = edges };

    /// <summary>An offcut of pine, 2 1/2 in wide.</summary>
    public static CutStock Board(string id, string length) => Some.Stock(id, length, offcut: true, quantity: 1);

    /// <summary>An offcut of plywood.</summary>
    public static CutStock Sheet(string id, string length, string width) =>
        Some.Stock(id, length, width, offcut: true, quantity: 1, material: "ply");

    public static CutRequest Boards(IEnumerable<CutStock> stock, params CutPart[] parts) =>
        Some.Request([Some.Board()], stock, parts, endTrim: "1/2");

    public static CutRequest Sheets(IEnumerable<CutStock> stock, params CutPart[] parts) =>
        Some.Request([Some.Sheet()], stock, parts, edgeTrim: "1/4");

    public static CutPart Panel(string id, string length, string width, int quantity = 1) =>
        Some.Part(id, length, quantity, width, material: "ply");
}
