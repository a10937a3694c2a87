using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>A strip on edge that is glued along a shelf and stiffens it.</summary>
/// <param name="High">Height of the strip, more than the shelf's thickness.</param>
/// <param name="Thick">Thickness of the strip, front to back.</param>
/// <param name="Wood">Of the strip.</param>
internal sealed record EdgeStrip(Working<Length> High, Working<Length> Thick, Strength Wood)
{
    /// <summary>The strip that every copy of a shelf has along its whole edge; null where one has none. Where there are several,
    /// the least of them counts; a strip of unknown stiffness does not.</summary>
    public static EdgeStrip? Of(Piece piece, PiecePart shelf)
    {
        var parts = piece
            .Parts.SelectMany(part => part.Copies.Select(copy => (copy.Mark, Part: part, Copy: copy)))
            .ToDictionary(one => one.Mark, one => (one.Part, one.Copy), StringComparer.Ordinal);
        var glued = piece.Joints.Where(joint => joint.Kind == JointKind.Glued).ToLookup(joint => joint.Into, joint => joint.From);
        EdgeStrip? least = null;
        foreach (var copy in shelf.Copies)
        {
            var strips = glued[copy.Mark]
                .Select(mark => parts[mark])
                .Where(one => one.Part.Strength() is not null && Stiffens(one.Copy, copy))
                .ToList();
            if (strips.Count == 0)
                return null;
            var best = strips.MaxBy(one => one.Copy.Box.Extent(copy.Flat).Ticks);
            if (least is null || best.Copy.Box.Extent(copy.Flat) < least.High.Value)
                least = new(
                    Working.Given("Strip height", best.Copy.Box.Extent(copy.Flat)),
                    Working.Given("Strip thickness", best.Copy.Box.Extent(copy.Across)),
                    best.Part.Strength()!
                );
        }

        return least;
    }

    /// <summary>Stiffness of shelf and strip side by side: of the softer one, since the formula takes them as one
    /// material.</summary>
    public Working<double> Elasticity(Strength shelf)
    {
        var (own, strip) = (StrengthTable.Elasticity(shelf), StrengthTable.Elasticity(Wood));
        return strip.Value < own.Value ? strip : own;
    }

    /// <summary>Depth that is loaded: the shelf's and the strip's.</summary>
    public Working<Length> Loaded(Working<Length> depth) =>
        Working.Of(
            "Depth with the edge strip",
            depth.Value + Thick.Value,
            "{depth} + {strip}",
            Working.Geometry,
            ("depth", depth),
            ("strip", Thick)
        );

    // On edge, as long as the shelf within dadoes, and higher than the shelf is thick.
    private static bool Stiffens(PartCopy strip, PartCopy shelf) =>
        strip.Along == shelf.Along
        && strip.Flat == shelf.Across
        && strip.Box.Extent(shelf.Flat) > shelf.Box.Extent(shelf.Flat)
        && strip.Box.Extent(shelf.Along) * 10 >= shelf.Box.Extent(shelf.Along) * 9;
}
