using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Joints that are cut in both parts alike, one step for both: half-laps, bridles, miters.</summary>
internal abstract class PairFamily : IOperationFamily
{
    private const int SettingMinutes = 20;
    private const double JointMinutes = 8;

    protected abstract JointKind Kind { get; }

    /// <summary>First word of the id.</summary>
    protected abstract string Word { get; }

    protected abstract WorkAction Action { get; }

    /// <summary>What is cut: <c>half-laps</c>.</summary>
    protected abstract string Noun { get; }

    protected abstract string Tool { get; }

    protected abstract SourceNote Source { get; }

    protected abstract ImmutableArray<string> Says { get; }

    protected abstract ImmutableArray<Caution> Cautions { get; }

    public IEnumerable<Operation> Of(PieceWork work) =>
        work.Of(Kind)
            .Where(one => one.Depth.IsPositive)
            .GroupBy(one => (one.From.Part.Assembly, one.From.Part.Material.Role))
            .Select(same => new Operation(
                Stage.Trench,
                Step($"{Word}:{PartWords.Slug(same.Key.Assembly)}:{PartWords.Slug(same.Key.Role)}", [.. same], work)
            ));

    /// <summary>Adds the figures of one joint.</summary>
    protected abstract void Add(FigureList figures, WorkJoint joint, PieceWork work);

    private WorkStep Step(string id, List<WorkJoint> joints, PieceWork work)
    {
        var pieces = joints.Pieces();
        var figures = new FigureList();
        foreach (var one in joints)
            Add(figures, one, work);
        return new(
            id,
            WorkPhase.Parts,
            Action,
            $"Cut the {Noun} of the {PartWords.Names(pieces)}",
            [.. Says, WorkEffort.TryFirst(work, pieces)],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, JointMinutes, joints.Count)
        )
        {
            Tool = Tool,
            Settings = figures.Figures,
            Joints = joints.Indexes(),
            Cautions = WorkEffort.Cautions(pieces, [.. Cautions]),
            Source = Source,
        };
    }
}

/// <summary>Half of each part is cut away over the width of the other.</summary>
internal sealed class HalfLapFamily : PairFamily
{
    protected override JointKind Kind => JointKind.HalfLap;

    protected override string Word => "half-lap";

    protected override WorkAction Action => WorkAction.Lap;

    protected override string Noun => "half-laps";

    protected override string Tool => "Table saw with a dado set and a miter gauge, or router along a straightedge";

    protected override SourceNote Source => LetIn.LapRule;

    protected override ImmutableArray<string> Says =>
        [
            "Set the depth on two offcuts until their faces come out flush. Mark both depths from the face sides.",
            "One part is cut in its face, the other in its back. Mark the width from the part that lies in it.",
        ];

    protected override ImmutableArray<Caution> Cautions =>
        [Calculators.Cautions.GrooveWithoutGuard, Calculators.Cautions.TrappedCutoff, ShopCautions.Router];

    protected override void Add(FigureList figures, WorkJoint joint, PieceWork work)
    {
        var meeting = joint.Fit.Meeting!.Value;
        foreach (var piece in new[] { joint.From, joint.Into })
        {
            var (of, along) = ($"{PartWords.Lower(piece.Name)} {piece.Mark}", piece.Copy.Along);
            figures.Add("Depth", of, LetIn.Depth(LetInJoint.CrossLap, Working.Given("Piece", piece.Thick)).Value);
            figures.Add("Width of the cut", of, meeting.Extent(along));
            var (near, far) = (meeting.Start(along) - piece.Box.Start(along), piece.Box.End(along) - meeting.End(along));
            if (near.IsPositive && far.IsPositive)
                figures.Add($"From the {work.Side(piece, along, far < near)} to the cut", of, Length.Min(near, far));
        }
    }
}

/// <summary>A tenon in a slot that is open at the end.</summary>
internal sealed class BridleFamily : PairFamily
{
    protected override JointKind Kind => JointKind.Bridle;

    protected override string Word => "bridle";

    protected override WorkAction Action => WorkAction.Lap;

    protected override string Noun => "bridle joints";

    protected override string Tool => "Table saw with a tenon jig";

    protected override SourceNote Source => MortiseTenon.Thirds;

    protected override ImmutableArray<string> Says =>
        [
            "Cut the open slots first, each part standing in the jig, once with each face to it.",
            "Cut the tenons to fit: they push into the slots by hand.",
        ];

    protected override ImmutableArray<Caution> Cautions =>
        [Calculators.Cautions.GrooveWithoutGuard, Calculators.Cautions.TrappedCutoff];

    protected override void Add(FigureList figures, WorkJoint joint, PieceWork work)
    {
        var stock = Working.Given("Piece", joint.From.Thick);
        var thickness = MortiseTenon.Thickness(stock, work.Unit);
        var of = PartWords.Lower(joint.From.Name);
        figures.Add("Tenon and slot thickness", of, thickness.Value);
        figures.Add("Taken off each face of the tenon", of, MortiseTenon.Beside("Shoulder", stock, thickness).Value);
        figures.Add("Tenon length", of, joint.Depth);
        figures.Add("Slot depth", of, joint.Fit.Meeting!.Value.Extent(joint.Into.Copy.Along));
    }
}

/// <summary>Both ends are cut at 45 degrees.</summary>
internal sealed class MiterFamily : PairFamily
{
    private static readonly SourceNote Practice = new(
        "Common practice: cut both parts of a corner at one setting, and add a spline when the glue is dry",
        Certainty.CommonPractice
    );

    protected override JointKind Kind => JointKind.Miter;

    protected override string Word => "corner-miter";

    protected override WorkAction Action => WorkAction.Shape;

    protected override string Noun => "miters";

    protected override string Tool => "Miter saw at 45°, or table saw with a miter sled";

    protected override SourceNote Source => Practice;

    protected override ImmutableArray<string> Says =>
        [
            "Cut four offcuts first and hold them together: no light shows at any corner.",
            "Cut opposite parts of a frame against one stop: equal length matters more than the figure.",
        ];

    protected override ImmutableArray<Caution> Cautions => [ShopCautions.AngledCuts];

    protected override void Add(FigureList figures, WorkJoint joint, PieceWork work)
    {
        figures.Add("Length at the long side", PartWords.Lower(joint.From.Name), joint.From.Part.Length.Value);
        figures.Add("Length at the long side", PartWords.Lower(joint.Into.Name), joint.Into.Part.Length.Value);
    }
}
