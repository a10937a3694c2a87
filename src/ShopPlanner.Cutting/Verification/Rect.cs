using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>A rectangle by its edges in ticks, exact.</summary>
internal readonly record struct Rect(long Left, long Bottom, long Right, long Top)
{
    public static Rect Of(Length x, Length y, Length dx, Length dy) =>
        new(x.Ticks, y.Ticks, checked(x.Ticks + dx.Ticks), checked(y.Ticks + dy.Ticks));

    public static Rect Of(PlacedPiece piece) => Of(piece.X, piece.Y, piece.Dx, piece.Dy);

    public static Rect Of(Leftover leftover) => Of(leftover.X, leftover.Y, leftover.Dx, leftover.Dy);

    public bool Contains(Rect other) =>
        other.Left >= Left && other.Bottom >= Bottom && other.Right <= Right && other.Top <= Top;

    public bool Overlaps(Rect other) =>
        other.Left < Right && Left < other.Right && other.Bottom < Top && Bottom < other.Top;

    /// <summary>First edge along x or across.</summary>
    public long Start(bool alongX) => alongX ? Left : Bottom;

    /// <summary>Last edge along x or across.</summary>
    public long End(bool alongX) => alongX ? Right : Top;

    /// <summary>The part of it between two places along x or across.</summary>
    public Rect Between(long start, long end, bool alongX) =>
        alongX ? this with { Left = start, Right = end } : this with { Bottom = start, Top = end };
}
