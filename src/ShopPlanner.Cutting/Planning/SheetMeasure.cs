using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Parts and stock of a job as the sheet solver takes them: a kerf is added to both sides of each, and each direction divided by
/// a common measure.
/// </summary>
/// <param name="job">The job.</param>
/// <param name="scaleX">Divides along x.</param>
/// <param name="scaleY">Divides along y.</param>
internal sealed class SheetMeasure(Job job, long scaleX, long scaleY)
{
    public SheetStock Of(CutStock stock) =>
        new(
            (job.UsableX(stock) + job.Kerf) / scaleX,
            (job.UsableY(stock) + job.Kerf) / scaleY,
            job.Weight(stock),
            stock.Quantity,
            stock.Offcut
        )
        {
            Keep = [.. job.Keep.LeastSizes(job.Material).Select(Sides)],
        };

    public SheetItem Of(CutPart part) =>
        new((part.Length.Ticks + job.Kerf) / scaleX, (part.Width.Ticks + job.Kerf) / scaleY, job.CanTurn(part), part.Quantity);

    // What is no larger than nothing is no leftover, whatever the rule says.
    private LeastSides Sides(LeastSize least) =>
        new(
            Scale.Up(Math.Max(1, least.Along.Ticks) + job.Kerf, scaleX),
            Scale.Up(Math.Max(1, least.Across.Ticks) + job.Kerf, scaleY)
        );
}
