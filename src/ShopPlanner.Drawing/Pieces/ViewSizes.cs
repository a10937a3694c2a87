using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>
/// What is dimensioned along an axis beside the outside size, the most telling first: toe space, fronts, face frame, legs, the
/// thickness of what divides the piece, its clear openings; then bores. What does not fit into the first chain begins a second.
/// </summary>
internal sealed class ViewSizes(Piece piece, IReadOnlyList<ShownPart> parts, Bores bores)
{
    /// <summary>The chains along an axis, the nearest to the outline first.</summary>
    /// <param name="side">From where the piece is seen.</param>
    /// <param name="axis">Across or up the drawing.</param>
    /// <param name="most">How many at most.</param>
    /// <param name="isOnly">Whether no other view shows what lies behind a front.</param>
    public IReadOnlyList<ImmutableArray<Span>> Chains(ViewFrom side, Axis axis, int most, bool isOnly = false)
    {
        var isFront = side == ViewFrom.Front;
        List<Span> within = [.. ToeSpace(side, axis), .. Standing(axis), .. Across(axis), .. Openings(axis), .. Lying(axis)];
        var chains = new List<ImmutableArray<Span>>();
        Take(chains, isFront ? [.. ToeSpace(side, axis), .. Fronts(axis), .. FaceFrame(axis), .. within] : within);
        if (isOnly && Openings(axis).Any(one => !IsShown(chains, one)))
            Take(chains, within);
        // A second chain is for what the first one passes by: the fronts of another column, the depth within, holes.
        Take(chains, [.. (isFront ? Fronts(axis) : Openings(axis)).Where(one => !IsShown(chains, one))]);
        Take(chains, [.. bores.Sizes(side, axis)]);
        return [.. chains.Take(most)];
    }

    private static void Take(List<ImmutableArray<Span>> chains, IReadOnlyList<Span> wanted)
    {
        var chain = new List<Span>();
        foreach (var span in wanted.Where(one => one.Size.IsPositive))
            if (!chain.Exists(span.Overlaps))
                chain.Add(span);
        if (chain.Count > 0)
            chains.Add([.. chain]);
    }

    private bool IsShown(List<ImmutableArray<Span>> chains, Span span)
    {
        Length At(Length length) => DimensionChain.Mark(length, piece.Unit);
        return chains.Exists(chain =>
        {
            var ends = chain.SelectMany(one => new[] { At(one.From), At(one.To) }).ToHashSet();
            return ends.Contains(At(span.From)) && ends.Contains(At(span.To));
        });
    }

    // As high as it is cut out of the sides, from the floor, and as deep.
    private IEnumerable<Span> ToeSpace(ViewFrom side, Axis axis) =>
        piece
            .Parts.SelectMany(part => part.Copies)
            .Where(copy => copy.ToeNotch is not null)
            .Take(1)
            .SelectMany<PartCopy, Span>(copy =>
                axis == Axis.Z ? [new(copy.Box.Z, copy.Box.Z + copy.ToeNotch!.High)]
                : axis == Axis.Y && side == ViewFrom.Right ? [new(copy.Box.Y, copy.Box.Y + copy.ToeNotch!.Deep)]
                : []
            );

    private IEnumerable<Span> Fronts(Axis axis) =>
        piece
            .Parts.Where(part => part.Name == "Drawer front")
            .SelectMany(part => part.Copies.Select(copy => copy.Box))
            .Concat(DoorLeaf.Of(piece).Select(leaf => leaf.Box))
            .OrderBy(box => box.Start(axis))
            .Select(box => Of(box, axis));

    private IEnumerable<Span> FaceFrame(Axis axis) =>
        parts
            .Where(part => part.Part.Assembly == "Face frame" && part.Copy.Along != axis && part.Copy.Flat != axis)
            .Select(part => Of(part.Box, axis));

    // Legs, and with them overhang and the space between: of a case that stands on all of its foot nothing.
    private List<Span> Standing(Axis axis)
    {
        if (axis == Axis.Z)
            return [];
        var merged = Merged(parts.Where(part => part.Box.Z == Length.Zero), axis);
        return merged.Count > 1 ? merged : [];
    }

    // Sides and dividers across, shelves that stay, tops and bottoms up.
    private IEnumerable<Span> Across(Axis axis) =>
        parts
            .Where(part => part.Copy.Flat == axis && IsFixed(part.Part, axis))
            .OrderBy(part => part.Box.Start(axis))
            .Select(part => Of(part.Box, axis));

    // What moves or lies loose divides nothing; how thick a front is shows from the side.
    private static bool IsFixed(PiecePart part, Axis axis) =>
        part.Assembly switch
        {
            "Shelves" => false,
            "Drawer" => axis == Axis.Y && part.Name == "Drawer front",
            "Door" => axis == Axis.Y && part.Name != "Door panel",
            _ => true,
        };

    private IEnumerable<Span> Openings(Axis axis) =>
        Innermost(piece).Select(box => Of(box, axis)).OrderBy(one => one.From).ThenBy(one => one.To);

    // Aprons and rails.
    private IEnumerable<Span> Lying(Axis axis) =>
        axis != Axis.Z
            ? []
            : parts
                .Where(part => part.Copy.Along != Axis.Z && IsFixed(part.Part, axis))
                .OrderBy(part => part.Box.Dz)
                .Select(part => Of(part.Box, axis));

    private static IEnumerable<Solid> Innermost(Piece piece) =>
        piece
            .Openings.Where(one => !piece.Openings.Any(other => other.Path.StartsWith(one.Path + ".", StringComparison.Ordinal)))
            .Select(one => one.Box);

    private static Span Of(Solid box, Axis axis) => new(box.Start(axis), box.End(axis));

    private static List<Span> Merged(IEnumerable<ShownPart> parts, Axis axis)
    {
        var merged = new List<Span>();
        foreach (var part in parts.OrderBy(part => part.Box.Start(axis)))
            if (merged.Count > 0 && part.Box.Start(axis) <= merged[^1].To)
                merged[^1] = merged[^1] with { To = Length.Max(merged[^1].To, part.Box.End(axis)) };
            else
                merged.Add(Of(part.Box, axis));
        return merged;
    }
}
