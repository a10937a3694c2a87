using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// A rectangle of real wood, in ticks from a corner of the stock as bought, and how it is cut further: a part, a remnant, or
/// children that lie side by side with a kerf between neighbours.
/// </summary>
/// <param name="X">Of the corner nearest the origin.</param>
/// <param name="Y">Of the corner nearest the origin.</param>
/// <param name="Dx">Along the stock's length, more than zero.</param>
/// <param name="Dy">Across, more than zero.</param>
/// <param name="Part">Id of the part that this is; null when it is none.</param>
/// <param name="Turned">True when the part's length lies along y.</param>
/// <param name="AlongX">True when the children lie side by side along x.</param>
/// <param name="Children">Empty for a part or a remnant.</param>
internal sealed record Slab(
    long X,
    long Y,
    long Dx,
    long Dy,
    string? Part,
    bool Turned,
    bool AlongX,
    ImmutableArray<Slab> Children
)
{
    /// <summary>True when the store makes the cuts between the children: they are panels as carried home, rough edges included.</summary>
    public bool ByStore { get; init; }

    public long EndX => X + Dx;

    public long EndY => Y + Dy;

    public bool IsRemnant => Part is null && Children.IsEmpty;

    public static Slab Remnant(long x, long y, long dx, long dy) => new(x, y, dx, dy, null, false, false, []);

    public static Slab Piece(string part, bool turned, long x, long y, long dx, long dy) =>
        new(x, y, dx, dy, part, turned, false, []);

    /// <summary>This slab and all below it.</summary>
    public IEnumerable<Slab> Whole() => Children.SelectMany(child => child.Whole()).Prepend(this);

    /// <summary>True when some part lies in it.</summary>
    public bool HasPart => Part is not null || Children.Any(child => child.HasPart);
}
