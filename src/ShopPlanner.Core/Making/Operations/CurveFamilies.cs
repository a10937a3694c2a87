using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Edges that are sawn to an arc.</summary>
internal sealed class ArcFamily : FeatureFamily<Arc>
{
    private const int SettingMinutes = 15;
    private const double CutMinutes = 10;

    protected override Stage Stage => Stage.Shape;

    protected override string Word(Shaped<Arc> one) => "arc";

    protected override WorkStep Step(string id, IReadOnlyList<Shaped<Arc>> shaped, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in shaped)
        {
            figures.Add("Rise", one.Piece.Mark, one.Feature.Rise);
            figures.Add("Radius", one.Piece.Mark, one.Feature.Radius);
            figures.Add("Chord", one.Piece.Mark, one.Feature.To - one.Feature.From);
            one.Place(figures, "Begins", one.Feature.Run, work);
        }

        return new(
            id,
            WorkPhase.Parts,
            WorkAction.Shape,
            $"Saw the arc of the {Names(shaped)}",
            [
                "Bend a thin strip through the ends and the middle of the arc, and draw along it; or swing the radius.",
                "Saw beside the line and smooth to it. Clamp like parts together and smooth them at once.",
            ],
            Marks(shaped),
            [],
            WorkEffort.Minutes(SettingMinutes, CutMinutes, shaped.Count)
        )
        {
            Tool = "Jigsaw or band saw, then a sanding block or spokeshave",
            Settings = figures.Figures,
            Face = Sides(shaped, one => one.Edge, work),
            Cautions = [ShopCautions.CurvedCuts],
        };
    }
}

/// <summary>Corners that are rounded.</summary>
internal sealed class CornerFamily : FeatureFamily<Corner>
{
    private const int SettingMinutes = 5;
    private const double CornerMinutes = 4;

    protected override Stage Stage => Stage.Shape;

    protected override string Word(Shaped<Corner> one) => "round";

    protected override WorkStep Step(string id, IReadOnlyList<Shaped<Corner>> shaped, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in shaped)
            figures.Add("Radius", one.Piece.Mark, one.Feature.Radius);
        return new(
            id,
            WorkPhase.Parts,
            WorkAction.Shape,
            $"Round the corners of the {Names(shaped)}",
            ["Draw the radius with a template, saw beside the line, and sand to it."],
            Marks(shaped),
            [],
            WorkEffort.Minutes(SettingMinutes, CornerMinutes, shaped.Count)
        )
        {
            Tool = "Jigsaw, then a sanding block",
            Settings = figures.Figures,
            Face = Sides(shaped, one => one.First, work),
            Cautions = [ShopCautions.CurvedCuts],
        };
    }
}
