namespace ShopPlanner.Cutting.Clearing;

/// <summary>A rectangle of a layout; like the sides of its nodes, its sides carry one kerf.</summary>
internal readonly record struct Zone(long X, long Y, long Dx, long Dy)
{
    public long From(bool alongX) => alongX ? X : Y;

    public long To(bool alongX) => alongX ? X + Dx : Y + Dy;

    /// <summary>A part of the zone, from edge to edge across the axis.</summary>
    public Zone Between(bool alongX, long from, long to) => alongX ? new(from, Y, to - from, Dy) : new(X, from, Dx, to - from);
}

/// <summary>A bad place as nodes of a layout meet it: one kerf beyond a node's wood may lie in it.</summary>
/// <param name="LowX">A node that ends here, or before, keeps off it.</param>
/// <param name="HighX">A node that begins here, or beyond, keeps off it.</param>
/// <param name="LowY">As <paramref name="LowX"/>, across.</param>
/// <param name="HighY">As <paramref name="HighX"/>, across.</param>
internal readonly record struct Block(long LowX, long HighX, long LowY, long HighY)
{
    public long Low(bool alongX) => alongX ? LowX : LowY;

    public long High(bool alongX) => alongX ? HighX : HighY;

    public bool Touches(Zone zone) => zone.X < HighX && zone.X + zone.Dx > LowX && zone.Y < HighY && zone.Y + zone.Dy > LowY;
}

/// <summary>The bad places of one stock.</summary>
/// <param name="blocks">Each of them.</param>
/// <param name="whole">The usable wood.</param>
/// <param name="kerf">What a cut turns to sawdust.</param>
internal sealed class BadWood(IReadOnlyList<Block> blocks, Zone whole, long kerf)
{
    public Zone Whole => whole;

    public IReadOnlyList<Block> In(Zone zone) => [.. blocks.Where(block => block.Touches(zone))];

    public bool IsClear(Zone zone)
    {
        foreach (var block in blocks)
            if (block.Touches(zone))
                return false;
        return true;
    }

    /// <summary>Where a piece beyond a block may begin when wood from a place on is in hand: at the block's end, and no nearer
    /// than a whole cut.</summary>
    public long Beyond(Block block, bool alongX, long from) => Math.Max(block.High(alongX), from + kerf);

    /// <summary>True when the strip from a place to the end of a zone can be cut off by itself: at least a kerf, unless the
    /// blade may run off the end of the wood.</summary>
    public bool IsStrip(bool alongX, long from, Zone zone)
    {
        var rest = zone.To(alongX) - from;
        return rest >= kerf || (rest > 0 && zone.To(alongX) == whole.To(alongX));
    }

    /// <summary>The nearest end of a row with the wood before a block, where the next node begins at a place: no sliver of
    /// less than a kerf stays between.</summary>
    public long Before(Zone zone, bool alongX, long next)
    {
        var end = In(zone).Min(block => block.Low(alongX));
        return next == whole.To(alongX) ? end : Math.Min(end, next - kerf);
    }
}
