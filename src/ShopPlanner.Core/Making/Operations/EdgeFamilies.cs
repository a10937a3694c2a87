using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Solid edging, glued to the edges of a sheet.</summary>
internal sealed class EdgingFamily : IOperationFamily
{
    private const int SettingMinutes = 15;
    private const double StripMinutes = 10;

    public IEnumerable<Operation> Of(PieceWork work) =>
        work.Of(JointKind.Glued)
            .Where(IsEdging)
            .GroupBy(one => one.From.Part.Assembly, StringComparer.Ordinal)
            .Select(same => new Operation(Stage.Band, Step(same.Key, [.. same])));

    /// <summary>Whether a strip of a board lies along the edge of a sheet of its own unit.</summary>
    public static bool IsEdging(WorkJoint joint) =>
        joint.From.Part.Assembly == joint.Into.Part.Assembly
        && joint.From.Part.Material.Form == MaterialForm.Board
        && joint.Into.Part.Material.Form == MaterialForm.Sheet
        && joint.Along == joint.From.Copy.Flat
        && joint.Along != joint.Into.Copy.Flat
        && joint.From.Across == joint.Into.Copy.Flat;

    private static WorkStep Step(string assembly, List<WorkJoint> joints)
    {
        var pieces = joints.Pieces();
        var strips = joints.Select(one => one.From).DistinctBy(one => one.Mark).ToList();
        var figures = new FigureList();
        foreach (var one in strips)
        {
            figures.Add("Strip width", one.Part.Id, one.Part.Width.Value);
            figures.Add("Strip thickness", one.Part.Id, one.Thick);
        }

        return new(
            "edging:" + PartWords.Slug(assembly),
            WorkPhase.Parts,
            WorkAction.BandEdges,
            $"Glue the edging to the {PartWords.Lower(assembly)}",
            [
                "Cut the long strips first, then fit the others between or against them.",
                "Glue them a hair proud of both faces, and plane them flush when the glue is hard: never into the veneer.",
            ],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, StripMinutes, strips.Count)
        )
        {
            Tool = "Clamps or tape, then a block plane",
            Settings = figures.Figures,
            Face = "edges",
            Joints = joints.Indexes(),
            Wait = WorkEffort.InClamps(0),
            Source = OperationSources.BandThenDado,
        };
    }
}

/// <summary>Iron-on bands over the edges of sheets that are seen.</summary>
internal sealed class EdgeBandFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double EdgeMinutes = 6;

    // The band that designs ask for, 13/16 in wide, is made for sheets of about 3/4 in (common practice).
    private static readonly Length Least = Length.FromInches(0.625m);

    public IEnumerable<Operation> Of(PieceWork work)
    {
        var declared = work.Workpieces.Where(one => Banded(one).Any()).ToList();
        if (declared.Count > 0)
            return [new Operation(Stage.Band, Step(declared, work))];
        // A design may ask for band in its hardware alone.
        if (!work.Piece.Hardware.Any(one => EdgeSummary.IsBand(one.Name)))
            return [];
        var hidden = work.Of(JointKind.Glued)
            .Where(one => one.Along != one.Into.Copy.Flat && one.From.Part.Material.Form == MaterialForm.Board)
            .Select(one => one.Into.Part.Id)
            .ToHashSet(StringComparer.Ordinal);
        var pieces = work.Workpieces.Where(one => IsSeen(one) && !hidden.Contains(one.Part.Id)).ToList();
        return pieces.Count == 0 ? [] : [new Operation(Stage.Band, Step(pieces, work))];
    }

    private static bool IsSeen(Workpiece one) =>
        one.Part.Material.Form == MaterialForm.Sheet && one.Thick >= Least && Edges(one).Length > 0;

    private static ImmutableArray<string> Edges(Workpiece one) =>
        [.. one.Part.FacesToFinish.Split(", ").Where(word => word.Contains("edge", StringComparison.Ordinal))];

    private static IEnumerable<EdgeTreatment> Banded(Workpiece one) => one.Copy.Edges.Where(edge => edge.Work == EdgeWork.Band);

    // The edges that are declared, or else those that are seen.
    private static IEnumerable<string> Sides(Workpiece one, PieceWork work) =>
        Banded(one).Any() ? Banded(one).Select(edge => work.Side(one, edge.Side)) : Edges(one);

    private static WorkStep Step(List<Workpiece> pieces, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in pieces)
            figures.Add("Edge to cover", PartWords.Lower(one.Name), one.Thick);
        return new(
            "edge-band",
            WorkPhase.Parts,
            WorkAction.BandEdges,
            $"Band the edges of the {PartWords.Names(pieces)}",
            [
                "Iron the band on, press it down with a block until it is cool, then trim ends and both sides flush.",
                "Band before you cut dadoes: a band over the end of a dado would keep the shelf from sliding in flush.",
            ],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, EdgeMinutes, pieces.Count)
        )
        {
            Tool = "Household iron and an edge trimmer",
            Settings = figures.Figures,
            Face = WordList.Of(pieces.SelectMany(one => Sides(one, work))),
            Cautions = [ShopCautions.HotIron],
            Source = OperationSources.BandThenDado,
        };
    }
}

/// <summary>Edges that hands touch, eased; those of frames whose parts meet flush only after they are joined.</summary>
internal sealed class EaseFamily : IOperationFamily
{
    private const int SettingMinutes = 5;
    private const double PartMinutes = 2;

    // Parts of these meet flush: eased before, they would show a groove at every joint.
    private static readonly string[] Flush = ["Door", "Face frame"];

    private static readonly Length Radius = Length.FromInches(0.0625m);

    public IEnumerable<Operation> Of(PieceWork work)
    {
        var pieces = work.Workpieces.Where(IsTouched).ToLookup(one => IsFlush(one, work));
        if (pieces[false].Any())
            yield return new(Stage.Ease, Step("ease-edges", WorkPhase.Parts, [.. pieces[false]]));
        if (pieces[true].Any())
            yield return new(Stage.Ease, Step("ease-edges:joined", WorkPhase.Fitting, [.. pieces[true]]));
    }

    private static bool IsTouched(Workpiece one) =>
        one.Part.FacesToFinish.Contains("edge", StringComparison.Ordinal) || one.Part.FacesToFinish == "all faces";

    private static bool IsFlush(Workpiece one, PieceWork work) =>
        Flush.Contains(one.Part.Assembly) && work.Joints.Any(joint => Joins(joint, one));

    private static bool Joins(WorkJoint joint, Workpiece one) =>
        joint.From.Part.Assembly == joint.Into.Part.Assembly && (joint.From.Mark == one.Mark || joint.Into.Mark == one.Mark);

    private static WorkStep Step(string id, WorkPhase phase, List<Workpiece> pieces)
    {
        var figures = new FigureList();
        figures.Add("Round over by about", "", Radius);
        return new(
            id,
            phase,
            WorkAction.EaseEdges,
            phase == WorkPhase.Parts ? "Ease the edges that hands touch" : $"Ease the edges of the {PartWords.Names(pieces)}",
            [
                phase == WorkPhase.Parts
                    ? "Break every edge that hands will touch. Leave alone the edges where parts meet: they must stay sharp."
                    : "Break the edges now that the joints are flush, inside and outside.",
            ],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, PartMinutes, pieces.Count)
        )
        {
            Tool = "Sanding block, or trim router with a small round-over bit",
            Settings = figures.Figures,
            Face = "edges",
            Cautions = [ShopCautions.Router],
            Source = OperationSources.EaseLate,
        };
    }
}
