using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Edging;

/// <summary>The band that all edges of a piece take.</summary>
internal static class EdgeSummary
{
    // Left over at both ends of an edge together, and what is spoiled (common practice, as for banding by itself).
    private static readonly Length Trim = Length.FromInches(1);

    private const string Band = "Edge band";

    private const double WastePercent = 10;

    // Widths that are sold; what is wider than the edge by this is trimmed flush (common practice).
    private static readonly Length[] Sold = [Length.FromInches(0.8125m), Length.FromInches(1.625m), Length.FromInches(2)];
    private static readonly Length Over = Length.FromInches(0.03125m);

    /// <summary>Adds it to the hardware, by the edges of the copies that were added.</summary>
    public static void Note(Builder builder)
    {
        var banded = builder.Drafts.SelectMany(draft =>
            draft.Edges.Where(edge => edge.Work == EdgeWork.Band).Select(edge => (Draft: draft, Edge: edge))
        );
        foreach (var same in banded.GroupBy(one => Wide(High(one.Draft, one.Edge))))
            builder.Buy(Name(same.Key, builder.Unit), Feet([.. same.Select(one => Long(one.Draft, one.Edge))]));
    }

    /// <summary>Whether a name in the hardware is that of edge band.</summary>
    public static bool IsBand(string name) => name.StartsWith(Band, StringComparison.Ordinal);

    /// <summary>Returns the width sold that covers an edge this high.</summary>
    public static Length Wide(Length high) => Sold.Where(one => one >= high + Over).DefaultIfEmpty(high).Min();

    /// <summary>Returns what band of a width is asked for by.</summary>
    public static string Name(Length wide, LengthUnit unit) => $"{Band} {Size(wide, unit)} wide, by the foot";

    /// <summary>Returns the feet of band to buy for edges of these lengths.</summary>
    public static int Feet(IReadOnlyList<Length> edges)
    {
        var band = EdgeBands.Band(
            Working.Given("Edges", edges.Aggregate(Length.Zero, (sum, one) => sum + one)),
            Working.Given("Count", edges.Count, QuantityKind.Bare, 0),
            Working.Given("Trim", Trim),
            Working.Given("Waste", WastePercent, QuantityKind.Percent, 0)
        );
        return (int)((band.Value.Ticks + Length.TicksPerFoot - 1) / Length.TicksPerFoot);
    }

    private static Length Long(Draft draft, EdgeTreatment edge) => draft.Box.Extent(BoxSides.Third(edge.Side.Axis(), draft.Flat));

    private static Length High(Draft draft, EdgeTreatment edge) =>
        edge.Side.Axis() == draft.Flat ? draft.Box.Extent(draft.Across) : draft.Box.Extent(draft.Flat);

    // Sold by inches; beside millimeters, the nearest whole one tells how wide that is.
    private static string Size(Length size, LengthUnit unit)
    {
        var inches = LengthFormat.Plain(size, LengthUnit.Inch).Text + " in";
        return unit == LengthUnit.Inch
            ? inches
            : string.Create(CultureInfo.InvariantCulture, $"{inches} ({Math.Round(size.ToMillimetres())} mm)");
    }
}
