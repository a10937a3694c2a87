using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Grooves, dadoes and rabbets that a design asks for beside its joints.</summary>
internal sealed class SlotFamily : FeatureFamily<Slot>
{
    private const int SettingMinutes = 15;
    private const double CutMinutes = 5;

    protected override Stage Stage => Stage.Trench;

    protected override string Word(Shaped<Slot> one) =>
        Action(one) switch
        {
            WorkAction.Rabbet => "own-rabbet",
            WorkAction.Groove => "own-groove",
            _ => "own-dado",
        };

    protected override WorkStep Step(string id, IReadOnlyList<Shaped<Slot>> shaped, PieceWork work)
    {
        var (action, figures) = (Action(shaped[0]), new FigureList());
        foreach (var one in shaped)
        {
            figures.Add("Depth", one.Piece.Mark, one.Feature.Depth);
            figures.Add("Width of the cut", one.Piece.Mark, one.Feature.Width);
            if (action != WorkAction.Rabbet)
                one.Place(figures, "To the cut", one.Feature.Across, work);
            Stops(figures, one, work);
        }

        return new(
            id,
            WorkPhase.Parts,
            action,
            $"Cut the {Noun(action)} in the {Names(shaped)}",
            ["Set width and depth once and cut all of them.", WorkEffort.TryFirst(work, shaped.Select(one => one.Piece))],
            Marks(shaped),
            [],
            WorkEffort.Minutes(SettingMinutes, CutMinutes, shaped.Count)
        )
        {
            Tool = "Router with a straight bit, or table saw with a dado set",
            Settings = figures.Figures,
            Face = Sides(shaped, one => one.Face, work),
            Cautions = WorkEffort.Cautions(shaped.Select(one => one.Piece), Cautions.GrooveWithoutGuard, ShopCautions.Router),
            Source = OperationSources.GrooveThenGlue,
        };
    }

    private static WorkAction Action(Shaped<Slot> one) =>
        one.Feature.IsRabbet(one.Piece.Box) ? WorkAction.Rabbet
        : one.Feature.Run == one.Piece.Copy.Along ? WorkAction.Groove
        : WorkAction.Dado;

    private static string Noun(WorkAction action) =>
        action switch
        {
            WorkAction.Rabbet => "rabbets",
            WorkAction.Groove => "grooves",
            _ => "dadoes",
        };

    private static void Stops(FigureList figures, Shaped<Slot> one, PieceWork work)
    {
        var (run, room, box) = (one.Feature.Run, one.Room, one.Piece.Box);
        foreach (var (atEnd, stop) in new[] { (false, room.Start(run) - box.Start(run)), (true, box.End(run) - room.End(run)) })
            if (stop.IsPositive)
                figures.Add($"Stops before the {one.Side(BoxSides.Of(run, atEnd), work)}", one.Piece.Mark, stop);
    }
}
