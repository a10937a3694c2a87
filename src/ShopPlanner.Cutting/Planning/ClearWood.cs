using ShopPlanner.Cutting.Clearing;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Planning;

/// <summary>The bad places of a stock as layouts meet them: in ticks from where the usable wood begins, sides with a
/// kerf.</summary>
internal static class ClearWood
{
    public static BadWood Of(Job job, CutStock stock)
    {
        var (startX, startY) = (job.StartX(stock), job.StartY(stock));
        return new(
            [
                .. stock.BadPlaces.Select(place => new Block(
                    Low(place.X.Ticks, startX, job.Kerf),
                    place.EndX.Ticks - startX,
                    Low(place.Y.Ticks, startY, job.Kerf),
                    place.EndY.Ticks - startY
                )),
            ],
            new(0, 0, job.UsableX(stock) + job.Kerf, job.UsableY(stock) + job.Kerf),
            job.Kerf
        );
    }

    /// <summary>Writes layouts of the stock.</summary>
    public static ClearWriter Writer(Job job, CutStock stock, SheetStock model, long highest) =>
        new(model, Of(job, stock), highest);

    // Wood between an edge and a bad place less than a kerf away is no piece.
    private static long Low(long begin, long start, long kerf) => (begin < kerf ? 0 : begin) - start + kerf;
}
