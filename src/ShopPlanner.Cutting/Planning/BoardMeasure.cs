using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Parts and stock of a job as the board solver takes them: a kerf is added to each length, which is divided by a common
/// measure of the parts; stock is rounded down.</summary>
/// <param name="job">Boards that are not ripped.</param>
/// <param name="scale">The common measure of the parts' lengths, each with a kerf.</param>
internal sealed class BoardMeasure(Job job, long scale)
{
    /// <param name="lot">A clear length of a board.</param>
    /// <param name="weight">What the search counts for it.</param>
    public BoardStock Of(BoardLot lot, long weight)
    {
        var capacity = Math.Max(1, (lot.Length + job.Kerf) / scale);
        return new(capacity, weight, lot.Stock.Quantity, lot.Stock.Offcut, KeepAtLeast(lot, capacity));
    }

    /// <param name="size">A length with the pieces wanted of it.</param>
    public BoardItem Of((Length Length, int Pieces) size) => new((size.Length.Ticks + job.Kerf) / scale, size.Pieces);

    // The capacity that is left when the most is used that leaves a leftover worth keeping: since stock is rounded down, this is
    // not the rule's own length in the solver's measure. What is no longer than nothing is no leftover, whatever the rule says.
    private long? KeepAtLeast(BoardLot lot, long capacity)
    {
        if (job.Keep.LeastAlong(job.Material, lot.Stock.Width) is not { } least)
            return null;
        var room = lot.Length - Math.Max(1, least.Ticks);
        return room < 0 ? null : capacity - (room / scale);
    }
}
