using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Mortises, all that take tenons of one material and unit at one setting.</summary>
internal sealed class MortiseFamily : IOperationFamily
{
    private const int SettingMinutes = 20;
    private const double MortiseMinutes = 12;

    public IEnumerable<Operation> Of(PieceWork work) =>
        TenonGroups.Of(work).Select(same => new Operation(Stage.Mortise, Step(same.Key, same.Tenons, work)));

    private static WorkStep Step(string key, ImmutableArray<TenonSizes> tenons, PieceWork work)
    {
        var into = tenons.Select(one => one.Joint.Into).ToList();
        return new(
            "mortise:" + key,
            WorkPhase.Parts,
            WorkAction.Mortise,
            $"Cut the mortises in the {PartWords.Names(into)}",
            [.. Says(tenons), WorkEffort.TryFirst(work, into)],
            into.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, MortiseMinutes, tenons.Length)
        )
        {
            Tool = "Mortiser, plunge router with an edge guide, or drill and chisel",
            Settings = Settings(tenons, work),
            Face = WordList.Of(tenons.Select(one => Face(one, work))),
            Joints = tenons.Select(one => one.Joint).Indexes(),
            Cautions = WorkEffort.Cautions(into, ShopCautions.Chisels, ShopCautions.Router),
            Source = OperationSources.MortiseOrTenon,
        };
    }

    private static IEnumerable<string> Says(ImmutableArray<TenonSizes> tenons)
    {
        yield return "Lay the parts side by side and mark where every mortise begins and ends across all of them at once.";
        yield return "Keep the outer face of each part on the fence, so that all rails lie equally deep.";
        if (tenons.Any(one => one.IsHaunched))
            yield return "Keep the mortise away from the part's end as the settings say: only a short haunch reaches the end, "
                + "as deep as the tenon is thick or as the panel's groove is.";
    }

    private static ImmutableArray<WorkFigure> Settings(ImmutableArray<TenonSizes> tenons, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in tenons)
        {
            var of = PartWords.Lower(one.Joint.From.Name);
            figures.Add("Mortise width", of, one.Thickness.Value);
            figures.Add("Mortise length", of, one.Width.Value);
            figures.Add("Mortise depth", of, one.Depth);
            figures.Add("Fence to the mortise", of, one.Fence);
            var (distance, atEnd) = one.FromEnd;
            figures.Add($"From the {work.Side(one.Joint.Into, one.Wide, atEnd)}", of, distance);
        }

        return figures.Figures;
    }

    private static string Face(TenonSizes one, PieceWork work)
    {
        var (joint, along) = (one.Joint, one.Joint.Along);
        var atEnd = joint.From.Box.End(along) > joint.Into.Box.End(along);
        return work.Side(joint.Into, along, atEnd);
    }
}

/// <summary>Tenons, fitted to the mortises that are cut already.</summary>
internal sealed class TenonFamily : IOperationFamily
{
    private const int SettingMinutes = 20;
    private const double TenonMinutes = 6;

    public IEnumerable<Operation> Of(PieceWork work) =>
        TenonGroups.Of(work).Select(same => new Operation(Stage.Tenon, Step(same.Key, same.Tenons, work)));

    private static WorkStep Step(string key, ImmutableArray<TenonSizes> tenons, PieceWork work)
    {
        var from = tenons.Select(one => one.Joint.From).ToList();
        return new(
            "tenon:" + key,
            WorkPhase.Parts,
            WorkAction.Tenon,
            $"Cut the tenons on the {PartWords.Names(from)}",
            [
                "Set the shoulders with a stop block clamped well before the blade, and cut them on all parts first.",
                "Take the same off both faces until the tenon pushes into its mortise by hand.",
                "Number each tenon and its mortise.",
                WorkEffort.TryFirst(work, from),
            ],
            from.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, TenonMinutes, tenons.Length)
        )
        {
            Tool = "Table saw with a dado set and a miter gauge, or a tenon saw",
            Settings = Settings(tenons, work),
            Face = "both faces and edges at the ends",
            Joints = tenons.Select(one => one.Joint).Indexes(),
            Cautions = WorkEffort.Cautions(from, Cautions.GrooveWithoutGuard, Cautions.TrappedCutoff),
            Source = OperationSources.MortiseOrTenon,
        };
    }

    private static ImmutableArray<WorkFigure> Settings(ImmutableArray<TenonSizes> tenons, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in tenons)
        {
            var (of, from) = (PartWords.Lower(one.Joint.From.Name), one.Joint.From);
            figures.Add("Tenon length", of, one.Joint.Depth);
            figures.Add("Tenon thickness", of, one.Thickness.Value);
            figures.Add("Tenon width", of, one.Width.Value);
            figures.Add("Taken off each face", of, one.Shoulder);
            foreach (var (atEnd, off) in new[] { (false, one.Low), (true, one.High) })
                if (off.IsPositive)
                    figures.Add($"Taken off the {work.Side(from, one.Wide, atEnd)}", of, off);
        }

        return figures.Figures;
    }
}

/// <summary>Tenons that are cut at one setting.</summary>
internal static class TenonGroups
{
    public static IEnumerable<(string Key, ImmutableArray<TenonSizes> Tenons)> Of(PieceWork work) =>
        work.Of(JointKind.MortiseAndTenon)
            .Where(one => one.Depth.IsPositive)
            .Select(one => TenonSizes.Of(one, work))
            .GroupBy(one => (one.Joint.From.Part.Assembly, one.Joint.From.Part.Material.Role))
            .Select(same => ($"{PartWords.Slug(same.Key.Assembly)}:{PartWords.Slug(same.Key.Role)}", same.ToImmutableArray()));
}
