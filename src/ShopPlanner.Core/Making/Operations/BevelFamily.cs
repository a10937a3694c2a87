using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Cleats that hang by beveled edges, both ripped from one board.</summary>
internal sealed class BevelFamily : IOperationFamily
{
    private const int AllMinutes = 20;

    public IEnumerable<Operation> Of(PieceWork work) =>
        work.Of(JointKind.Beveled)
            .GroupBy(one => one.From.Part.Assembly, StringComparer.Ordinal)
            .Select(same => new Operation(Stage.Bevel, Step(same.Key, [.. same])));

    private static WorkStep Step(string assembly, List<WorkJoint> joints)
    {
        var pieces = joints.Pieces();
        var figures = new FigureList();
        foreach (var one in pieces)
            figures.Add("Width at the long side of the bevel", one.Mark, one.Box.Extent(one.Across));
        return new(
            "bevel:" + PartWords.Slug(assembly),
            WorkPhase.Parts,
            WorkAction.Shape,
            $"Rip the bevel between the {PartWords.Names(pieces)}",
            [
                "Rip both from one board with the blade at 45°.",
                $"The {PartWords.Names(joints.Select(one => one.Into))}: bevel above, long side toward the room. "
                    + $"The {PartWords.Names(joints.Select(one => one.From))}: bevel below, long side toward the wall.",
            ],
            pieces.Marks(),
            [],
            AllMinutes
        )
        {
            Tool = "Table saw with the blade at 45°",
            Settings = figures.Figures,
            Face = "long edge",
            Joints = joints.Indexes(),
            Cautions = WorkEffort.Cautions(pieces, ShopCautions.AngledCuts, Cautions.Guards),
            Source = OperationSources.OneBoard,
        };
    }
}

/// <summary>Dovetails: both halves, one marked from the other.</summary>
internal sealed class DovetailFamily : IOperationFamily
{
    private const int SettingMinutes = 30;
    private const double CornerMinutes = 20;

    public IEnumerable<Operation> Of(PieceWork work) =>
        work.Of(JointKind.Dovetail)
            .GroupBy(one => one.From.Part.Assembly, StringComparer.Ordinal)
            .Select(same => new Operation(Stage.Trench, Step(same.Key, [.. same], work)));

    private static WorkStep Step(string assembly, List<WorkJoint> joints, PieceWork work)
    {
        var pieces = joints.SelectMany(one => new[] { one.Into, one.From }).DistinctBy(one => one.Mark).ToList();
        return new(
            "dovetail:" + PartWords.Slug(assembly),
            WorkPhase.Parts,
            WorkAction.Lap,
            $"Cut the dovetails of the {PartWords.Names(pieces)}",
            [
                "Cut the tails first, and mark the pins from them, each corner by itself. Number the corners.",
                "With a jig, cut both halves as its maker says.",
                WorkEffort.TryFirst(work, pieces),
            ],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, CornerMinutes, joints.Count)
        )
        {
            Tool = "Router with a dovetail jig, or dovetail saw and chisels",
            Settings = Settings(joints),
            Face = "ends",
            Joints = joints.Indexes(),
            Cautions = WorkEffort.Cautions(pieces, ShopCautions.Chisels, ShopCautions.Router),
            Source = OperationSources.Dovetails,
        };
    }

    private static ImmutableArray<WorkFigure> Settings(List<WorkJoint> joints)
    {
        var figures = new FigureList();
        foreach (var one in joints)
        {
            figures.Add("Length of the pins", PartWords.Lower(one.Into.Name), one.Depth);
            figures.Add("Length of the tails", PartWords.Lower(one.From.Name), one.From.Thick);
        }

        return figures.Figures;
    }
}
