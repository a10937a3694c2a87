using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>
/// What must hold between the members of a cut request. That a part is larger than any stock is no fault: it is planned around
/// and told in the plan.
/// </summary>
public static class CutRequestRules
{
    /// <summary>The most pieces of all parts together.</summary>
    public const int MostPieces = 100_000;

    /// <summary>The longest side of a sheet that is planned: 20 m, so that the areas of a whole job can be added exactly.</summary>
    public static readonly Length LongestSheet = Length.FromMillimetres(20_000);

    /// <summary>Everything that is wrong with a request; nothing when it can be planned.</summary>
    public static ImmutableArray<Fault> Check(CutRequest request)
    {
        var faults = new FaultList();
        Check(request, faults);
        return faults.Told;
    }

    /// <summary>Adds everything that is wrong with a request to a list.</summary>
    public static void Check(CutRequest request, FaultList faults)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(faults);
        var materials = Materials(request, faults);
        CheckStock(request, materials, faults);
        CheckParts(request, materials, faults);
        CheckSaw(request, materials, faults);
        if (!(request.Limits.Seconds > 0))
            faults.Add("limits.seconds", request.Limits.Seconds.ToString(CultureInfo.InvariantCulture), "must be more than zero");
    }

    private static Dictionary<string, CutMaterial> Materials(CutRequest request, FaultList faults)
    {
        var known = new Dictionary<string, CutMaterial>(StringComparer.Ordinal);
        for (var i = 0; i < request.Materials.Length; i++)
        {
            var material = request.Materials[i];
            if (!known.TryAdd(material.Id, material)) faults.Add(At("materials", i, "id"), material.Id, Twice);
            if (material is { Form: StockForm.Board, Width: not { IsPositive: true } })
                faults.Add(At("materials", i, "width"), Text(request, material.Width ?? default), Positive);
        }

        if (known.Count == 0) faults.Add("materials", "", "names no material");
        return known;
    }

    private static void CheckStock(CutRequest request, Dictionary<string, CutMaterial> materials, FaultList faults)
    {
        var ids = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < request.Stock.Length; i++)
        {
            var stock = request.Stock[i];
            if (!ids.Add(stock.Id)) faults.Add(At("stock", i, "id"), stock.Id, Twice);
            if (!materials.TryGetValue(stock.Material, out var material))
                faults.Add(At("stock", i, "material"), stock.Material, Unknown);
            else
                CheckSides(request, "stock", i, stock.Length, stock.Width, faults);
            if (material is not null) CheckStockSize(request, i, material, faults);
            if (stock.Price < Money.Zero) faults.Add(At("stock", i, "price"), stock.Price.ToString(), "is less than nothing");
            if (stock.Quantity < 0) faults.Add(At("stock", i, "quantity"), Text(stock.Quantity.Value), "is less than nothing");
        }
    }

    private static void CheckStockSize(CutRequest request, int i, CutMaterial material, FaultList faults)
    {
        var stock = request.Stock[i];
        if (material is { Form: StockForm.Board, Width: { } width } && stock.Width > width)
            faults.Add(At("stock", i, "width"), Text(request, stock.Width),
                $"is wider than its material, which is {Text(request, width)}: a wider board is another material");
        if (material.Form != StockForm.Sheet) return;
        if (stock.Length > LongestSheet) faults.Add(At("stock", i, "length"), Text(request, stock.Length), TooLarge);
        if (stock.Width > LongestSheet) faults.Add(At("stock", i, "width"), Text(request, stock.Width), TooLarge);
    }

    private static void CheckParts(CutRequest request, Dictionary<string, CutMaterial> materials, FaultList faults)
    {
        var ids = new HashSet<string>(StringComparer.Ordinal);
        var pieces = 0L;
        for (var i = 0; i < request.Parts.Length; i++)
        {
            var part = request.Parts[i];
            pieces += part.Quantity;
            if (!ids.Add(part.Id)) faults.Add(At("parts", i, "id"), part.Id, Twice);
            if (materials.ContainsKey(part.Material))
                CheckSides(request, "parts", i, part.Length, part.Width, faults);
            else
                faults.Add(At("parts", i, "material"), part.Material, Unknown);
            if (part.Quantity < 1) faults.Add(At("parts", i, "quantity"), Text(part.Quantity), "must be one or more");
        }

        if (pieces > MostPieces) faults.Add("parts", Text(pieces), $"pieces are too many: at most {MostPieces} are planned at once");
    }

    private static void CheckSides(CutRequest request, string list, int i, Length length, Length width, FaultList faults)
    {
        if (!length.IsPositive) faults.Add(At(list, i, "length"), Text(request, length), Positive);
        if (!width.IsPositive) faults.Add(At(list, i, "width"), Text(request, width), Positive);
    }

    private static void CheckSaw(CutRequest request, Dictionary<string, CutMaterial> materials, FaultList faults)
    {
        var (kerf, boardTrim, sheetTrim) = request.Saw;
        CheckNotNegative(request, "saw.kerf", kerf, faults);
        CheckNotNegative(request, "saw.boardEndTrim", boardTrim, faults);
        CheckNotNegative(request, "saw.sheetEdgeTrim", sheetTrim, faults);
        foreach (var stock in request.Stock)
        {
            if (!stock.Length.IsPositive || !stock.Width.IsPositive) continue;
            if (!materials.TryGetValue(stock.Material, out var material)) continue;
            var least = Length.Min(stock.Length, stock.Width);
            if (kerf >= least) faults.Add("saw.kerf", Text(request, kerf), TooWide(stock));
            if (stock.Offcut) continue;
            if (material.Form == StockForm.Board && boardTrim >= stock.Length)
                faults.Add("saw.boardEndTrim", Text(request, boardTrim), LeavesNothing(stock));
            if (material.Form == StockForm.Sheet && sheetTrim * 2 >= least)
                faults.Add("saw.sheetEdgeTrim", Text(request, sheetTrim), LeavesNothing(stock));
        }
    }

    private static void CheckNotNegative(CutRequest request, string field, Length length, FaultList faults)
    {
        if (length < Length.Zero) faults.Add(field, Text(request, length), "is less than nothing");
    }

    private const string Twice = "is there twice: every id must differ";
    private const string Unknown = "is no material of this request";
    private const string Positive = "must be more than nothing";
    private const string TooLarge = "is more than 20 m: no sheet is so large";

    private static string TooWide(CutStock stock) => $"is as wide as stock '{stock.Id}' or wider";

    private static string LeavesNothing(CutStock stock) => $"leaves nothing of stock '{stock.Id}'";

    private static string At(string list, int index, string member) =>
        string.Create(CultureInfo.InvariantCulture, $"{list}[{index}].{member}");

    private static string Text(long count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Text(CutRequest request, Length length) => LengthFormat.Exact(length, request.Unit);
}
