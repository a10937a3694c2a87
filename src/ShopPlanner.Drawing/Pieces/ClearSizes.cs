using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>From where to where something reaches along an axis.</summary>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
/// <param name="IsClear">Whether it is a clear space, given for reference; false for wood and what is cut.</param>
internal readonly record struct Span(Length From, Length To, bool IsClear)
{
    public Length Size => To - From;

    public bool Overlaps(Span other) => From < other.To && other.From < To;
}

/// <summary>The sizes that are dimensioned along an axis beside the outside size: toe space and drawer fronts, the clear sizes of
/// the bays, else legs and the spaces between what stands or lies.</summary>
internal static class ClearSizes
{
    /// <summary>Spans that do not overlap, in order.</summary>
    public static List<Span> Along(Piece piece, IReadOnlyList<ShownPart> parts, Axis axis)
    {
        var made = axis == Axis.Z ? ToeSpace(piece).Concat(Fronts(piece)).ToList() : [];
        var clear = Innermost(piece)
            .Select(box => new Span(box.Start(axis), box.End(axis), IsClear: true))
            .Where(one => !made.Exists(one.Overlaps));
        var chain = Apart(made.Concat(clear));
        return chain.Count > 0 ? chain
            : axis == Axis.X ? Standing(parts, piece.Outside.Dx)
            : axis == Axis.Z ? Lying(parts)
            : [];
    }

    private static IEnumerable<Solid> Innermost(Piece piece) =>
        piece
            .Openings.Where(one => !piece.Openings.Any(other => other.Path.StartsWith(one.Path + ".", StringComparison.Ordinal)))
            .Select(one => one.Box);

    // As high as it is cut out of the sides, from the floor.
    private static IEnumerable<Span> ToeSpace(Piece piece) =>
        piece
            .Parts.SelectMany(part => part.Copies)
            .Where(copy => copy.ToeNotch is not null)
            .Take(1)
            .Select(copy => new Span(copy.Box.Z, copy.Box.Z + copy.ToeNotch!.High, IsClear: false));

    private static IEnumerable<Span> Fronts(Piece piece) =>
        piece
            .Parts.Where(part => part.Name == "Drawer front")
            .SelectMany(part => part.Copies)
            .Select(copy => new Span(copy.Box.Z, copy.Box.EndZ, IsClear: false));

    // Where bays or fronts overlap along the axis, the first is enough.
    private static List<Span> Apart(IEnumerable<Span> spans)
    {
        var chain = new List<Span>();
        foreach (var span in spans.Where(one => one.Size.IsPositive).OrderBy(one => one.From).ThenBy(one => one.To))
            if (chain.Count == 0 || span.From >= chain[^1].To)
                chain.Add(span);
        return chain;
    }

    // Overhang, legs and the space between them, from one end of the piece to the other: a chain that adds up.
    private static List<Span> Standing(IReadOnlyList<ShownPart> parts, Length end)
    {
        var chain = new List<Span>();
        var at = Length.Zero;
        foreach (var (from, to) in Merged(parts.Where(part => part.Box.Z == Length.Zero), Axis.X))
        {
            if (from > at)
                chain.Add(new(at, from, IsClear: false));
            chain.Add(new(from, to, IsClear: false));
            at = to;
        }

        if (chain.Count > 0 && end > at)
            chain.Add(new(at, end, IsClear: false));
        return chain.Count > 1 ? chain : [];
    }

    // In height between what lies.
    private static List<Span> Lying(IReadOnlyList<ShownPart> parts)
    {
        var (free, at) = (new List<Span>(), Length.Zero);
        foreach (var (from, to) in Merged(parts.Where(part => part.Copy.Along != Axis.Z), Axis.Z))
        {
            if (from > at)
                free.Add(new(at, from, IsClear: true));
            at = to;
        }

        return free;
    }

    private static List<(Length From, Length To)> Merged(IEnumerable<ShownPart> parts, Axis axis)
    {
        var merged = new List<(Length From, Length To)>();
        foreach (var part in parts.OrderBy(part => part.Box.Start(axis)))
            if (merged.Count > 0 && part.Box.Start(axis) <= merged[^1].To)
                merged[^1] = (merged[^1].From, Length.Max(merged[^1].To, part.Box.End(axis)));
            else
                merged.Add((part.Box.Start(axis), part.Box.End(axis)));
        return merged;
    }
}
