using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What a finish takes, named as it is asked for in a store.</summary>
internal sealed class FinishBuying
{
    // Above this area a roller is quicker than a brush (common practice).
    private const double RollerFeet = 20;

    // Share of softwood that is knots (common practice).
    private const double KnotShare = 0.02;

    private readonly FinishWork work;
    private readonly FinishLots lots;
    private readonly ImmutableArray<(FinishProduct Product, Working<double> Volume)> volumes;

    public FinishBuying(FinishWork work, FinishLots lots)
    {
        (this.work, this.lots) = (work, lots);
        volumes =
        [
            .. Uses()
                .Where(use => use.SquareMetres > 0)
                .GroupBy(use => use.Product.Id)
                .Select(same => (same.First().Product, Volume(same.First().Product, [.. same]))),
        ];
    }

    /// <summary>How much of each product, in the order in which they are used first.</summary>
    public ImmutableArray<Working<double>> Volumes() => [.. volumes.Select(one => one.Volume)];

    /// <summary>Cans first, then fillers, what the finish is put on with, paper and edging; nothing where no face takes a
    /// finish.</summary>
    public ImmutableArray<WorkItem> Items() =>
        lots.All.IsEmpty ? [] : [.. Cans(), .. Fillers(), .. Tools(), .. Paper(), .. Edging()];

    private IEnumerable<Use> Uses() => lots.Coated.Where(lot => !lot.IsEmpty).SelectMany(Uses);

    private static IEnumerable<Use> Uses(FinishLot lot)
    {
        if (lot.Recipe.HidesWood)
            yield return new(Coats.Product("shellac"), SquareMetres(lot, one => one.Wood.IsSoftwood) * KnotShare, 1);
        if (lot.Recipe.HasStain)
            yield return new(
                Coats.Product("conditioner"),
                SquareMetres(lot, one => one.Wood is { TakesStain: true, Blotches: true }),
                1
            );
        if (lot.Recipe.HidesWood || lot.Recipe.HasClearFilm)
            yield return new(Coats.Product("filler"), SquareMetres(lot, one => one.Wood.HasOpenPores), 1);
        foreach (var layer in lot.Recipe.Layers)
            yield return new(
                layer.Product,
                SquareMetres(lot, one => layer.Role != LayerRole.Stain || one.Wood.TakesStain),
                layer.Role == LayerRole.Coat ? layer.Coats : 1
            );
    }

    private static double SquareMetres(FinishLot lot, Func<FinishSurface, bool> on) =>
        (double)lot.Surfaces.Where(on).Aggregate(Area.Zero, (sum, one) => sum + lot.Of(one)).ToSquareMetres();

    // Where a product is used with different numbers of coats, the areas of all coats are added up.
    private static Working<double> Volume(FinishProduct product, ImmutableArray<Use> uses)
    {
        var isOne = uses.All(use => use.Coats == uses[0].Coats);
        var area = uses.Sum(use => isOne ? use.SquareMetres : use.SquareMetres * use.Coats);
        return Coats
            .Volume(
                Working.Looked(isOne ? "Area" : "Area of all coats", area, QuantityKind.Area, 2, Working.Geometry),
                Working.Looked("Coats", isOne ? uses[0].Coats : 1, QuantityKind.Bare, 0, FinishSources.Habit),
                Working.Looked(
                    "Coverage",
                    QuantityKind.Coverage.ToMetric(product.Coverage, LengthUnit.Inch),
                    QuantityKind.Coverage,
                    0,
                    product.CoverageSource
                ),
                FinishFigures.Loss
            )
            .Named(product.Name);
    }

    private IEnumerable<WorkItem> Cans() =>
        from one in volumes
        from can in new CansFigure(one.Volume.Value).Cans(work.Unit)
        select new WorkItem($"{work.Called(one.Product)}, {can.Size}", can.Count);

    private IEnumerable<WorkItem> Fillers()
    {
        if (work.Recipe.HidesWood && (work.HasHoles || work.Edges == FinishChoices.Filler && HasEdges()))
            yield return new("Wood filler that takes paint, small tub", 1);
        else if (work.HasHoles)
            yield return new("Putty in the color of the finished wood", 1);
        if (volumes.Any(one => one.Product.Base == FinishBase.Spirit))
            yield return new("Denatured alcohol, to thin and clean up shellac", 1);
        if (volumes.Any(one => one.Product is { Base: FinishBase.Oil, Id: not "wax" }))
            yield return new("Mineral spirits, to clean up oil", 1);
    }

    private bool HasEdges() => lots.All.Surfaces.Any(one => one.SeenEdges > Length.Zero);

    private IEnumerable<WorkItem> Tools()
    {
        var brushed = volumes.Select(one => one.Product).Where(product => !product.IsWiped).ToList();
        if (brushed.Exists(product => product.Base == FinishBase.Water))
            yield return new(FinishTools.SyntheticBrush, 1);
        if (brushed.Exists(product => product.Base != FinishBase.Water))
            yield return new(FinishTools.NaturalBrush, 1);
        var rolled = brushed.Count(product => product.HidesWood);
        if (rolled > 0 && Feet() > RollerFeet)
        {
            yield return new("Roller frame and tray, for small foam rollers", 1);
            yield return new("Small foam roller", rolled);
        }

        yield return new(FinishTools.Rags, 1);
        if (volumes.Any(one => one.Product.MayHoldOil))
            yield return new("Metal can with a tight lid, for oily rags", 1);
        if (
            work.HasHardware
            || lots.Before.Surfaces.Any(one => one.IsGlued)
            || lots.DrawersBefore.Surfaces.Any(one => one.IsGlued)
        )
            yield return new("Painter's tape (roll)", 1);
    }

    private IEnumerable<WorkItem> Paper()
    {
        foreach (var grit in FinishGrits.Of(work))
            yield return Sheets(grit, Grits.Sheets(Feet(), Grits.FeetPerSheet));
        var between = lots
            .Coated.Where(lot => !lot.IsEmpty)
            .SelectMany(lot =>
                lot.Recipe.Layers.Where(layer => layer.Product.BetweenGrit is not null)
                    .Select(layer => (Grit: layer.Product.BetweenGrit!.Value, Feet: Feet(lot) * (layer.Coats - 1)))
            )
            .Where(one => one.Feet > 0)
            .GroupBy(one => one.Grit)
            .OrderBy(same => same.Key);
        foreach (var same in between)
            yield return new(
                FormattableString.Invariant($"Sandpaper for between coats, {same.Key} grit (sheet)"),
                Grits.Sheets(same.Sum(one => one.Feet), Grits.ScuffedFeetPerSheet)
            );
    }

    private IEnumerable<WorkItem> Edging() =>
        work.IronsEdges
            ? lots
                .All.Surfaces.Where(one => one.SeenEdges > Length.Zero)
                .GroupBy(one => EdgeSummary.Wide(one.Thickness))
                .OrderBy(same => same.Key)
                .Select(same => new WorkItem(
                    EdgeSummary.Name(same.Key, work.Unit),
                    EdgeSummary.Feet([.. same.Select(one => one.SeenEdges)])
                ))
            : [];

    private static WorkItem Sheets(int grit, int count) =>
        new(FormattableString.Invariant($"Sandpaper, {grit} grit (sheet)"), count);

    private double Feet() => Feet(lots.All);

    private static double Feet(FinishLot lot) =>
        (double)lot.Surfaces.Aggregate(Area.Zero, (sum, one) => sum + lot.Of(one)).ToSquareFeet();

    private sealed record Use(FinishProduct Product, double SquareMetres, int Coats);
}
