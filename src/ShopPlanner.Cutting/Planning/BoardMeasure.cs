using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Stock of a job as the board solver takes it: a kerf is added to its usable length, which is divided by a common
/// measure of the parts and rounded down.</summary>
/// <param name="job">Boards that are not ripped.</param>
/// <param name="scale">The common measure of the parts' lengths, each with a kerf.</param>
internal sealed class BoardMeasure(Job job, long scale)
{
    public BoardStock Of(CutStock stock)
    {
        var capacity = Math.Max(1, (job.UsableX(stock) + job.Kerf) / scale);
        return new(capacity, job.Weight(stock), stock.Quantity, stock.Offcut, KeepAtLeast(stock, capacity));
    }

    // The capacity that is left when the most is used that leaves a leftover worth keeping: since stock is rounded down, this is
    // not the rule's own length in the solver's measure. What is no longer than nothing is no leftover, whatever the rule says.
    private long? KeepAtLeast(CutStock stock, long capacity)
    {
        if (job.Keep.LeastAlong(job.Material, stock.Width) is not { } least)
            return null;
        var room = job.UsableX(stock) - Math.Max(1, least.Ticks);
        return room < 0 ? null : capacity - (room / scale);
    }
}
