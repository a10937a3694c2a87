using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Counting;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Wide panels of solid wood: strips are glued edge to edge, the panel is made flat, then cut to size.</summary>
internal sealed class PanelFamily : IOperationFamily
{
    private const int GlueMinutes = 15;
    private const double StripMinutes = 8;
    private const int FlattenMinutes = 30;
    private const int SizeMinutes = 15;

    // The form for glue-ups proposes it.
    private static readonly Length Caul = Length.FromInches(1);

    public IEnumerable<Operation> Of(PieceWork work) =>
        GluedPanels
            .Glued(work.Piece)
            .Select(marks => new Panel([.. marks.Select(mark => work[mark])]))
            .GroupBy(one => one.Strips[0].Part.Assembly, StringComparer.Ordinal)
            .SelectMany(same => Steps(same.Key, [.. same], work));

    private static IEnumerable<Operation> Steps(string assembly, List<Panel> panels, PieceWork work)
    {
        var key = PartWords.Slug(assembly);
        yield return new(Stage.GlueUp, GlueUp(key, assembly, panels, work));
        yield return new(Stage.Flatten, Flatten(key, assembly, panels));
        yield return new(Stage.Size, Size(key, assembly, panels));
    }

    private static WorkStep GlueUp(string key, string assembly, List<Panel> panels, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var strip in panels.SelectMany(one => one.Strips))
        {
            figures.Add("Strip as ripped, before jointing", strip.Part.Id, strip.Part.RoughWidth);
            figures.Add("Strip length", strip.Part.Id, strip.Part.RoughLength);
        }

        var marks = panels.SelectMany(one => one.Strips).Marks();
        return new(
            "glue-up:" + key,
            WorkPhase.Parts,
            WorkAction.GlueUp,
            $"Glue up the {PartWords.Lower(assembly)}",
            [
                "Lay the strips out so that grain and color please you, and number them. Joint the edges that meet.",
                "Try the panel dry: no light shows through the joints. Have clamps and cauls ready before you spread glue.",
                "Glue and clamp, clamps alternating above and below. A wide panel goes together in two halves.",
            ],
            marks,
            [],
            WorkEffort.Minutes(GlueMinutes * panels.Count, StripMinutes, marks.Length)
        )
        {
            Tool = "Jointer or hand plane, bar clamps and cauls",
            Settings = figures.Figures,
            Face = "edges that meet",
            Joints = work.Joints.Where(one => panels.Exists(panel => panel.Joins(one))).Indexes(),
            Wait = WorkEffort.GlueHard(panels.Sum(one => one.Clamps(Caul))),
            Cautions = [Cautions.Jointer],
            Source = OperationSources.PanelThenSize,
        };
    }

    private static WorkStep Flatten(string key, string assembly, List<Panel> panels) =>
        new(
            "flatten:" + key,
            WorkPhase.Parts,
            WorkAction.Sand,
            $"Flatten the {PartWords.Lower(assembly)}",
            [
                "Scrape off the glue first. Plane or sand across the joints, then with the grain, both faces alike.",
                "Where the joints will show, wait about 7 days before you plane: glue swells the wood, and a joint that is "
                    + "planed too soon sinks later.",
            ],
            panels.SelectMany(one => one.Strips).Marks(),
            [],
            FlattenMinutes * panels.Count
        )
        {
            Tool = "Hand plane or belt sander",
            Face = "both faces",
            Cautions = [Cautions.Dust],
            Source = OperationSources.SunkenJoint,
        };

    private static WorkStep Size(string key, string assembly, List<Panel> panels)
    {
        var figures = new FigureList();
        foreach (var one in panels)
        {
            figures.Add("Length", one.Strips[0].Part.Id, one.Length);
            figures.Add("Width", one.Strips[0].Part.Id, one.Width);
        }

        return new(
            "size:" + key,
            WorkPhase.Parts,
            WorkAction.TrimToSize,
            $"Cut the {PartWords.Lower(assembly)} to size",
            [
                "Take as much off both long edges, so that the joints lie evenly.",
                "Square one end, then cut the other to length. Back up the edge where the saw comes out.",
            ],
            panels.SelectMany(one => one.Strips).Marks(),
            [],
            SizeMinutes * panels.Count
        )
        {
            Tool = "Circular saw along a straightedge, or table saw with a sled",
            Settings = figures.Figures,
            Cautions = [Cautions.Guards],
            Source = OperationSources.PanelThenSize,
        };
    }

    /// <summary>A panel's strips in their order across it.</summary>
    private sealed record Panel(ImmutableArray<Workpiece> Strips)
    {
        public Length Length => Strips[0].Box.Extent(Strips[0].Copy.Along);

        public Length Width => Strips.Aggregate(Length.Zero, (sum, one) => sum + one.Box.Extent(one.Across));

        public bool Joins(WorkJoint joint) =>
            joint.Kind == JointKind.Glued
            && Strips.Any(one => one.Mark == joint.From.Mark)
            && Strips.Any(one => one.Mark == joint.Into.Mark);

        public int Clamps(Length caul)
        {
            var outer = Length.Min(Strips[0].Part.Width.Value, Strips[^1].Part.Width.Value);
            var spacing = Joinery.GlueUp.Spacing(Working.Given("Strip", outer), Working.Given("Caul", caul));
            return (int)Joinery.GlueUp.Clamps(Working.Given("Length", Strips[0].Part.RoughLength), spacing).Value;
        }
    }
}

/// <summary>Sheets that are glued face to face into a thick one.</summary>
internal sealed class LayerFamily : IOperationFamily
{
    private const int LayerMinutes = 25;

    public IEnumerable<Operation> Of(PieceWork work) =>
        work.Of(JointKind.Glued)
            .Where(AreLayers)
            .GroupBy(one => one.From.Part.Assembly, StringComparer.Ordinal)
            .Select(same => new Operation(Stage.GlueUp, Step(same.Key, [.. same])));

    private static bool AreLayers(WorkJoint joint) =>
        joint.Along == joint.From.Copy.Flat
        && joint.Along == joint.Into.Copy.Flat
        && joint.From.Part.Material.Role == joint.Into.Part.Material.Role
        && Axes.All.Where(axis => axis != joint.Along).All(axis => joint.From.Box.Extent(axis) == joint.Into.Box.Extent(axis));

    private static WorkStep Step(string assembly, List<WorkJoint> joints)
    {
        var pieces = joints.SelectMany(one => new[] { one.Into, one.From }).DistinctBy(one => one.Mark).ToList();
        var figures = new FigureList();
        figures.Add("Thickness when glued", "", pieces.Aggregate(Length.Zero, (sum, one) => sum + one.Thick));
        return new(
            $"glue-up:{PartWords.Slug(assembly)}:layers",
            WorkPhase.Parts,
            WorkAction.GlueUp,
            $"Glue the layers of the {PartWords.Lower(assembly)} face to face",
            [
                "Line up one long edge and one end, and drive short screws from below into waste or where they stay, so that the "
                    + "layers don't slide.",
                "Spread glue over the whole face of one layer. Weigh down the middle, and clamp all around.",
                "When the glue is hard, trim the edges flush.",
            ],
            pieces.Marks(),
            [],
            LayerMinutes * joints.Count
        )
        {
            Tool = "Clamps and cauls, then a flush-trim bit or a plane",
            Settings = figures.Figures,
            Face = "faces that meet",
            Joints = joints.Indexes(),
            Wait = WorkEffort.GlueHard(0),
            Source = OperationSources.PanelThenSize,
        };
    }
}
