namespace ShopPlanner.Packets.Flow;

/// <summary>A block in its column.</summary>
/// <param name="Block">The block.</param>
/// <param name="Column">From 0.</param>
/// <param name="Y">Its top below the columns' top.</param>
internal sealed record Placed(Block Block, int Column, double Y);

/// <summary>Blocks that stand on one page.</summary>
/// <param name="Blocks">In reading order.</param>
/// <param name="Next">Index of the first that found no room.</param>
/// <param name="Height">That the columns take.</param>
internal sealed record Filled(IReadOnlyList<Placed> Blocks, int Next, double Height);

/// <summary>Fills columns with blocks from the first on, each column from top to bottom.</summary>
/// <param name="blocks">All blocks.</param>
/// <param name="columns">How many columns stand beside each other.</param>
internal sealed class ColumnFill(IReadOnlyList<Block> blocks, int columns)
{
    private const int Halvings = 14;
    private const double Tolerance = 0.01;

    /// <summary>Fills one page.</summary>
    /// <param name="start">The first block.</param>
    /// <param name="room">Height of a column.</param>
    /// <param name="isWholePage">Whether no page has more room: what does not fit is split then, and no longer kept
    /// together.</param>
    public Filled Fill(int start, double room, bool isWholePage)
    {
        var (placed, next, height) = (new List<Placed>(), start, 0.0);
        for (var column = 0; column < columns && next < blocks.Count; column++)
        {
            var (until, bottom) = Column(next, column, room, isWholePage, placed);
            (next, height) = (until, Math.Max(height, bottom));
        }

        return new(placed, next, height);
    }

    /// <summary>The rest of the blocks in columns of about one height; null where they do not fit the room.</summary>
    public Filled? Balanced(int start, double room, bool isWholePage)
    {
        var best = Fill(start, room, isWholePage);
        if (best.Next < blocks.Count)
            return null;
        var (low, high) = (0.0, best.Height);
        for (var i = 0; i < Halvings && columns > 1; i++)
        {
            var middle = (low + high) / 2;
            var tried = Fill(start, middle, isWholePage: false);
            if (tried.Next == blocks.Count)
                (best, high) = (tried, middle);
            else
                low = middle;
        }

        return best;
    }

    /// <summary>Height of the first block with those that are kept with it.</summary>
    public double Beginning(int start) => Lay(start, EndOfUnit(start), 0, 0, []);

    private (int Next, double Bottom) Column(int next, int column, double room, bool isWholePage, List<Placed> placed)
    {
        var y = 0.0;
        while (next < blocks.Count)
        {
            var unit = new List<Placed>();
            var end = EndOfUnit(next);
            var bottom = Lay(next, end, column, y, unit);
            if (bottom > room + Tolerance && isWholePage && y == 0)
            {
                end = next + 1;
                while (end < EndOfUnit(next) && Lay(next, end + 1, column, y, []) <= room)
                    end++;
                unit.Clear();
                bottom = Lay(next, end, column, y, unit);
            }
            else if (bottom > room + Tolerance)
                break;

            placed.AddRange(unit);
            (next, y) = (end, bottom);
        }

        return (next, y);
    }

    private int EndOfUnit(int start)
    {
        var end = start;
        while (end < blocks.Count - 1 && blocks[end].Keep)
            end++;
        return end + 1;
    }

    private double Lay(int start, int end, int column, double y, List<Placed> placed)
    {
        for (var i = start; i < end; i++)
        {
            var block = blocks[i];
            if (y == 0 && block.Head is { } head)
            {
                placed.Add(new(head, column, y));
                y += head.Height;
            }
            else if (y > 0)
                y += block.Before;
            placed.Add(new(block, column, y));
            y += block.Height;
        }

        return y;
    }
}
