using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Counting;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Parts that are cut long or wide and come to their size later: a door's when it is trimmed to its opening, others
/// before anything is measured from them. The strips of a panel are cut with it.</summary>
internal sealed class TrimFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double PartMinutes = 3;

    public IEnumerable<Operation> Of(PieceWork work)
    {
        var strips = GluedPanels.Glued(work.Piece).SelectMany(marks => marks).ToHashSet(StringComparer.Ordinal);
        return work
            .Workpieces.Where(one => !strips.Contains(one.Mark) && IsRough(one))
            .GroupBy(one => (one.Part.Assembly, one.Name))
            .Select(same => new Operation(Stage.Size, same.Key.Assembly == "Door" ? Horns([.. same]) : Cut([.. same])));
    }

    private static bool IsRough(Workpiece one) =>
        one.Part.RoughLength > one.Part.Length.Value || one.Part.RoughWidth > one.Part.Width.Value;

    private static WorkStep Horns(List<Workpiece> pieces) =>
        Step(
            pieces,
            WorkPhase.Fitting,
            "Trim the ends of",
            [
                "Leave the extra length on until the door is glued: it keeps the ends from splitting and bruising.",
                "Saw the ends off a hair long. They are planed when the door is fitted to its opening.",
            ],
            "Miter saw with a stop, or table saw with a miter gauge"
        ) with
        {
            Source = OperationSources.TrimToOpening,
        };

    private static WorkStep Cut(List<Workpiece> pieces) =>
        Step(
            pieces,
            WorkPhase.Parts,
            "Cut to size",
            ["Joint one edge, rip to width, square one end, then cut all to length against one stop."],
            "Table saw, and miter saw with a stop"
        );

    private static WorkStep Step(List<Workpiece> pieces, WorkPhase phase, string title, ImmutableArray<string> says, string tool)
    {
        var figures = new FigureList();
        foreach (var one in pieces)
        {
            figures.Add("Length", one.Part.Id, one.Part.Length.Value);
            if (one.Part.RoughLength > one.Part.Length.Value)
                figures.Add("Cut long by", one.Part.Id, one.Part.RoughLength - one.Part.Length.Value);
            if (one.Part.RoughWidth > one.Part.Width.Value)
            {
                figures.Add("Width", one.Part.Id, one.Part.Width.Value);
                figures.Add("Cut wide by", one.Part.Id, one.Part.RoughWidth - one.Part.Width.Value);
            }
        }

        return new(
            $"size:{PartWords.Slug(pieces[0].Part.Assembly)}:{PartWords.Slug(pieces[0].Name)}",
            phase,
            WorkAction.TrimToSize,
            $"{title} the {PartWords.Names(pieces)}",
            says,
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, PartMinutes, pieces.Count)
        )
        {
            Tool = tool,
            Settings = figures.Figures,
            Cautions = WorkEffort.Cautions(pieces, Cautions.Guards, Cautions.TrappedCutoff),
        };
    }
}
