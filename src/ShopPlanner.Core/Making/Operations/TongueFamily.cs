using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

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
        var isCentred = tongues.TrueForAll(one => one.Trench.IsCentred);
        return new(
            $"tongue:{PartWords.Slug(key.Assembly)}:{PartWords.Slug(key.Role)}",
            WorkPhase.Parts,
            WorkAction.Tenon,
            $"Cut the tongues on the {PartWords.Names(from)}",
            [
                "Clamp a stop block to the fence, well before the blade, to set the tongue's length. Cut the shoulders with a "
                    + "miter gauge.",
                isCentred
                    ? "Take the same off each face until the tongue fits the groove that is cut already: it slides in by hand."
                    : "Take off a little at a time, up to the setting, until the tongue slides into its cut by hand.",
                WorkEffort.TryFirst(work, from),
            ],
            from.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, TongueMinutes, tongues.Count)
        )
        {
            Tool = "Table saw with a miter gauge and a dado set, or router table with a straight bit",
            Settings = Settings(tongues, work),
            Face = isCentred
                ? "both faces at the ends"
                : WordList.Of(tongues.SelectMany(one => one.Cuts(work).Select(cut => cut.Side))) + " at the ends",
            Joints = tongues.Select(one => one.Joint).Indexes(),
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
                foreach (var (side, off) in one.Cuts(work))
                    figures.Add($"Taken off the {side}", of, off);
        }

        return figures.Figures;
    }

    /// <summary>A tongue and the trench it goes into.</summary>
    private sealed record Tongue(WorkJoint Joint, Trench Trench)
    {
        /// <summary>The faces that wood is taken off, each with how much.</summary>
        public IEnumerable<(string Side, Length Off)> Cuts(PieceWork work)
        {
            var (before, after) = (
                Trench.Start - Joint.From.Box.Start(Trench.Across),
                Joint.From.Box.End(Trench.Across) - Trench.End
            );
            if (before.IsPositive)
                yield return (work.Side(Joint.From, Trench.Across, false), before);
            if (after.IsPositive)
                yield return (work.Side(Joint.From, Trench.Across, true), after);
        }
    }
}
