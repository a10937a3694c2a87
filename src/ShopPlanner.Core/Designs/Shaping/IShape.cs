using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Shaping;

/// <summary>A kind of shape that is cut out of parts.</summary>
internal interface IShape
{
    KindInfo Info { get; }

    /// <summary>Reads what is asked once; the answer gives what is cut out of each copy. Null after a fault.</summary>
    Func<ShapedCopy, IEnumerable<PartFeature>>? Read(NodeReader members);
}

/// <summary>A copy that is shaped.</summary>
/// <param name="Draft">The copy.</param>
/// <param name="Outside">Of the whole piece.</param>
/// <param name="Fail">Notes that the shape does not fit this copy: member, value, what would be right.</param>
internal sealed record ShapedCopy(Draft Draft, Box Outside, Action<string, string, string> Fail)
{
    public Box Box => Draft.Box;

    public string Name => Draft.Name.ToLowerInvariant();

    /// <summary>Whether the copy's middle lies beyond that of the piece.</summary>
    public bool IsBeyond(Axis axis) => Middle(Box, axis) > Middle(Outside, axis);

    /// <summary>The side that looks to the middle of the piece; null for a copy in the middle.</summary>
    public BoxSide? Inner(Axis axis) => Middle(Box, axis) == Middle(Outside, axis) ? null : BoxSides.Of(axis, !IsBeyond(axis));

    private static Length Middle(Box box, Axis axis) => box.Start(axis) + box.End(axis);
}

/// <summary>Members and choices that shapes share.</summary>
internal static class ShapeMembers
{
    public static readonly ImmutableArray<string> Sides = [.. DesignReader.Sides.Keys];

    public static readonly ImmutableArray<string> Directions = [.. DesignReader.Directions.Keys];

    public static readonly MemberInfo Mirror = new(
        "mirror",
        "Mirrored in copies beyond the middle of the piece",
        MemberType.Choice,
        "none",
        "none",
        "x",
        "y",
        "xy"
    );

    /// <summary>From which end something is measured: the near one is at the left, in front or below.</summary>
    public static readonly MemberInfo Measured = new("measured", "Measured from", MemberType.Choice, "near", "near", "far");

    public static MemberInfo Side(string name, string label, string? usual = null) =>
        new(name, label, MemberType.Choice, usual, usual is null ? Sides : [usual, .. Sides]);

    public static MemberInfo Direction(string name, string label, string? usual = null) =>
        new(name, label, MemberType.Choice, usual, usual is null ? Directions : [usual, .. Directions]);

    /// <summary>The features as the copy has them: mirrored along each axis that is asked for, where it lies beyond the
    /// middle.</summary>
    public static IEnumerable<PartFeature> Mirrored(ShapedCopy copy, string mirror, IEnumerable<PartFeature> features) =>
        new[] { Axis.X, Axis.Y }
            .Where(axis => mirror.Contains(axis == Axis.X ? 'x' : 'y', StringComparison.Ordinal) && copy.IsBeyond(axis))
            .Aggregate(features, (some, axis) => some.Select(one => FeatureMirror.Of(one, axis, copy.Box)));
}
