using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Slots in the rails under a top that moves across the seasons.</summary>
internal sealed class TopFastenerFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double SlotMinutes = 3;

    // A clip or a figure-eight is about an inch wide (common practice).
    private static readonly Length Least = Length.FromInches(1);

    public IEnumerable<Operation> Of(PieceWork work)
    {
        var joints = work.Of(JointKind.Slotted).Where(one => On(one, work).Any()).ToList();
        return joints.Count == 0 ? [] : [new Operation(Stage.Bore, Step(joints, work))];
    }

    private static WorkStep Step(List<WorkJoint> joints, PieceWork work)
    {
        // The top lies on the rails, however the joint names them.
        var rails = joints.Select(Rail).DistinctBy(one => one.Mark).ToList();
        var count = joints.Sum(one => On(one, work).Count());
        return new(
            "top-fasteners",
            WorkPhase.Parts,
            WorkAction.ScrewHoles,
            $"Cut the slots for the top's fasteners in the {PartWords.Names(rails)}",
            [
                "For clips or buttons, cut a slot or a groove in the inside face, 1/32 in (1 mm) farther down than the "
                    + "clip's offset, so that it draws the top down.",
                "For screws, drill a slot across the top's grain instead of a round hole, so that the top can move.",
                FormattableString.Invariant($"{count} top fasteners."),
            ],
            rails.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, SlotMinutes, count)
        )
        {
            Tool = "Biscuit joiner, or router table with a slot cutter",
            Settings = Settings(joints, work),
            Face = "inside face, near the upper edge",
            Joints = joints.Indexes(),
            Cautions = WorkEffort.Cautions(rails, Cautions.Drilling, ShopCautions.Router),
            Source = OperationSources.ButtonsThenGlue,
        };
    }

    // Copies of a part are alike: the first one's places are told.
    private static ImmutableArray<WorkFigure> Settings(List<WorkJoint> joints, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var same in joints.GroupBy(one => Rail(one).Part.Id, StringComparer.Ordinal))
        {
            var rail = Rail(same.First());
            var places = same.Where(one => Rail(one).Mark == rail.Mark).SelectMany(one => On(one, work)).Order().ToList();
            var end = work.Side(rail, rail.Copy.Along, false);
            foreach (var (place, i) in places.Select((place, i) => (place, i)))
                figures.Add(
                    FormattableString.Invariant($"{rail.Name} {rail.Part.Id}, fastener {i + 1} from the {end}"),
                    rail.Mark,
                    place
                );
        }

        return figures.Figures;
    }

    private static Workpiece Rail(WorkJoint joint) => joint.From.Box.Z < joint.Into.Box.Z ? joint.From : joint.Into;

    // From the rail's start along it; none where the two meet over less than a fastener takes, or over a tenon.
    private static IEnumerable<Length> On(WorkJoint joint, PieceWork work)
    {
        var (rail, box) = (Rail(joint), joint.Fit.Meeting!.Value);
        var along = rail.Copy.Along;
        var (from, to) = (box.Start(along) - rail.Box.Start(along), box.End(along) - rail.Box.Start(along));
        from = Length.Max(from, LetIn(rail, false, work));
        to = Length.Min(to, rail.Box.Extent(along) - LetIn(rail, true, work));
        return to - from < Least ? [] : Places(to - from).Select(place => from + place);
    }

    // How far an end of the rail is let into a leg.
    private static Length LetIn(Workpiece rail, bool atEnd, PieceWork work) =>
        work
            .Joints.Where(one =>
                one.From.Mark == rail.Mark && one.Along == rail.Copy.Along && IsAt(one.Into.Box, rail.Box, one.Along, atEnd)
            )
            .Select(one => one.Depth)
            .DefaultIfEmpty(Length.Zero)
            .Max();

    private static bool IsAt(Box into, Box rail, Axis along, bool atEnd) =>
        atEnd ? into.End(along) > rail.End(along) : into.Start(along) < rail.Start(along);

    private static ImmutableArray<Length> Places(Length run) =>
        TopFastening.Places("Fasteners", Working.Given("rail", run)).Value;
}
