using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>Iron-on edging to buy, by the widths that are sold.</summary>
internal static class EdgeBanding
{
    // Widths on the shelf (common practice), each with what it is called.
    private static readonly (Length Width, string Inches, string Metric)[] Sold =
    [
        (Length.FromInches(0.8125m), "13/16 in", "22 mm"),
        (Length.FromInches(1.625m), "1 5/8 in", "42 mm"),
        (Length.FromInches(2), "2 in", "50 mm"),
    ];

    /// <summary>None where the design asks for its edging itself.</summary>
    public static IEnumerable<WorkItem> Items(FinishWork work, FinishLots lots)
    {
        if (work.Edges != FinishChoices.IronOn || work.BuysBanding)
            yield break;
        var banded = lots.All.Surfaces.Where(one => one.SeenEdges > Length.Zero).GroupBy(Width).OrderBy(same => same.Key.Width);
        foreach (var same in banded)
            yield return Item(work.Unit, same.Key, Run([.. same]));
    }

    private static (Length Width, string Inches, string Metric) Width(FinishSurface one) =>
        Sold.Where(sold => sold.Width > one.Thickness).DefaultIfEmpty(Sold[^1]).First();

    private static Length Run(IReadOnlyCollection<FinishSurface> banded)
    {
        var edges = banded.Aggregate(Length.Zero, (sum, one) => sum + one.SeenEdges);
        return EdgeBands
            .Band(
                Working.Looked("Edges that are seen", edges, new LengthFigure(edges), Working.Geometry),
                Working.Looked("Parts", banded.Count, QuantityKind.Bare, 0, Working.Geometry),
                Working.Looked("Trim", Trim, new LengthFigure(Trim), FinishSources.Habit),
                FinishFigures.BandWaste
            )
            .Value;
    }

    // Both ends of a strip together.
    private static Length Trim => Length.FromInches(2);

    private static WorkItem Item(LengthUnit unit, (Length Width, string Inches, string Metric) sold, Length run)
    {
        var (step, name) =
            unit == LengthUnit.Inch
                ? (Length.FromFeet(1), $"{EdgeSummary.Band} {sold.Inches} wide, by the foot")
                : (Length.FromMillimetres(1000), $"{EdgeSummary.Band} {sold.Metric} wide, by the meter");
        return new(name, (int)(((run.Ticks - 1) / step.Ticks) + 1));
    }
}
