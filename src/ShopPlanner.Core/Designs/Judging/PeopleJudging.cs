using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>Whether slats of a bed, its beam and the boards of a seat carry a person: one person alone in the middle of the
/// longest stretch that nothing holds.</summary>
internal static class PeopleJudging
{
    private static readonly SourceNote One = new(
        "Common practice: one person of 250 lb on one slat, someone kneels or stands; EN 1725:2023 assumes persons to 110 kg "
            + "(its scope, as quoted)",
        Certainty.CommonPractice
    );

    // Carries people where a seat lies on it, and things where a deck does.
    private const string UnderSeat = "Long beam";

    private static readonly string[] Names = ["Bed slat", "Middle beam", "Seat board"];

    public static IEnumerable<PieceWarning> Of(Piece piece)
    {
        var copies = piece.Parts.SelectMany(part => part.Copies).ToImmutableArray();
        var isSeat = piece.Parts.Any(part => part.Assembly == "Seat");
        return piece
            .Parts.Where(part => (Names.Contains(part.Name) || (isSeat && part.Name == UnderSeat)) && !part.Copies.IsEmpty)
            .Select(part => Judge(part, copies, piece.Joints))
            .OfType<PieceWarning>();
    }

    private static PieceWarning? Judge(PiecePart part, ImmutableArray<PartCopy> copies, ImmutableArray<Joint> joints)
    {
        var name = part.Name.ToLowerInvariant();
        if (BendingTable.All.FirstOrDefault(one => one.Id == part.Material.Species) is not { } wood)
            return new(
                Severity.Watch,
                $"Whether the {name} carries a person isn't checked: the strength of {part.Material.Name} isn't known.",
                part.Id,
                null
            );
        var span = part.Copies.Max(copy => Support.Span(copy, copies, Bolted(copy, joints)));
        if (!span.IsPositive)
            return null;
        var stress = Stress(part, span);
        return stress.Value > wood.Rupture / PeopleBeam.Clear
                ? new(
                    Severity.Fails,
                    $"A person can break the {name}. Use thicker wood, a shorter span or a rail under the middle.",
                    part.Id,
                    stress
                )
            : stress.Value > wood.Rupture / PeopleBeam.Knotty
                ? new(
                    Severity.Watch,
                    $"For the {name}, pick straight-grained boards without knots in the middle third: only those are strong "
                        + "enough.",
                    part.Id,
                    stress
                )
            : null;
    }

    // Legs that are bolted to a beam's face stand on the floor.
    private static List<string> Bolted(PartCopy beam, ImmutableArray<Joint> joints) =>
        [.. joints.Where(one => one.Kind == JointKind.Bolted && one.Into == beam.Mark).Select(one => one.From)];

    private static Working<double> Stress(PiecePart part, Length span)
    {
        var copy = part.Copies[0];
        // A beam on edge bends over its width, a slat over its thickness.
        var (across, high) = copy.Flat == Axis.Z ? (part.Width, part.Thickness) : (part.Thickness, part.Width);
        return PeopleBeam.Bends(
            Working.Looked("One person", QuantityKind.Mass.ToMetric(250, LengthUnit.Inch), QuantityKind.Mass, 0, One),
            Working.Given("People", 1, QuantityKind.Bare, 0),
            Working.Given("Span", span),
            across,
            high
        );
    }
}
