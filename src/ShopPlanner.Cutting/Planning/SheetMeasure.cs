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
    public SheetStock Of(CutStock stock)
    {
        var (keepX, keepY) = KeepSides();
        return new(
            (job.UsableX(stock) + job.Kerf) / scaleX,
            (job.UsableY(stock) + job.Kerf) / scaleY,
            job.Weight(stock),
            stock.Quantity,
            stock.Offcut,
            keepX is { } x ? Scale.Up(x + job.Kerf, scaleX) : null,
            keepY is { } y ? Scale.Up(y + job.Kerf, scaleY) : null
        );
    }

    public SheetItem Of(CutPart part) =>
        new((part.Length.Ticks + job.Kerf) / scaleX, (part.Width.Ticks + job.Kerf) / scaleY, job.CanTurn(part), part.Quantity);

    private (long? X, long? Y) KeepSides() =>
        job.IsBoard
            ? job.Keep.BoardLength is { } length
                ? (length.Ticks, job.Material.Width!.Value.Ticks / 2)
                : (null, null)
            : job.Keep is { SheetLength: { } x, SheetWidth: { } y }
                ? (x.Ticks, y.Ticks)
                : (null, null);
}
