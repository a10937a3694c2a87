using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>A rectangle of a board or sheet that nothing may be cut from: a split end, a crushed corner, a knot. Measured as
/// plans measure: x along the stock's length, y across it, from one corner of the stock as bought.</summary>
/// <param name="X">Of the corner nearest the origin, along the stock's length, zero or more.</param>
/// <param name="Y">Of that corner, across, zero or more.</param>
/// <param name="Dx">Extent along the stock's length, more than zero.</param>
/// <param name="Dy">Extent across, more than zero.</param>
public sealed record BadPlace(Length X, Length Y, Length Dx, Length Dy)
{
    /// <summary>The far end, along the stock's length.</summary>
    public Length EndX => X + Dx;

    /// <summary>The far edge, across.</summary>
    public Length EndY => Y + Dy;

    /// <summary>Returns whether some wood is in this place and in the rectangle; edges that only meet share none.</summary>
    /// <param name="x">Of the rectangle's corner nearest the origin, along the length.</param>
    /// <param name="y">Of that corner, across.</param>
    /// <param name="dx">The rectangle's extent along the length.</param>
    /// <param name="dy">The rectangle's extent across.</param>
    public bool Touches(Length x, Length y, Length dx, Length dy) => x < EndX && x + dx > X && y < EndY && y + dy > Y;
}

/// <summary>The bad places of one board or sheet, which may overlap. Equal where their places are equal and in the same
/// order.</summary>
[CollectionBuilder(typeof(BadPlaces), nameof(Of))]
public sealed class BadPlaces : IReadOnlyList<BadPlace>, IEquatable<BadPlaces>
{
    private readonly ImmutableArray<BadPlace> places;

    private BadPlaces(ImmutableArray<BadPlace> places) => this.places = places;

    /// <summary>No bad place at all.</summary>
    public static BadPlaces None { get; } = new([]);

    /// <inheritdoc/>
    public int Count => places.Length;

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => places.IsEmpty;

    /// <inheritdoc/>
    public BadPlace this[int index] => places[index];

    /// <summary>Returns a list of places.</summary>
    public static BadPlaces Of(ReadOnlySpan<BadPlace> places) => places.IsEmpty ? None : new([.. places]);

    /// <summary>Returns whether no wood of a board or sheet is clear of them.</summary>
    /// <param name="length">Of the board or sheet.</param>
    /// <param name="width">Of the board or sheet.</param>
    public bool Cover(Length length, Length width)
    {
        var xs = Begins(places.Select(place => place.EndX), length);
        var ys = Begins(places.Select(place => place.EndY), width);
        var point = Length.FromTicks(1);
        return xs.All(x => ys.All(y => places.Any(place => place.Touches(x, y, point, point))));
    }

    // Clear wood, where there is any, has a corner at the end of a place or of the whole.
    private static List<Length> Begins(IEnumerable<Length> ends, Length whole) =>
        [.. ends.Append(Length.Zero).Where(end => end < whole).Distinct()];

    /// <inheritdoc/>
    public bool Equals(BadPlaces? other) => other is not null && places.AsSpan().SequenceEqual(other.places.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BadPlaces);

    /// <inheritdoc/>
    public override int GetHashCode() => places.Aggregate(places.Length, HashCode.Combine);

    /// <summary>Returns the places in words, for a person who looks for a mistake.</summary>
    public override string ToString() => string.Join("; ", places);

    /// <inheritdoc/>
    public IEnumerator<BadPlace> GetEnumerator() => ((IEnumerable<BadPlace>)places).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
