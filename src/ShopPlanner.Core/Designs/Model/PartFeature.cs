using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Model;

/// <summary>Something cut out of one copy of a part beside what its joints take: a hole, a groove, a notch, a bevel, a taper, a
/// curve. Distances are measured inside the copy's box, from its corner nearest the origin, along the piece's own axes.
/// Immutable.</summary>
public abstract record PartFeature
{
    /// <summary>The least box around the wood that it takes, in the piece.</summary>
    /// <param name="whole">The copy's box.</param>
    public abstract Box Room(Box whole);

    /// <summary>Whether all wood within <see cref="Room"/> is taken; else only some of it, along a slant or a curve.</summary>
    public virtual bool IsSquare => false;
}

/// <summary>A round hole.</summary>
/// <param name="Face">Where it is bored from.</param>
/// <param name="First">Of its center, along the first of the face's two axes in the order x, y, z.</param>
/// <param name="Second">Of its center, along the other one.</param>
/// <param name="Diameter">Of the bit.</param>
/// <param name="Depth">From the face; null for a hole right through.</param>
public sealed record Hole(BoxSide Face, Length First, Length Second, Length Diameter, Length? Depth) : PartFeature
{
    /// <summary>The axes in which <see cref="First"/> and <see cref="Second"/> are measured.</summary>
    public (Axis First, Axis Second) Axes => BoxSides.Others(Face.Axis());

    /// <inheritdoc />
    public override Box Room(Box whole)
    {
        var half = Length.FromTicks(Diameter.Ticks / 2);
        var (one, other) = Axes;
        return whole
            .Slice(Face, Depth ?? whole.Extent(Face.Axis()))
            .With(one, whole.Start(one) + First - half, whole.Start(one) + First - half + Diameter)
            .With(other, whole.Start(other) + Second - half, whole.Start(other) + Second - half + Diameter);
    }
}

/// <summary>A groove, a dado or, along an edge, a rabbet.</summary>
/// <param name="Face">The face it is cut in.</param>
/// <param name="Run">The direction it runs in.</param>
/// <param name="From">Of its nearer wall, across its run.</param>
/// <param name="Width">From wall to wall.</param>
/// <param name="Depth">From the face.</param>
/// <param name="Start">Where it begins along its run; zero where it runs out.</param>
/// <param name="End">Where it ends along its run; null where it runs out.</param>
public sealed record Slot(BoxSide Face, Axis Run, Length From, Length Width, Length Depth, Length Start, Length? End)
    : PartFeature
{
    /// <summary>The axis across its run, in the face.</summary>
    public Axis Across => BoxSides.Third(Face.Axis(), Run);

    /// <inheritdoc />
    public override bool IsSquare => true;

    /// <summary>Whether one of its walls is missing, along an edge of the copy: a rabbet.</summary>
    public bool IsRabbet(Box whole) => From == Length.Zero || From + Width == whole.Extent(Across);

    /// <inheritdoc />
    public override Box Room(Box whole) =>
        whole.Slice(Face, Depth).Slice(Across, From, From + Width).Slice(Run, Start, End ?? whole.Extent(Run));
}

/// <summary>A notch: a corner or a piece of an edge cut out right through the copy.</summary>
/// <param name="Through">The direction it goes through in.</param>
/// <param name="From">Along the first of the two other axes, in the order x, y, z: where it begins.</param>
/// <param name="To">Along that axis: where it ends.</param>
/// <param name="SecondFrom">Along the other axis: where it begins.</param>
/// <param name="SecondTo">Along that axis: where it ends.</param>
public sealed record Notch(Axis Through, Length From, Length To, Length SecondFrom, Length SecondTo) : PartFeature
{
    /// <summary>The two axes in which it is measured.</summary>
    public (Axis First, Axis Second) Axes => BoxSides.Others(Through);

    /// <summary>Whether it goes from left to right through the lower front corner, as for a toe space.</summary>
    public bool IsToe => Through == Axis.X && From == Length.Zero && SecondFrom == Length.Zero;

    /// <inheritdoc />
    public override bool IsSquare => true;

    /// <inheritdoc />
    public override Box Room(Box whole) => whole.Slice(Axes.First, From, To).Slice(Axes.Second, SecondFrom, SecondTo);
}

/// <summary>An edge or an end cut at a slant, or only its corner: a chamfer.</summary>
/// <param name="Edge">The edge or end.</param>
/// <param name="Keeps">The face beside it that keeps its full size.</param>
/// <param name="Degrees">From a square cut: 45 for a miter.</param>
/// <param name="Reach">How far the slant reaches from the face across, toward <paramref name="Keeps"/>; null for all of the
/// edge.</param>
public sealed record Bevel(BoxSide Edge, BoxSide Keeps, double Degrees, Length? Reach) : PartFeature
{
    /// <summary>How much shorter the face across is.</summary>
    public Length Back(Box whole) =>
        Length.FromTicks((long)Math.Round(Deep(whole).Ticks * Math.Tan(Degrees * Math.PI / 180), MidpointRounding.AwayFromZero));

    /// <inheritdoc />
    public override Box Room(Box whole) => whole.Slice(Keeps.Opposite(), Deep(whole)).Slice(Edge, Back(whole));

    private Length Deep(Box whole) => Reach ?? whole.Extent(Keeps.Axis());
}

/// <summary>A face that slopes toward one end: of a leg that grows slender.</summary>
/// <param name="Face">The face that slopes.</param>
/// <param name="End">The end toward which wood is taken off.</param>
/// <param name="Long">From that end to where it begins.</param>
/// <param name="Off">Taken off the face at that end.</param>
public sealed record Taper(BoxSide Face, BoxSide End, Length Long, Length Off) : PartFeature
{
    /// <inheritdoc />
    public override Box Room(Box whole) => whole.Slice(End, Long).Slice(Face, Off);
}

/// <summary>A curved edge, an arc of a circle.</summary>
/// <param name="Edge">The edge.</param>
/// <param name="Run">The direction in which it runs.</param>
/// <param name="From">Where the arc begins along it.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Rise">Between the chord and the middle of the arc.</param>
/// <param name="IsHollow">Whether the most is cut from the middle, as under an arched apron; else from the two ends, which leaves
/// a crown.</param>
public sealed record Arc(BoxSide Edge, Axis Run, Length From, Length To, Length Rise, bool IsHollow) : PartFeature
{
    /// <summary>The radius of the circle: a quarter of the chord squared and the rise squared, over twice the rise.</summary>
    public Length Radius
    {
        get
        {
            var (half, rise) = ((To - From).Ticks / 2m, (decimal)Rise.Ticks);
            return Length.FromTicks(
                (long)Math.Round(((half * half) + (rise * rise)) / (2 * rise), MidpointRounding.AwayFromZero)
            );
        }
    }

    /// <inheritdoc />
    public override Box Room(Box whole) => whole.Slice(Edge, Rise).Slice(Run, From, To);
}

/// <summary>A corner rounded by a quarter of a circle.</summary>
/// <param name="First">One of the sides that meet there.</param>
/// <param name="Second">The other one.</param>
/// <param name="Radius">Of the circle.</param>
public sealed record Corner(BoxSide First, BoxSide Second, Length Radius) : PartFeature
{
    /// <summary>The direction it goes through in.</summary>
    public Axis Through => BoxSides.Third(First.Axis(), Second.Axis());

    /// <inheritdoc />
    public override Box Room(Box whole) => whole.Slice(First, Radius).Slice(Second, Radius);
}
