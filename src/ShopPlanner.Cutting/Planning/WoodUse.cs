using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// What becomes of the wood of boards and sheets, measured on the face. The rule: waste is all the wood that is cut up, less
/// the parts as they are cut and less the offcuts to keep. So sawdust is waste, and the trims of ends and edges, and scrap;
/// what a part is cut long or wide is not, and test pieces count as parts. Edges that stay on a kept offcut of a new sheet,
/// uncut, are waste: they are not counted as usable.
/// </summary>
/// <param name="Cut">Of all boards and sheets that are cut, offcuts of the bin too.</param>
/// <param name="Parts">Of the parts' pieces, as cut.</param>
/// <param name="Kept">Of the leftovers worth keeping.</param>
/// <param name="Scrap">Of the leftovers that are not.</param>
public readonly record struct WoodUse(Area Cut, Area Parts, Area Kept, Area Scrap)
{
    /// <summary>All that is neither a part nor an offcut to keep.</summary>
    public Area Waste => Cut - Parts - Kept;

    /// <summary>Waste that is no piece of scrap: sawdust, and the trims of ends and edges.</summary>
    public Area Sawdust => Waste - Scrap;

    /// <summary>The sum.</summary>
    public static WoodUse operator +(WoodUse a, WoodUse b) =>
        new(a.Cut + b.Cut, a.Parts + b.Parts, a.Kept + b.Kept, a.Scrap + b.Scrap);

    /// <summary>So many times as much.</summary>
    public static WoodUse operator *(WoodUse a, long n) => new(a.Cut * n, a.Parts * n, a.Kept * n, a.Scrap * n);

    /// <summary>Measures a plan by material, in the order of the request; materials that are not cut are left out.</summary>
    /// <param name="request">The request that it answers.</param>
    /// <param name="plan">The plan; its stock is the request's.</param>
    public static ImmutableArray<MaterialUse> Of(CutRequest request, CutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        var stock = request.Stock.ToDictionary(one => one.Id);
        var layouts = plan.Layouts.ToLookup(layout => stock[layout.Stock].Material);
        return
        [
            .. request
                .Materials.Where(material => layouts.Contains(material.Id))
                .Select(material => new MaterialUse(
                    material.Id,
                    layouts[material.Id]
                        .Aggregate(default(WoodUse), (sum, layout) => sum + (Of(layout, stock[layout.Stock]) * layout.Copies))
                )),
        ];
    }

    /// <summary>Measures one copy of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="stock">What it is cut from.</param>
    internal static WoodUse Of(Layout layout, CutStock stock) =>
        new(
            Area.Of(stock.Length, stock.Width),
            Sum(layout.Pieces, piece => Area.Of(piece.Dx, piece.Dy)),
            Sum(layout.Leftovers.Where(left => left.Keep), left => Area.Of(left.Dx, left.Dy)),
            Sum(layout.Leftovers.Where(left => !left.Keep), left => Area.Of(left.Dx, left.Dy))
        );

    private static Area Sum<T>(IEnumerable<T> all, Func<T, Area> each) => all.Aggregate(Area.Zero, (sum, one) => sum + each(one));
}

/// <summary>What becomes of the wood of one material.</summary>
/// <param name="Material">Its id in the request.</param>
/// <param name="Use">Of all its boards and sheets.</param>
public readonly record struct MaterialUse(string Material, WoodUse Use);
