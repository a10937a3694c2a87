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
                        + $"with room for {LengthFormat.WithUnit(RuleMarks.Up(change.Value, piece.Unit), piece.Unit)} in total.",
                    strips[0].Id,
                    change
                ),
            ];
    }

    private static Working<double> Moisture(string name, double percent) =>
        Working.Looked(name, percent, QuantityKind.Percent, 0, Seasons);
}
