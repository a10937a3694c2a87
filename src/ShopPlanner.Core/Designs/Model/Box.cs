using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Model;

/// <summary>A direction of a piece: x along its width, y along its depth from the front, z up.</summary>
public enum Axis
{
    /// <summary>Along the width, from the left.</summary>
    X,

    /// <summary>Along the depth, from the front to the back.</summary>
    Y,

    /// <summary>Up from the floor.</summary>
    Z,
}

/// <summary>A box in space: where a part is, tongues and tenons included.</summary>
/// <param name="X">Of its left side.</param>
/// <param name="Y">Of its front.</param>
/// <param name="Z">Of its underside.</param>
/// <param name="Dx">Along the width.</param>
/// <param name="Dy">Along the depth.</param>
/// <param name="Dz">Its height.</param>
public readonly record struct Box(Length X, Length Y, Length Z, Length Dx, Length Dy, Length Dz)
{
    /// <summary>Of its right side.</summary>
    public Length EndX => X + Dx;

    /// <summary>Of its back.</summary>
    public Length EndY => Y + Dy;

    /// <summary>Of its top.</summary>
    public Length EndZ => Z + Dz;

    /// <summary>A box from its two corners.</summary>
    public static Box Between(Length x, Length y, Length z, Length endX, Length endY, Length endZ) =>
        new(x, y, z, endX - x, endY - y, endZ - z);

    /// <summary>Where it begins along an axis.</summary>
    public Length Start(Axis axis) =>
        axis switch
        {
            Axis.X => X,
            Axis.Y => Y,
            _ => Z,
        };

    /// <summary>Where it ends along an axis.</summary>
    public Length End(Axis axis) =>
        axis switch
        {
            Axis.X => EndX,
            Axis.Y => EndY,
            _ => EndZ,
        };

    /// <summary>Its extent along an axis.</summary>
    public Length Extent(Axis axis) =>
        axis switch
        {
            Axis.X => Dx,
            Axis.Y => Dy,
            _ => Dz,
        };

    /// <summary>The same box moved.</summary>
    public Box Moved(Length dx, Length dy, Length dz) => this with { X = X + dx, Y = Y + dy, Z = Z + dz };

    /// <summary>The same box with another start and end along an axis.</summary>
    public Box With(Axis axis, Length start, Length end) =>
        axis switch
        {
            Axis.X => this with { X = start, Dx = end - start },
            Axis.Y => this with { Y = start, Dy = end - start },
            _ => this with { Z = start, Dz = end - start },
        };

    /// <summary>Grown at both ends along an axis: a tongue on each.</summary>
    public Box Grown(Axis axis, Length start, Length end) => With(axis, Start(axis) - start, End(axis) + end);

    /// <summary>What two boxes share; null when they only touch or lie apart.</summary>
    public Box? Shared(Box other)
    {
        var box = Overlap(other);
        return box is { Dx.IsPositive: true, Dy.IsPositive: true, Dz.IsPositive: true } ? box : null;
    }

    /// <summary>Where two boxes share wood or a face of both lies on the other: at least two of its extents are more than
    /// nothing. Null where they lie apart, or only an edge or a corner of them meets.</summary>
    public Box? Meeting(Box other)
    {
        var box = Overlap(other);
        Length[] sides = [box.Dx, box.Dy, box.Dz];
        return sides.All(side => side >= Length.Zero) && sides.Count(side => side.IsPositive) >= 2 ? box : null;
    }

    // Less than nothing along an axis where they lie apart.
    private Box Overlap(Box other) =>
        Between(
            Length.Max(X, other.X),
            Length.Max(Y, other.Y),
            Length.Max(Z, other.Z),
            Length.Min(EndX, other.EndX),
            Length.Min(EndY, other.EndY),
            Length.Min(EndZ, other.EndZ)
        );

    /// <summary>The least box around both.</summary>
    public Box Around(Box other) =>
        Between(
            Length.Min(X, other.X),
            Length.Min(Y, other.Y),
            Length.Min(Z, other.Z),
            Length.Max(EndX, other.EndX),
            Length.Max(EndY, other.EndY),
            Length.Max(EndZ, other.EndZ)
        );
}
