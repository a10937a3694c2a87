using System.Globalization;
using System.Numerics;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>What must hold between a stock, the edges that are still to be trimmed and its bad places. A stock that is bad all
/// over is no fault: it has room for nothing.</summary>
/// <param name="unit">Of the request.</param>
/// <param name="note">Called with each fault.</param>
internal sealed class StockPlaceRules(LengthUnit unit, Action<Fault> note)
{
    /// <summary>Notes every breach.</summary>
    /// <param name="path">Of the stock.</param>
    /// <param name="stock">The stock, each member within its range.</param>
    /// <param name="form">Of its material; null where that is not known.</param>
    /// <param name="width">Of the stock or else of its material; null where that is not known.</param>
    public void Check(string path, StockDraft stock, StockForm? form, Length? width)
    {
        if (form == StockForm.Board && (stock.Untrimmed & ~StockEdges.Ends) is { } edges and not StockEdges.None)
            Refuse(
                path + ".untrimmed",
                edges.ToString().ToLowerInvariant(),
                "is for sheets: a board has the ends \"near\" and \"far\""
            );
        if (stock.BadPlaces.Length == 0)
            return;
        if (stock.Quantity is null)
            Refuse(path + ".quantity", "", "is missing: write 1, since bad places belong to one board or sheet");
        else if (stock.Quantity != 1)
            Refuse(
                path + ".quantity",
                stock.Quantity.Value.ToString(CultureInfo.InvariantCulture),
                "must be 1: bad places belong to one board or sheet, so give each its own id"
            );
        for (var i = 0; i < stock.BadPlaces.Length; i++)
        {
            var (place, at) = (stock.BadPlaces[i], $"{path}.badPlaces[{i}]");
            Within(at, "x", place.X, "dx", place.Dx, stock.Length, "long");
            Within(at, "y", place.Y, "dy", place.Dy, width, "wide");
        }
    }

    /// <summary>Returns how often a trim comes off along the length, and how often across.</summary>
    public static (int Along, int Across) Trims(StockDraft stock, StockForm form)
    {
        var usual =
            stock.Offcut ? StockEdges.None
            : form == StockForm.Board ? StockEdges.Near
            : StockEdges.All;
        var edges = stock.Untrimmed ?? usual;
        return (
            BitOperations.PopCount((uint)(edges & StockEdges.Ends)),
            BitOperations.PopCount((uint)(edges & (StockEdges.Front | StockEdges.Back)))
        );
    }

    private void Within(string path, string from, Length? start, string by, Length? extent, Length? side, string how)
    {
        if (side is not { } whole)
            return;
        var begin = start ?? Length.Zero;
        if (begin >= whole)
            Refuse($"{path}.{from}", Number(begin), $"is outside: the stock is {Text(whole)} {how}");
        else if (begin + extent > whole)
            Refuse(
                $"{path}.{by}",
                Number(extent!.Value),
                $"reaches beyond the stock, {Text(whole)} {how}: at most {Text(whole - begin)} from there"
            );
    }

    private void Refuse(string path, string value, string message) => note(Fault.Of(path, value, message));

    private string Number(Length length) => JsonOutput.Number(length, unit);

    private string Text(Length length) => LengthFormat.Exact(length, unit) + (unit == LengthUnit.Inch ? " in" : " mm");
}
