using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Clearance holes of screws, in the parts that screws go through; the pilots are drilled through them once the parts
/// are held together.</summary>
internal sealed class ScrewFamily : IOperationFamily
{
    private const int SettingMinutes = 5;
    private const double HoleMinutes = 1;

    public IEnumerable<Operation> Of(PieceWork work) =>
        work.Of(JointKind.Screwed)
            .Select(Screwed.Of)
            .OfType<Screwed>()
            .GroupBy(one => one.Near.Part.Assembly, StringComparer.Ordinal)
            .Select(same => new Operation(Stage.Bore, Step(same.Key, [.. same])));

    private static WorkStep Step(string assembly, List<Screwed> screwed)
    {
        var near = screwed.ConvertAll(one => one.Near);
        var holes = screwed.Sum(one => one.Places.Length);
        return new(
            "screw-holes:" + PartWords.Slug(assembly),
            WorkPhase.Parts,
            WorkAction.ScrewHoles,
            $"Drill the screw holes in the {PartWords.Names(near)}",
            [
                "Drill the clearance holes and countersink them on the side of the heads.",
                "Drill the pilots through them later, when the parts are clamped in place.",
                Spots.Count(holes, screwed.Count) + ".",
            ],
            near.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, HoleMinutes, holes)
        )
        {
            Tool = "Drill with a countersink",
            Settings = Settings(screwed),
            Joints = screwed.Select(one => one.Joint).Indexes(),
            Cautions = WorkEffort.Cautions(near, Cautions.Drilling),
            Source = screwed.Exists(one => one.HoldsTop) ? OperationSources.HolesThenGlue : OperationSources.HolesFirst,
        };
    }

    private static ImmutableArray<WorkFigure> Settings(List<Screwed> screwed)
    {
        var figures = new FigureList();
        foreach (var one in screwed)
        {
            var of = Spots.Name(one.Joint);
            figures.Add("Clearance bit", of, one.Gauge.Clearance);
            figures.Add("Pilot bit", of, one.Gauge.Pilot(one.Wood));
            figures.Add(
                $"Line of holes from the {SideWords.Noun(one.Near, Spots.Narrow(one.Joint))}",
                of,
                Spots.Line(one.Joint, one.Near)
            );
        }

        foreach (var one in screwed)
            Spots.Add(figures, one.Places, one.Joint);
        return figures.Figures;
    }

    /// <summary>A joint with its screws.</summary>
    private sealed record Screwed(WorkJoint Joint, ScrewGauge Gauge, ImmutableArray<Length> Places)
    {
        /// <summary>What the screws go through.</summary>
        public Workpiece Near => Spots.Near(Joint);

        /// <summary>What their points hold in.</summary>
        public PilotWood Wood =>
            StrengthTable.Find(Far.Part.Material.Species ?? "") is { } row ? WoodScrews.PilotFor(row) : PilotWood.Softwood;

        /// <summary>Whether they hold a top from below.</summary>
        public bool HoldsTop => Far.Part.Assembly == "Top";

        private Workpiece Far => Near.Mark == Joint.From.Mark ? Joint.Into : Joint.From;

        public static Screwed? Of(WorkJoint joint) =>
            joint.Fit.Screw().Choice is { } choice ? new(joint, choice.Gauge, Fastenings.Places(joint.Fit, choice)) : null;
    }
}
