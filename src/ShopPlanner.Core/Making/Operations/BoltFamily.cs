using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Holes for bolts, in both parts of each joint.</summary>
internal sealed class BoltFamily : IOperationFamily
{
    private const int SettingMinutes = 15;
    private const double JointMinutes = 8;

    // Frames buy bolts of 3/8 in, two a joint; common practice: at least three diameters of wood beside each.
    private static readonly Length Bolt = Length.FromInches(0.375m);
    private static readonly Length FromEdge = Length.FromInches(1.25m);

    public IEnumerable<Operation> Of(PieceWork work) =>
        work.Of(JointKind.Bolted)
            .GroupBy(one => one.From.Part.Assembly, StringComparer.Ordinal)
            .Select(same => new Operation(Stage.Bore, Step(same.Key, [.. same])));

    private static WorkStep Step(string assembly, List<WorkJoint> joints)
    {
        var pieces = joints.Pieces();
        var figures = new FigureList();
        foreach (var one in joints)
        {
            figures.Add("Bit", one.From.Name, Bolt);
            figures.Add(
                "From the edges of where the parts meet",
                PartWords.Lower(one.From.Name),
                Length.Min(FromEdge, Length.FromTicks(one.Fit.Long.Ticks / 4))
            );
        }

        return new(
            "bolt-holes:" + PartWords.Slug(assembly),
            WorkPhase.Parts,
            WorkAction.ScrewHoles,
            $"Bore the {PartWords.Names(pieces)} for bolts",
            [
                "Make one template for both parts of a joint, and mark which face lies against it.",
                "Bore nut and washer recesses as the bolts' maker says. Keep other screws clear of the bolts.",
                "Number the joints: each bolt fits its own holes best.",
            ],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, JointMinutes, joints.Count)
        )
        {
            Tool = "Drill press, or drill with a guide",
            Settings = figures.Figures,
            Joints = joints.Indexes(),
            Cautions = WorkEffort.Cautions(pieces, Cautions.Drilling),
            Source = OperationSources.HolesFirst,
        };
    }
}
