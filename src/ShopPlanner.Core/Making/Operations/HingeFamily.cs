using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Cups for cup hinges, gains for butt hinges. A door that is trimmed to its opening gets them after that, since they
/// are measured from its ends.</summary>
internal sealed class HingeFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double CupMinutes = 4;
    private const double GainMinutes = 12;

    public IEnumerable<Operation> Of(PieceWork work) =>
        work
            .Joints.Where(one => one.Kind == JointKind.Hinged && one.From.Part.Assembly == "Door")
            .Select(one => HungDoor.Of(one, work))
            .GroupBy(one => (one.Joint.From.Name, one.TakesCups))
            .Select(same => new Operation(Stage.Hinges, same.Key.TakesCups ? Cups([.. same]) : Gains([.. same])));

    private static WorkStep Cups(List<HungDoor> doors)
    {
        var figures = new FigureList();
        foreach (var one in doors)
        {
            figures.Add("Cup center from the edge", one.Name, Hinges.CupCentre(HungDoor.Edge).Value);
            figures.Add("Depth of the cup", one.Name, one.CupDepth);
            foreach (var (place, i) in one.Places.Select((place, i) => (place, i)))
                figures.Add(FormattableString.Invariant($"Hinge {i + 1} from the lower end"), one.Name, place);
        }

        return Step(
            doors,
            "hinge-cups",
            "Bore the hinge cups in",
            [
                "Mark the inside face and the edge that is hung. Try the depth on scrap: the bit's point must not come through.",
                "Read the hinge's own sheet for the distance from the edge: it sets how far the door covers the side.",
            ],
            CupMinutes
        ) with
        {
            Tool = "Drill press with a 35 mm hinge-boring bit, or a boring jig",
            Settings = figures.Figures,
            Face = "inside face, along the hung edge",
            Cautions = WorkEffort.Cautions(doors.Select(one => one.Joint.From), Cautions.LargeBit, Cautions.Drilling),
        };
    }

    private static WorkStep Gains(List<HungDoor> doors)
    {
        var figures = new FigureList();
        foreach (var one in doors)
        {
            figures.Add("Hinge length", one.Name, one.Butt.Value);
            foreach (var (place, i) in one.ButtPlaces.Select((place, i) => (place, i)))
                figures.Add(FormattableString.Invariant($"Hinge {i + 1} from the upper end"), one.Name, place);
        }

        return Step(
            doors,
            "hinge-gains",
            "Cut the hinge gains in",
            [
                "Mark each leaf from the hinge itself. Cut the gain half as deep as the closed knuckle is thick, less half of "
                    + "the gap at the edge.",
                "Set the door in its opening on shims and mark the other leaves from it.",
            ],
            GainMinutes
        ) with
        {
            Tool = "Chisel and marking gauge, or trim router",
            Settings = figures.Figures,
            Face = "hung edge",
            Cautions = WorkEffort.Cautions(doors.Select(one => one.Joint.From), ShopCautions.Chisels),
        };
    }

    private static WorkStep Step(List<HungDoor> doors, string word, string title, ImmutableArray<string> says, double each)
    {
        var hung = doors.ConvertAll(one => one.Joint.From);
        return new(
            $"{word}:{PartWords.Slug(hung[0].Name)}",
            doors.Exists(one => one.IsFrame) ? WorkPhase.Fitting : WorkPhase.Parts,
            WorkAction.BoreHinges,
            $"{title} the {PartWords.Names(hung)}",
            says,
            [.. hung.Select(one => one.Mark)],
            [],
            WorkEffort.Minutes(SettingMinutes, each, doors.Sum(one => one.Count.Value))
        )
        {
            Joints = [.. doors.Select(one => one.Joint.Index).Order()],
            Source = OperationSources.CupsThenHang,
        };
    }

    /// <summary>A door and what carries it.</summary>
    internal sealed record HungDoor(WorkJoint Joint, Box Leaf, bool IsFrame, Working<int> Count)
    {
        // The form for hinges proposes it; the least that leaves wood behind a cup is there, too.
        public static readonly Working<Length> Edge = Working.Given("Wood between cup and edge", Length.FromMillimetres(5));
        private static readonly Length Behind = Length.FromMillimetres(2);

        public string Name => PartWords.Lower(Joint.From.Name) + " " + Joint.From.Mark;

        /// <summary>On a face frame, and on what is deep enough for a plate.</summary>
        public bool TakesCups =>
            Joint.Into.Part.Assembly == "Face frame" || Hinges.TakesPlate(Joint.Into.Box.Dy, IsInset ? Leaf.Dy : Length.Zero);

        public Length CupDepth => Length.Min(HingesMade.CupDepth, Leaf.Dy - Behind);

        public ImmutableArray<Length> Places => Hinges.Places(Height, Count).Value;

        public Working<Length> Butt =>
            ButtHinges.Size(Height, Working.Given("Width", Leaf.Dx), Working.Given("Thickness", Leaf.Dy));

        /// <summary>None where the door is too low for the hinges.</summary>
        public ImmutableArray<Length> ButtPlaces =>
            ButtHinges.Fits(Leaf.Dz, Butt.Value, IsHouse) ? ButtHinges.Places(Height, Butt, Count, IsHouse).Value : [];

        private Working<Length> Height => Working.Given("Height", Leaf.Dz);

        private bool IsHouse => ButtHinges.IsHouse(Leaf.Dz, Leaf.Dy);

        private bool IsInset => Leaf.EndY > Joint.Into.Box.Y;

        public static HungDoor Of(WorkJoint joint, PieceWork work)
        {
            var leaf = work.UnitBox(joint.From);
            return new(
                joint,
                leaf,
                work.Together(joint.From).Count > 1,
                DoorHinges.Count(
                    Working.Given("Width", leaf.Dx),
                    Working.Given("Height", leaf.Dz),
                    leaf.Dy,
                    joint.From.Part.Material.Species
                )
            );
        }
    }
}
