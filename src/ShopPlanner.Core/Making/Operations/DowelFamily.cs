using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Holes for dowels, in both parts of each joint.</summary>
internal sealed class DowelFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double HoleMinutes = 1.5;

    public IEnumerable<Operation> Of(PieceWork work)
    {
        var doweled = work.Of(JointKind.Dowel).Select(Doweled.Of).OfType<Doweled>().ToList();
        return doweled.Count == 0 ? [] : [new Operation(Stage.Bore, Step(doweled, work))];
    }

    private static WorkStep Step(List<Doweled> doweled, PieceWork work)
    {
        var pieces = doweled.Select(one => one.Joint).Pieces();
        return new(
            "dowel-holes",
            WorkPhase.Parts,
            WorkAction.DowelHoles,
            $"Bore the dowel holes in the {PartWords.Names(pieces)}",
            [
                "Mark both parts of each joint from the same face and edge, and number the joint.",
                "Set the stop on the bit for each depth. Hold the bit square in a doweling jig.",
                WorkEffort.TryFirst(work, pieces),
            ],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, HoleMinutes, doweled.Sum(one => one.Dowels.Places.Value.Length * 2))
        )
        {
            Tool = "Drill with a brad-point bit, a stop and a doweling jig",
            Settings = Settings(doweled),
            Face = "ends, and the faces that take them",
            Joints = doweled.Select(one => one.Joint).Indexes(),
            Cautions = WorkEffort.Cautions(pieces, Cautions.Drilling),
            Source = OperationSources.DowelsFirst,
        };
    }

    private static ImmutableArray<WorkFigure> Settings(List<Doweled> doweled)
    {
        var figures = new FigureList();
        foreach (var one in doweled)
        {
            var of = PartWords.Lower(one.Joint.From.Name);
            figures.Add("Bit", of, one.Dowels.Diameter.Value);
            figures.Add("Depth in the end", of, one.Dowels.HoleDepth.Value);
            figures.Add("Depth in the other part", of, one.Joint.Fit.DowelHole(one.Dowels));
        }

        foreach (var one in doweled)
            Spots.Add(figures, one.Dowels.Places.Value, one.Joint);
        return figures.Figures;
    }

    private sealed record Doweled(WorkJoint Joint, Dowels Dowels)
    {
        public static Doweled? Of(WorkJoint joint) => joint.Fit.Dowels() is { } dowels ? new(joint, dowels) : null;
    }
}
