using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Sawing;

/// <summary>What there is to know of a board or sheet before it is cut, the same on screen and paper.</summary>
public static class StockNotes
{
    // Turned round, the piece has its bad end under a part.
    private const string Lying = ", with the tag at the left";

    /// <summary>Returns its note and its bad places: <c>a little cupped; bad place: Left end, 6″, with the tag at the left</c>;
    /// empty for nothing.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stock">Id of the stock in the plan's request.</param>
    public static string Of(PlanView plan, string stock)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var its = plan.Request.Stock.Single(one => one.Id == stock);
        string[] notes = [plan.Stocks[stock].Note, Bad(plan, its)];
        return string.Join("; ", notes.Where(note => note.Length > 0));
    }

    private static string Bad(PlanView plan, CutStock stock)
    {
        var places = stock.BadPlaces.Select(place => BadPlaceWords.Of(place, stock.Length, stock.Width, plan.Request.Unit));
        return stock.BadPlaces.Count switch
        {
            0 => "",
            1 => $"bad place: {places.Single()}{Lying}",
            _ => $"bad places: {string.Join("; ", places)}{Lying}",
        };
    }
}
