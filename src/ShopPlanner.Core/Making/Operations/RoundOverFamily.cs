using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Edges that a design rounds over with a radius of its own.</summary>
internal sealed class RoundOverFamily : IOperationFamily
{
    private const int SettingMinutes = 8;
    private const double EdgeMinutes = 2;

    public IEnumerable<Operation> Of(PieceWork work)
    {
        var edges = work
            .Workpieces.SelectMany(piece =>
                piece.Copy.Edges.Where(one => one.Work == EdgeWork.RoundOver).Select(one => (Piece: piece, Edge: one))
            )
            .ToList();
        return edges.Count == 0 ? [] : [new Operation(Stage.Shape, Step(edges, work))];
    }

    private static WorkStep Step(List<(Workpiece Piece, EdgeTreatment Edge)> edges, PieceWork work)
    {
        var pieces = edges.Select(one => one.Piece).DistinctBy(one => one.Mark).ToList();
        var figures = new FigureList();
        foreach (var (piece, edge) in edges)
            figures.Add("Radius", PartWords.Lower(piece.Name), edge.Size);
        return new(
            "round-over",
            WorkPhase.Parts,
            WorkAction.EaseEdges,
            $"Round over the {PartWords.Names(pieces)}",
            ["Rout ends first, then long edges, so that the long cut cleans up what tears out."],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, EdgeMinutes, edges.Count)
        )
        {
            Tool = "Trim router or router table with a round-over bit",
            Settings = figures.Figures,
            Face = WordList.Of(edges.Select(one => work.Side(one.Piece, one.Edge.Side))),
            Cautions = WorkEffort.Cautions(pieces, ShopCautions.Router),
            Source = OperationSources.EaseLate,
        };
    }
}
