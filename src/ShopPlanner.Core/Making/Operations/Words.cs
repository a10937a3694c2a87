using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Parts as a sentence names them.</summary>
internal static class PartWords
{
    /// <summary>A name for an id: <c>Door stile</c> → <c>door-stile</c>.</summary>
    public static string Slug(string name)
    {
        var letters = name.ToLowerInvariant().Select(one => char.IsLetterOrDigit(one) ? one : '-');
        return string.Join('-', string.Concat(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>The names of copies, plural where there are several: <c>door stiles and door rail</c>.</summary>
    public static string Names(IEnumerable<Workpiece> pieces) =>
        WordList.Of(
            pieces
                .DistinctBy(one => one.Mark)
                .GroupBy(one => one.Name, StringComparer.Ordinal)
                .Select(same => same.Count() > 1 ? Plural(Lower(same.Key)) : Lower(same.Key))
        );

    /// <summary>A name in the midst of a sentence.</summary>
    public static string Lower(string name) => name.ToLowerInvariant();

    private static string Plural(string name) =>
        name.EndsWith("shelf", StringComparison.Ordinal) ? name[..^1] + "ves"
        : name.EndsWith("ing", StringComparison.Ordinal) ? name
        : name[^1] is 's' or 'x' || name.EndsWith("ch", StringComparison.Ordinal) ? name + "es"
        : name[^1] == 'y' && name.Length > 1 && !"aeiou".Contains(name[^2]) ? name[..^1] + "ies"
        : name + "s";
}

/// <summary>Sides of parts as a sentence names them.</summary>
internal static class SideWords
{
    /// <summary>A side: <c>inside face</c>, <c>front edge</c>, <c>lower end</c>.</summary>
    /// <param name="piece">The copy.</param>
    /// <param name="axis">Across the side.</param>
    /// <param name="atEnd">Whether it is the far side along the axis.</param>
    /// <param name="unit">What the copy belongs to: its inside is toward the middle of that.</param>
    public static string Of(Workpiece piece, Axis axis, bool atEnd, Box unit)
    {
        var noun = Noun(piece, axis);
        return axis switch
        {
            Axis.Z when noun == "face" => atEnd ? "upper face" : "underside",
            Axis.Z => (atEnd ? "upper " : "lower ") + noun,
            Axis.Y => (atEnd ? "rear " : "front ") + noun,
            _ => Across(piece, atEnd, unit, noun) + " " + noun,
        };
    }

    /// <summary>What kind of side it is: <c>face</c>, <c>edge</c> or <c>end</c>.</summary>
    public static string Noun(Workpiece piece, Axis axis) =>
        axis == piece.Copy.Along ? "end"
        : axis == piece.Copy.Flat || piece.Box.Extent(piece.Across) == piece.Thick ? "face"
        : "edge";

    /// <summary>Whether the side toward the middle of a unit is the far one along an axis; null for what stands in the
    /// middle.</summary>
    public static bool? IsInsideAtEnd(Workpiece piece, Axis axis, Box unit)
    {
        var (own, middle) = (piece.Box.Start(axis) + piece.Box.End(axis), unit.Start(axis) + unit.End(axis));
        return own == middle ? null : own < middle;
    }

    private static string Across(Workpiece piece, bool atEnd, Box unit, string noun)
    {
        if (noun == "end" || IsInsideAtEnd(piece, Axis.X, unit) is not { } inside)
            return atEnd ? "right" : "left";
        var isInside = inside == atEnd;
        return noun == "face"
            ? isInside
                ? "inside"
                : "outside"
            : isInside
                ? "inner"
                : "outer";
    }
}
