using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Pocket holes: all at one go, the jig set to the thickness of each stock.</summary>
internal sealed class PocketFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double HoleMinutes = 1;

    public IEnumerable<Operation> Of(PieceWork work)
    {
        var pockets = work.Of(JointKind.PocketScrew).Select(Pocket.Of).OfType<Pocket>().ToList();
        return pockets.Count == 0 ? [] : [new Operation(Stage.Bore, Step(pockets, work))];
    }

    private static WorkStep Step(List<Pocket> pockets, PieceWork work)
    {
        var from = pockets.ConvertAll(one => one.Joint.From);
        return new(
            "pocket-holes",
            WorkPhase.Parts,
            WorkAction.PocketHoles,
            $"Bore the pocket holes in the {PartWords.Names(from)}",
            [
                "Set the jig and the collar on the drill to the stock's thickness, and bore one hole in an offcut first.",
                .. pockets.GroupBy(one => one.Joint.From.Part.Id, StringComparer.Ordinal).Select(same => Count([.. same], work)),
                "Bore on the side that is not seen, and keep to it on every part.",
            ],
            from.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, HoleMinutes, pockets.Sum(one => one.Places.Length))
        )
        {
            Tool = "Pocket-hole jig",
            Settings = Settings(pockets),
            Face = WordList.Of(pockets.Select(one => Face(one.Joint, work))),
            Joints = pockets.Select(one => one.Joint).Indexes(),
            Cautions = WorkEffort.Cautions(from, Cautions.Drilling),
            Source = OperationSources.PocketsFirst,
        };
    }

    private static string Count(List<Pocket> same, PieceWork work)
    {
        var part = same[0].Joint.From.Part;
        var faces = WordList.Of(same.Select(one => Face(one.Joint, work)));
        return $"{part.Name} ({part.Id}), {faces}: {Spots.Count(same.Sum(one => one.Places.Length), same.Count)}.";
    }

    private static ImmutableArray<WorkFigure> Settings(List<Pocket> pockets)
    {
        var figures = new FigureList();
        foreach (var one in pockets)
        {
            var of = PartWords.Lower(one.Joint.From.Name);
            figures.Add("Jig and collar for stock of", of, one.Joint.From.Thick);
            figures.Add("Screw", of, one.Screw);
        }

        foreach (var one in pockets)
            Spots.Add(figures, one.Places, one.Joint);
        return figures.Figures;
    }

    // Inside the piece, or below; of a hanging cleat toward the wall, where a driver still reaches.
    private static string Face(WorkJoint joint, PieceWork work)
    {
        var (from, flat) = (joint.From, joint.From.Copy.Flat);
        var isInside = flat != Axis.Z && (SideWords.IsInsideAtEnd(from, flat, work.UnitBox(from)) ?? true);
        var hangs = work.Joints.Any(one => one.Kind == JointKind.Beveled && one.From.Mark == from.Mark);
        return work.Side(from, flat, hangs ? !isInside : isInside);
    }

    /// <summary>A joint with the screws from its pockets.</summary>
    private sealed record Pocket(WorkJoint Joint, Length Screw, ImmutableArray<Length> Places)
    {
        public static Pocket? Of(WorkJoint joint) =>
            joint.Fit.Screw().Choice is { } choice ? new(joint, choice.Length.Value, Fastenings.Places(joint.Fit, choice)) : null;
    }
}
