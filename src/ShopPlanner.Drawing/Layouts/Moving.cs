using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>Moves what labels are made of.</summary>
internal static class Moving
{
    /// <summary>The same shape further down the page.</summary>
    public static Shape Down(this Shape shape, double by) => shape switch
    {
        RingMark ring => ring with { At = ring.At with { Y = ring.At.Y + by } },
        Caption caption => caption with { At = caption.At with { Y = caption.At.Y + by } },
        _ => throw new ArgumentException("labels are made of rings and captions", nameof(shape)),
    };
}
