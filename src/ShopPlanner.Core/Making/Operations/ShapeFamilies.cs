using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Corners that are cut out of parts: the toe space of a case.</summary>
internal sealed class NotchFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double NotchMinutes = 8;

    public IEnumerable<Operation> Of(PieceWork work) =>
        work
            .Workpieces.Where(one => one.Copy.ToeNotch is not null)
            .GroupBy(one => one.Name, StringComparer.Ordinal)
            .Select(same => new Operation(Stage.Notch, Step([.. same])));

    private static WorkStep Step(List<Workpiece> pieces)
    {
        var figures = new FigureList();
        foreach (var one in pieces)
        {
            figures.Add("From the front edge", one.Mark, one.Copy.ToeNotch!.Deep);
            figures.Add("From the lower end", one.Mark, one.Copy.ToeNotch.High);
        }

        return new(
            "notch:" + PartWords.Slug(pieces[0].Name),
            WorkPhase.Parts,
            WorkAction.Notch,
            $"Notch the {PartWords.Names(pieces)} for the toe space",
            [
                "Mark the lower front corner on each part, left and right ones as a pair.",
                "Saw both lines up to the corner and clean it with a chisel. The toe board is fastened behind the cut.",
            ],
            [.. pieces.Select(one => one.Mark)],
            [],
            WorkEffort.Minutes(SettingMinutes, NotchMinutes, pieces.Count)
        )
        {
            Tool = "Jigsaw along a straightedge, finished with a handsaw",
            Settings = figures.Figures,
            Face = "lower front corner",
            Cautions = [ShopCautions.CurvedCuts],
            Source = OperationSources.NotchThenGlue,
        };
    }
}

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
        var pieces = joints.SelectMany(one => new[] { one.From, one.Into }).DistinctBy(one => one.Mark).ToList();
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
            [.. pieces.Select(one => one.Mark)],
            [],
            AllMinutes
        )
        {
            Tool = "Table saw with the blade at 45°",
            Settings = figures.Figures,
            Face = "long edge",
            Joints = [.. joints.Select(one => one.Index).Order()],
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
            [.. pieces.Select(one => one.Mark)],
            [],
            WorkEffort.Minutes(SettingMinutes, CornerMinutes, joints.Count)
        )
        {
            Tool = "Router with a dovetail jig, or dovetail saw and chisels",
            Settings = Settings(joints),
            Face = "ends",
            Joints = [.. joints.Select(one => one.Index).Order()],
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
