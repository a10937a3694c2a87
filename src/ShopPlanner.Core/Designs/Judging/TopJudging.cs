using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>How a top of solid wood moves across the seasons.</summary>
internal static class TopJudging
{
    private static readonly SourceNote Seasons = new(
        "Common practice: indoors, wood goes from about 6% in winter to 11% in summer",
        Certainty.CommonPractice
    );

    public static IEnumerable<PieceWarning> Of(Piece piece)
    {
        var strips = piece
            .Parts.Where(part =>
                part.Assembly == "Top" && part.Material.Form == MaterialForm.Board && part.Copies.Any(copy => copy.Flat == Axis.Z)
            )
            .ToList();
        if (strips.Count == 0 || strips[0].Material.Species is not { } species || ShrinkageTable.Find(species) is not { } row)
            return [];
        var boxes = strips.SelectMany(part => part.Copies).Select(copy => copy.Box).Aggregate((a, b) => a.Around(b));
        var change = Movement.Change(
            row,
            Working.Given("Width of the top", boxes.Dy),
            Moisture("Moisture in winter", 6),
            Moisture("Moisture in summer", 11),
            Sawn.Flat
        );
        return Movement.IsFixedSafe(change.Value)
            ? []
            :
            [
                new(
                    Severity.Watch,
                    "The top grows and shrinks across its width with the seasons. Never glue or screw it tight all "
                        + "the way across. Use slotted screws or buttons "
                        + $"with room for {Text(RuleMarks.Up(change.Value, piece.Unit), piece)} in total.",
                    strips[0].Id,
                    change
                ),
                .. Ends(piece, strips[0], change),
            ];
    }

    // Held at the middle, each edge of the top moves by half of it against an end that hardly changes its length.
    private static IEnumerable<PieceWarning> Ends(Piece piece, PiecePart strip, Working<Length> change)
    {
        if (!piece.Joints.Any(joint => joint.Kind == JointKind.Breadboard))
            yield break;
        var half = Working.Of(
            "Each edge moves by",
            Length.FromTicks((change.Value.Ticks + 1) / 2),
            "{change} ÷ 2",
            Working.Geometry,
            ("change", change)
        );
        yield return new(
            Severity.Watch,
            "The top outgrows its breadboard ends in summer and falls short of them in winter: up to "
                + $"{Text(RuleMarks.Up(half.Value, piece.Unit), piece)} at each edge. Make the slots for the outer pins that "
                + "much longer than the pins are thick, and don't trim the ends flush for good.",
            strip.Id,
            half
        );
    }

    private static string Text(Length length, Piece piece) => LengthFormat.WithUnit(length, piece.Unit);

    private static Working<double> Moisture(string name, double percent) =>
        Working.Looked(name, percent, QuantityKind.Percent, 0, Seasons);
}
