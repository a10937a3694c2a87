using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Designs.Counting;

/// <summary>Panels of solid wood in a piece: strips that are glued edge to edge are one panel, every other board part is one by
/// itself.</summary>
internal static class GluedPanels
{
    public static IEnumerable<SolidPanel> Of(Piece piece, IReadOnlyList<PiecePart> members)
    {
        var groups = Groups(piece.Joints, Strips(members));
        var glued = groups
            .Where(group => group.Count > 1)
            .Select(Panel)
            .GroupBy(panel => (panel.Name, panel.Width, panel.Length));
        var single = groups
            .Where(group => group.Count == 1)
            .Select(group => group[0].Part)
            .Distinct()
            .Select(part => (Part: part, Count: groups.Count(group => group.Count == 1 && group[0].Part == part)));
        return glued
            .Select(alike => alike.First() with { Quantity = alike.Count() })
            .Concat(single.Select(one => Single(one.Part, one.Count)));
    }

    /// <summary>Marks of the strips of each panel that is glued up, in their order across it.</summary>
    public static IEnumerable<ImmutableArray<string>> Glued(Piece piece) =>
        Groups(piece.Joints, Strips(piece.Parts.Where(part => part.Purpose == PartPurpose.Member)))
            .Where(group => group.Count > 1)
            .Select(group =>
                group.OrderBy(strip => strip.Copy.Box.Start(strip.Across)).Select(strip => strip.Copy.Mark).ToImmutableArray()
            );

    private static Dictionary<string, Strip> Strips(IEnumerable<PiecePart> members) =>
        members
            .Where(part => part.Material.Form == MaterialForm.Board)
            .SelectMany(part => part.Copies.Select(copy => new Strip(part, copy)))
            .ToDictionary(strip => strip.Copy.Mark, StringComparer.Ordinal);

    // Strips that a chain of glued edges joins, in the order of the parts.
    private static List<List<Strip>> Groups(IEnumerable<Joint> joints, Dictionary<string, Strip> strips)
    {
        var groups = strips.ToDictionary(pair => pair.Key, pair => new List<Strip> { pair.Value }, StringComparer.Ordinal);
        foreach (var joint in joints.Where(joint => joint.Kind == JointKind.Glued))
            if (
                strips.TryGetValue(joint.From, out var let)
                && strips.TryGetValue(joint.Into, out var taking)
                && let.MeetsAtTheEdge(taking, joint.Along)
                && groups[joint.From] is var one
                && groups[joint.Into] is var other
                && one != other
            )
                foreach (var strip in Joined(other, one))
                    groups[strip.Copy.Mark] = other;
        return [.. groups.Values.Distinct()];
    }

    private static List<Strip> Joined(List<Strip> to, List<Strip> more)
    {
        to.AddRange(more);
        return more;
    }

    private static SolidPanel Panel(List<Strip> group)
    {
        var (part, copy) = (group[0].Part, group[0].Copy);
        var across = group[0].Across;
        var widths = group.OrderBy(strip => strip.Copy.Box.Start(across)).Select(strip => strip.Copy.Box.Extent(across));
        return new(
            part.Assembly,
            1,
            group.Aggregate(Length.Zero, (sum, strip) => sum + strip.Copy.Box.Extent(across)),
            copy.Box.Extent(copy.Along),
            copy.Box.Extent(copy.Flat),
            PieceParts.Material(part.Material),
            [.. widths]
        )
        {
            PartIds = [.. group.Select(strip => strip.Part.Id).Distinct()],
        };
    }

    private static SolidPanel Single(PiecePart part, int count) =>
        new(
            part.Name,
            count,
            part.Width.Value,
            part.Length.Value,
            part.Thickness.Value,
            PieceParts.Material(part.Material),
            [part.Width.Value]
        )
        {
            PartIds = [part.Id],
        };

    private sealed record Strip(PiecePart Part, PartCopy Copy)
    {
        public Axis Across => Enum.GetValues<Axis>().First(axis => axis != Copy.Along && axis != Copy.Flat);

        public bool MeetsAtTheEdge(Strip other, Axis along) =>
            along == Across
            && (Copy.Along, Copy.Flat) == (other.Copy.Along, other.Copy.Flat)
            && Part.Material.Role == other.Part.Material.Role;
    }
}
