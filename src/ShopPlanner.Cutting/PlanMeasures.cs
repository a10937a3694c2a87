using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>
/// What a plan comes to beyond its cost, in the order in which plans of equal cost are preferred: more of the bin used up and less
/// new stock opened, leftovers large and few, few settings.
/// </summary>
/// <param name="FromBin">Pieces of rack and bin that are cut.</param>
/// <param name="NewStock">New boards and sheets that are cut.</param>
/// <param name="Kept">Leftovers that are worth keeping, over all copies.</param>
/// <param name="Settings">Different settings of fence or stop: a rip and a crosscut at the same figure are two, and so are two
/// materials at the same figure, since the saw is set anew between them.</param>
/// <param name="Cuts">Cuts to make, over all copies.</param>
/// <param name="Turned">Pieces that lie across the sheet's length, over all copies.</param>
public sealed record PlanMeasures(int FromBin, int NewStock, int Kept, int Settings, int Cuts, int Turned)
{
    /// <summary>Measures a plan.</summary>
    /// <param name="request">The request that it answers.</param>
    /// <param name="plan">The plan; its stock is the request's.</param>
    public static PlanMeasures Of(CutRequest request, CutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        var stock = request.Stock.ToDictionary(one => one.Id);
        int Count(Func<Layout, int> each) => plan.Layouts.Sum(layout => layout.Copies * each(layout));
        return new(
            Count(layout => stock[layout.Stock].Offcut ? 1 : 0),
            Count(layout => stock[layout.Stock].Offcut ? 0 : 1),
            Count(layout => layout.Leftovers.Count(left => left.Keep)),
            plan.Layouts.SelectMany(layout => layout.Cuts.Select(cut => Setting(stock[layout.Stock], cut))).Distinct().Count(),
            Count(layout => layout.Cuts.Length),
            Count(layout => layout.Pieces.Count(piece => piece.Turned)));
    }

    private static (string Material, CutKind Kind, Length At) Setting(CutStock stock, Cut cut) => (stock.Material, cut.Kind, cut.At);
}
