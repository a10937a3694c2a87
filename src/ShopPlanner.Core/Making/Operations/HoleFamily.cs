using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Round holes that a design asks for.</summary>
internal sealed class HoleFamily : FeatureFamily<Hole>
{
    private const int SettingMinutes = 8;
    private const double HoleMinutes = 2;

    // A bit of this size and more grabs (common practice).
    private static readonly Length Large = Length.FromInches(1);

    protected override Stage Stage => Stage.Bore;

    protected override string Word(Shaped<Hole> one) => "hole";

    protected override WorkStep Step(string id, IReadOnlyList<Shaped<Hole>> shaped, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in shaped)
            Add(figures, one, work);
        return new(
            id,
            WorkPhase.Parts,
            WorkAction.Drill,
            $"Drill the holes in the {Names(shaped)}",
            ["Mark the centers from the same edge and end on every part, mirrored on left and right ones.", .. Says(shaped)],
            Marks(shaped),
            [],
            WorkEffort.Minutes(SettingMinutes, HoleMinutes, shaped.Count)
        )
        {
            Tool = "Drill press, or drill with a guide",
            Settings = figures.Figures,
            Face = Sides(shaped, one => one.Face, work),
            Cautions = shaped.Any(one => one.Feature.Diameter >= Large)
                ? WorkEffort.Cautions(shaped.Select(one => one.Piece), Cautions.LargeBit, Cautions.Drilling)
                : WorkEffort.Cautions(shaped.Select(one => one.Piece), Cautions.Drilling),
            Source = OperationSources.HolesFirst,
        };
    }

    private static IEnumerable<string> Says(IReadOnlyList<Shaped<Hole>> shaped)
    {
        if (shaped.Any(one => one.Feature.Depth is not null))
            yield return "Set the stop on the bit for the depth.";
        if (shaped.Any(one => one.Feature.Depth is null))
            yield return "Back up what you drill through with scrap.";
    }

    private static void Add(FigureList figures, Shaped<Hole> one, PieceWork work)
    {
        var (hole, box) = (one.Feature, one.Piece.Box);
        figures.Add("Bit", one.Piece.Mark, hole.Diameter);
        if (hole.Depth is { } depth)
            figures.Add("Depth", one.Piece.Mark, depth);
        foreach (var (axis, at) in new[] { (hole.Axes.First, hole.First), (hole.Axes.Second, hole.Second) })
        {
            var far = box.Extent(axis) - at;
            figures.Add($"Center from the {one.Side(BoxSides.Of(axis, far < at), work)}", one.Piece.Mark, Length.Min(at, far));
        }
    }
}
