using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// An order of work over all boards and sheets of one material in which cuts at the same setting are made one after another, as
/// far as their pieces are in hand by then. The store's cuts come first.
/// </summary>
/// <param name="Material">The material's id.</param>
/// <param name="Runs">In the order to make them; every cut of every layout of the material is in one of them.</param>
public sealed record SharedSettings(string Material, ImmutableArray<SettingRun> Runs)
{
    /// <summary>How often fence or stop are set at home, the first time included.</summary>
    public int Changes => Runs.Count(run => !run.ByStore);

    /// <summary>One order for each material that the plan cuts, in the order of the request.</summary>
    /// <param name="request">The request that the plan answers.</param>
    /// <param name="plan">The plan; its stock is the request's.</param>
    public static ImmutableArray<SharedSettings> Of(CutRequest request, CutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        var material = request.Stock.ToDictionary(stock => stock.Id, stock => stock.Material);
        var layouts = plan
            .Layouts.Select((layout, i) => (Layout: layout, Index: i))
            .ToLookup(pair => material[pair.Layout.Stock]);
        return
        [
            .. request
                .Materials.Where(one => layouts.Contains(one.Id))
                .Select(one => new SharedSettings(one.Id, Order(layouts[one.Id]))),
        ];
    }

    private static ImmutableArray<SettingRun> Order(IEnumerable<(Layout Layout, int Index)> layouts)
    {
        var chains = new CutChains();
        foreach (var (layout, index) in layouts)
            chains.Add(layout, index);
        return [.. SettingOrder.Of(chains.All, chains.Settings).Select(chains.Run)];
    }
}

/// <summary>Cuts made one after another at one setting.</summary>
/// <param name="Kind">Which way they run.</param>
/// <param name="At">The setting.</param>
/// <param name="ByStore">Whether the store makes them.</param>
/// <param name="Cuts">In the order to make them.</param>
public sealed record SettingRun(CutKind Kind, Length At, bool ByStore, ImmutableArray<SharedCut> Cuts);

/// <summary>One cut of a layout, made in each of its copies.</summary>
/// <param name="Layout">Index of the layout in the plan.</param>
/// <param name="Copies">Boards or sheets to make it in.</param>
/// <param name="N">The cut's number in the layout.</param>
public readonly record struct SharedCut(int Layout, int Copies, int N);
