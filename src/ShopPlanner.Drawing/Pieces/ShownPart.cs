using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A copy of a part as it is seen: what is let into another part is taken off.</summary>
/// <param name="Part">The part.</param>
/// <param name="Copy">The copy.</param>
/// <param name="Box">What shows of it.</param>
/// <param name="Tint">Pale tint of its wood.</param>
internal sealed record ShownPart(PiecePart Part, PartCopy Copy, Solid Box, string Tint)
{
    /// <summary>Whether the mark of the copy or the letter of its part is this.</summary>
    public bool Is(string? mark) => mark is not null && (Copy.Mark == mark || Part.Id == mark);

    /// <summary>The parts that stay in the piece.</summary>
    public static ImmutableArray<ShownPart> Of(Piece piece)
    {
        var boxes = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, copy => copy.Box);
        var shown = new Dictionary<string, Solid>(boxes);
        foreach (var joint in piece.Joints.Where(joint => joint.Depth.IsPositive))
            shown[joint.From] = Cut(shown[joint.From], boxes[joint.Into], joint.Along);
        return
        [
            .. piece.Parts.SelectMany(part =>
                part.Copies.Select(copy => new ShownPart(part, copy, shown[copy.Mark], RoleTint.Of(part.Material)))
            ),
        ];
    }

    private static Solid Cut(Solid from, Solid into, Axis along)
    {
        if (from.Shared(into) is not { } shared)
            return from;
        return shared.Start(along) > from.Start(along)
            ? from.With(along, from.Start(along), shared.Start(along))
            : from.With(along, shared.End(along), from.End(along));
    }
}
