using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>The rabbet for glass and its stops, routed in the back of a frame once that is glued: it then runs around the corners
/// without a gap.</summary>
internal sealed class GlassRabbetFamily : IOperationFamily
{
    private const int SettingMinutes = 15;
    private const double FrameMinutes = 5;

    private static readonly SourceNote Practice = new(
        "Common practice: the rabbet for glass is routed in the glued frame",
        Certainty.CommonPractice
    );

    public IEnumerable<Operation> Of(PieceWork work) =>
        work.Of(JointKind.Pinned)
            .GroupBy(one => one.Into.Part.Assembly, StringComparer.Ordinal)
            .Select(same => new Operation(Stage.Trench, Step(same.Key, [.. same])));

    private static WorkStep Step(string assembly, List<WorkJoint> joints)
    {
        var into = joints.Select(one => one.Into).DistinctBy(one => one.Mark).ToList();
        var figures = new FigureList();
        foreach (var one in joints)
        {
            figures.Add("Width of the rabbet", PartWords.Lower(one.Into.Name), one.Depth);
            figures.Add("Thickness of the stops", PartWords.Lower(one.From.Name), one.From.Thick);
        }

        return new(
            "glass-rabbet:" + PartWords.Slug(assembly),
            WorkPhase.Fitting,
            WorkAction.Rabbet,
            $"Rout the rabbet for the glass in the {PartWords.Names(into)}",
            [
                "When the frame is glued, rout the rabbet in its back in several passes, and square its corners with a chisel.",
                "Make it as deep as glass and stops together: measure both.",
            ],
            into.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, FrameMinutes, into.Count)
        )
        {
            Tool = "Router with a rabbeting bit, then a chisel",
            Settings = figures.Figures,
            Face = "back, along the inner edges",
            Joints = joints.Indexes(),
            Cautions = WorkEffort.Cautions(into, ShopCautions.Router, ShopCautions.Chisels),
            Source = Practice,
        };
    }
}
