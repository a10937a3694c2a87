using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Cups for cup hinges, gains for butt hinges. A door that is trimmed to its opening gets them after that, since they
/// are measured from its ends. A flap gets neither: what its hinges need is on their maker's sheet.</summary>
internal sealed class HingeFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double CupMinutes = 4;
    private const double GainMinutes = 12;

    public IEnumerable<Operation> Of(PieceWork work) =>
        HungDoor
            .All(work)
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
            hung.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, each, doors.Sum(one => one.Count.Value))
        )
        {
            Joints = doors.Select(one => one.Joint).Indexes(),
            Source = OperationSources.CupsThenHang,
        };
    }
}
