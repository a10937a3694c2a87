using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// An order of work over all boards and sheets of one material in which cuts at the same setting are made one after another, as
/// far as their pieces are in hand by then. The store's cuts come first. A setting may come again where a piece for it is not
/// there before. The saw is set no more often than when boards and sheets are cut one by one, all that are cut alike together.
/// </summary>
/// <param name="Material">The material's id.</param>
/// <param name="Runs">In the order to make them; every cut of every layout of the material is in one of them.</param>
public sealed record SharedRuns(string Material, ImmutableArray<SharedRun> Runs)
{
    /// <summary>One order for each material that the plan cuts, in the order of the request.</summary>
    /// <typeparam name="T">What names a setting; equal ones are one setting.</typeparam>
    /// <param name="request">The request that the plan answers.</param>
    /// <param name="plan">The plan; its stock is the request's.</param>
    /// <param name="settingOf">The setting of a cut of the layout with an index.</param>
    public static ImmutableArray<SharedRuns> Of<T>(CutRequest request, CutPlan plan, Func<int, Cut, T> settingOf)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settingOf);
        var material = request.Stock.ToDictionary(stock => stock.Id, stock => stock.Material);
        var layouts = plan
            .Layouts.Select((layout, i) => (Layout: layout, Index: i))
            .ToLookup(pair => material[pair.Layout.Stock]);
        return
        [
            .. request
                .Materials.Where(one => layouts.Contains(one.Id))
                .Select(one => new SharedRuns(one.Id, Order(layouts[one.Id], settingOf))),
        ];
    }

    private static ImmutableArray<SharedRun> Order<T>(
        IEnumerable<(Layout Layout, int Index)> layouts,
        Func<int, Cut, T> settingOf
    )
        where T : notnull
    {
        var chains = new CutChains<T>(settingOf);
        foreach (var (layout, index) in layouts)
            chains.Add(layout, index);
        return chains.Runs();
    }
}

/// <summary>Cuts made one after another at one setting.</summary>
/// <param name="ByStore">Whether the store makes them.</param>
/// <param name="Cuts">In the order to make them.</param>
public sealed record SharedRun(bool ByStore, ImmutableArray<SharedCut> Cuts);

/// <summary>One cut of a layout, made in each of its copies.</summary>
/// <param name="Layout">Index of the layout in the plan.</param>
/// <param name="Copies">Boards or sheets to make it in.</param>
/// <param name="N">The cut's number in the layout.</param>
public readonly record struct SharedCut(int Layout, int Copies, int N);
