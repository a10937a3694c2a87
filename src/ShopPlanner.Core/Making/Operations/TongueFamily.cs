using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Tongues on the ends and edges of parts that are thicker than the trench they go into.</summary>
internal sealed class TongueFamily : IOperationFamily
{
    private const int SettingMinutes = 20;
    private const double TongueMinutes = 4;

    public IEnumerable<Operation> Of(PieceWork work) =>
        work
            .Trenches.SelectMany(trench => trench.Joints.Where(trench.AsksForTongue).Select(joint => new Tongue(joint, trench)))
            .GroupBy(one => (one.Joint.From.Part.Assembly, one.Joint.From.Part.Material.Role))
            .Select(same => new Operation(Stage.Tenon, Step(same.Key, [.. same], work)));

    private static WorkStep Step((string Assembly, string Role) key, List<Tongue> tongues, PieceWork work)
    {
        var from = tongues.ConvertAll(one => one.Joint.From);
        return new(
            $"tongue:{PartWords.Slug(key.Assembly)}:{PartWords.Slug(key.Role)}",
            WorkPhase.Parts,
            WorkAction.Tenon,
            $"Cut the tongues on the {PartWords.Names(from)}",
            [
                "Clamp a stop block to the fence, well before the blade, to set the tongue's length. Cut the shoulders with a "
                    + "miter gauge.",
                "Take the same off each face until the tongue fits the groove that is cut already: it slides in by hand.",
                WorkEffort.TryFirst(work, from),
            ],
            [.. from.Select(one => one.Mark).Distinct(StringComparer.Ordinal)],
            [],
            WorkEffort.Minutes(SettingMinutes, TongueMinutes, tongues.Count)
        )
        {
            Tool = "Table saw with a miter gauge and a dado set, or router table with a straight bit",
            Settings = Settings(tongues, work),
            Face = "both faces at the ends",
            Joints = [.. tongues.Select(one => one.Joint.Index).Order()],
            Cautions = WorkEffort.Cautions(from, Cautions.GrooveWithoutGuard, Cautions.TrappedCutoff, ShopCautions.Router),
            Source = OperationSources.GrooveThenGlue,
        };
    }

    private static ImmutableArray<WorkFigure> Settings(List<Tongue> tongues, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in tongues)
        {
            var of = $"{PartWords.Lower(one.Joint.From.Name)} {one.Joint.From.Mark}";
            figures.Add("Tongue length", of, one.Joint.Depth);
            if (one.Trench.IsCentred)
                figures.Add("Taken off each face", of, one.Trench.Centred.Cheek.Value);
            else
                foreach (var (atEnd, off) in new[] { (false, one.Before), (true, one.After) })
                    if (off.IsPositive)
                        figures.Add($"Taken off the {one.Side(atEnd, work)}", of, off);
        }

        return figures.Figures;
    }

    /// <summary>A tongue and the trench it goes into.</summary>
    private sealed record Tongue(WorkJoint Joint, Trench Trench)
    {
        public Length Before => Trench.Start - Joint.From.Box.Start(Trench.Across);

        public string Side(bool atEnd, PieceWork work) =>
            SideWords.Of(Joint.From, Trench.Across, atEnd, work.UnitBox(Joint.From));

        public Length After => Joint.From.Box.End(Trench.Across) - Trench.End;
    }
}
