using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>The marks of a flat view: in the part where a ring has room, else at the right or above with a leader that crosses
/// neither a ring nor another leader. A mark that finds no such way is left to the other views.</summary>
internal sealed class FlatMarks
{
    private static readonly double[] Steps = [0.5, 0.3, 0.7, 0.15, 0.85];

    // How far a ring's leader ends within its part, and how far rings above reach beyond the outline.
    private const double Within = 8,
        Beyond = 10;

    // So many rings above, and a kind that has one already gets no more there.
    private const int MostAlike = 6;

    private readonly Box outline;
    private readonly double size;
    private readonly Taken taken = new();
    private readonly HashSet<string> kinds = [];
    private readonly List<Shape> rings = [];
    private readonly List<Callout> beside = [];
    private readonly List<Callout> above = [];
    private readonly int mostBeside;
    private double roomAbove;

    /// <summary>Finds a place for each mark.</summary>
    /// <param name="parts">On the page.</param>
    /// <param name="outline">Of the piece.</param>
    /// <param name="size">Of the letters.</param>
    /// <param name="mayBeside">Whether rings may stand at the right.</param>
    /// <param name="mayAbove">Whether rings may stand above.</param>
    public FlatMarks(IReadOnlyList<SeenPart> parts, Box outline, double size, bool mayBeside, bool mayAbove)
    {
        (this.outline, this.size) = (outline, size);
        mostBeside = mayBeside ? Callouts.Most(outline.Y, Foot, size) : 0;
        roomAbove = mayAbove ? outline.Width + (2 * Beyond) : 0;
        var seen = parts
            .Where(part => part.IsSeen)
            .Select(part => (Part: part, Free: Uncovered.Roomiest(part.Free)!.Value))
            .ToList();
        var without = seen.Where(one => !IsOn(one.Part, one.Free)).OrderByDescending(one => one.Free.Right).ToList();
        foreach (var (part, free) in without)
            if (IsLed(part, free))
                kinds.Add(part.Part.Part.Id);
    }

    /// <summary>Whether rings stand at the right.</summary>
    public bool HasBeside => beside.Count > 0;

    /// <summary>Whether rings stand above.</summary>
    public bool HasAbove => above.Count > 0;

    /// <summary>Rings and leaders.</summary>
    public IEnumerable<Shape> Draw() =>
        [
            .. Callouts.Down(beside, outline.Right, 1, outline.Y, Foot, size),
            .. Callouts.Along(above, outline.Y, outline.X - Beyond, outline.Right + Beyond, size),
            .. rings,
        ];

    // A low drawing has room for one ring at its right all the same.
    private double Foot => Math.Max(outline.Bottom, outline.Y + (2 * RingMark.HeightOf(size)));

    private bool IsOn(SeenPart part, Box free)
    {
        var (long_, high) = (RingMark.WidthOf(part.Mark, size) + 2, RingMark.HeightOf(size) + 2);
        var isLevel = free.Width >= long_ && free.Height >= high;
        if (!isLevel && (free.Height < long_ || free.Width < high))
            return false;
        var ring = new RingMark(free.Centre, part.Mark, size, Upward: !isLevel);
        if (!taken.IsFree(ring.Extent))
            return false;
        taken.Add(ring.Extent);
        rings.Add(new Marked(part.Mark, [ring]));
        kinds.Add(part.Part.Part.Id);
        return true;
    }

    // The shorter way first. From deep in the drawing only what stands for its kind is led out.
    private bool IsLed(SeenPart part, Box free)
    {
        var (toTop, toRight) = (free.Y - outline.Y, outline.Right - free.Right);
        var isNew = !kinds.Contains(part.Part.Part.Id);
        var mayAbove = isNew || (toTop < outline.Height / 4 && above.Count < MostAlike);
        var mayBeside = isNew || toRight < outline.Width / 4;
        var isUp = toTop < toRight || (toTop <= toRight + Within && free.Height > free.Width);
        return isUp
            ? (mayAbove && IsAbove(part, free)) || (mayBeside && IsBeside(part, free))
            : (mayBeside && IsBeside(part, free)) || (mayAbove && IsAbove(part, free));
    }

    private bool IsBeside(SeenPart part, Box free)
    {
        if (beside.Count >= mostBeside)
            return false;
        var x = free.Right - Math.Min(Within, free.Width / 3);
        foreach (var y in Steps.Select(step => free.Y + (step * free.Height)))
            if (taken.TryTake(new(x, y), new(outline.Right + Callouts.Straight, y)))
            {
                beside.Add(new(part.Mark, part.Mark, new(x, y)));
                return true;
            }

        return false;
    }

    private bool IsAbove(SeenPart part, Box free)
    {
        var wide = Callouts.WidthOf(part.Mark, size);
        if (wide > roomAbove)
            return false;
        var y = free.Y + Math.Min(Within, free.Height / 3);
        foreach (var x in Steps.Select(step => free.X + (step * free.Width)))
            if (taken.TryTake(new(x, y), new(x, outline.Y - Callouts.Straight)))
            {
                above.Add(new(part.Mark, part.Mark, new(x, y)));
                roomAbove -= wide;
                return true;
            }

        return false;
    }
}
