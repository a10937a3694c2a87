namespace ShopPlanner.Drawing.Shapes;

/// <summary>A place on the page: x to the right, y downward, in page units (1/72 in on paper).</summary>
/// <param name="X">From the left.</param>
/// <param name="Y">From the top.</param>
public readonly record struct Spot(double X, double Y);

/// <summary>An upright rectangle on the page, in page units.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Top edge.</param>
/// <param name="Width">Zero or more.</param>
/// <param name="Height">Zero or more.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>Right edge.</summary>
    public double Right => X + Width;

    /// <summary>Bottom edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>The middle.</summary>
    public Spot Centre => new(X + (Width / 2), Y + (Height / 2));

    /// <summary>The box made smaller by so much on each side.</summary>
    public Box Inset(double by) => new(X + by, Y + by, Math.Max(0, Width - (2 * by)), Math.Max(0, Height - (2 * by)));

    /// <summary>Whether a place lies within it.</summary>
    public bool Holds(Spot spot) => spot.X >= X && spot.X <= Right && spot.Y >= Y && spot.Y <= Bottom;

    /// <summary>Whether the two share more than an edge.</summary>
    public bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;
}
