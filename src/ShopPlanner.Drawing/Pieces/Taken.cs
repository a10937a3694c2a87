using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>What leaders keep clear of: rings, and each other.</summary>
internal sealed class Taken
{
    // Between two leaders that run beside each other.
    private const double Apart = 3;

    private readonly List<Box> boxes = [];

    /// <summary>Takes room that nothing may cross.</summary>
    public void Add(Box box) => boxes.Add(box);

    /// <summary>Whether a box lies clear of all that is taken.</summary>
    public bool IsFree(Box box) => !boxes.Exists(box.Overlaps);

    /// <summary>Takes a straight way, level or upright, where nothing crosses it.</summary>
    /// <returns>False where something does.</returns>
    public bool TryTake(Spot from, Spot to)
    {
        var way = new Box(
            Math.Min(from.X, to.X) - (Apart / 2),
            Math.Min(from.Y, to.Y) - (Apart / 2),
            Math.Abs(from.X - to.X) + Apart,
            Math.Abs(from.Y - to.Y) + Apart
        );
        if (!IsFree(way))
            return false;
        boxes.Add(way);
        return true;
    }
}
