using System.Globalization;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Edges and ends that are cut at a slant, chamfers among them.</summary>
internal sealed class SlantFamily : FeatureFamily<Bevel>
{
    private const int SettingMinutes = 12;
    private const double CutMinutes = 3;

    protected override Stage Stage => Stage.Shape;

    protected override string Word(Shaped<Bevel> one) => IsEnd(one) ? "miter" : "slant";

    protected override WorkStep Step(string id, IReadOnlyList<Shaped<Bevel>> shaped, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in shaped)
        {
            figures.Add("Shorter on the far face by", one.Piece.Mark, one.Feature.Back(one.Piece.Box));
            if (one.Feature.Reach is { } reach)
                figures.Add("Depth across the edge", one.Piece.Mark, reach);
        }

        var angles = WordList.Of(shaped.Select(one => one.Feature.Degrees.ToString("0.##", CultureInfo.InvariantCulture) + "°"));
        return new(
            id,
            WorkPhase.Parts,
            WorkAction.Shape,
            $"Cut the {Names(shaped)} at a slant",
            [
                $"Tilt the blade {angles} from square. Cut one in scrap and check the angle before the parts.",
                $"These sides keep their full size: {Sides(shaped, one => one.Keeps, work)}.",
            ],
            Marks(shaped),
            [],
            WorkEffort.Minutes(SettingMinutes, CutMinutes, shaped.Count)
        )
        {
            Tool = IsEnd(shaped[0]) ? "Miter saw, or table saw with a miter gauge" : "Table saw with the blade tilted",
            Settings = figures.Figures,
            Face = Sides(shaped, one => one.Edge, work),
            Cautions = WorkEffort.Cautions(shaped.Select(one => one.Piece), ShopCautions.AngledCuts, Cautions.Guards),
        };
    }

    private static bool IsEnd(Shaped<Bevel> one) => one.Feature.Edge.Axis() == one.Piece.Copy.Along;
}

/// <summary>Legs that grow slender.</summary>
internal sealed class TaperFamily : FeatureFamily<Taper>
{
    private const int SettingMinutes = 20;
    private const double CutMinutes = 5;

    protected override Stage Stage => Stage.Shape;

    protected override string Word(Shaped<Taper> one) => "taper";

    protected override WorkStep Step(string id, IReadOnlyList<Shaped<Taper>> shaped, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in shaped)
        {
            var end = one.Side(one.Feature.End, work);
            figures.Add($"Begins from the {end}", one.Piece.Mark, one.Feature.Long);
            figures.Add($"Taken off at the {end}", one.Piece.Mark, one.Feature.Off);
        }

        return new(
            id,
            WorkPhase.Parts,
            WorkAction.Shape,
            $"Taper the {Names(shaped)}",
            [
                "Cut mortises and holes first, while the faces are still square.",
                "Set the jig once for all, and cut each face against it. Turn the part so that a square face lies down.",
            ],
            Marks(shaped),
            [],
            WorkEffort.Minutes(SettingMinutes, CutMinutes, shaped.Count)
        )
        {
            Tool = "Table saw with a taper jig, or band saw and plane",
            Settings = figures.Figures,
            Face = Sides(shaped, one => one.Face, work),
            Cautions = WorkEffort.Cautions(shaped.Select(one => one.Piece), ShopCautions.TaperJig, Cautions.Guards),
            Source = OperationSources.MortiseThenTaper,
        };
    }
}
