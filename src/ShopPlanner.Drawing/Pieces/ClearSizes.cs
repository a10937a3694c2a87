using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>From where to where a clear space reaches.</summary>
internal readonly record struct Span(Length From, Length To)
{
    public Length Size => To - From;
}

/// <summary>The clear sizes that are dimensioned along an axis: those of the bays, else the spaces between what stands or
/// lies.</summary>
internal static class ClearSizes
{
    /// <summary>Spans that do not overlap, in order.</summary>
    public static List<Span> Along(Piece piece, IReadOnlyList<ShownPart> parts, Axis axis)
    {
        var bays = Apart(Innermost(piece).Select(box => new Span(box.Start(axis), box.End(axis))));
        return bays.Count > 0 ? bays
            : axis == Axis.Y ? []
            : Between(parts, axis, piece.Outside.Extent(axis));
    }

    private static IEnumerable<Solid> Innermost(Piece piece) =>
        piece
            .Openings.Where(one => !piece.Openings.Any(other => other.Path.StartsWith(one.Path + ".", StringComparison.Ordinal)))
            .Select(one => one.Box);

    // Where bays overlap along the axis, the first is enough.
    private static List<Span> Apart(IEnumerable<Span> spans)
    {
        var chain = new List<Span>();
        foreach (var span in spans.Where(one => one.Size.IsPositive).OrderBy(one => one.From).ThenBy(one => one.To))
            if (chain.Count == 0 || span.From >= chain[^1].To)
                chain.Add(span);
        return chain;
    }

    // Along the width between what stands on the floor, in height between what lies.
    private static List<Span> Between(IReadOnlyList<ShownPart> parts, Axis axis, Length end)
    {
        var wood = parts
            .Where(part => axis == Axis.Z ? part.Copy.Along != Axis.Z : part.Box.Z == Length.Zero)
            .Select(part => new Span(part.Box.Start(axis), part.Box.End(axis)))
            .OrderBy(one => one.From);
        var (free, at) = (new List<Span>(), axis == Axis.Z ? Length.Zero : end);
        foreach (var span in wood)
        {
            if (span.From > at)
                free.Add(new(at, span.From));
            at = at == end && free.Count == 0 ? span.To : Length.Max(at, span.To);
        }

        return free;
    }
}
