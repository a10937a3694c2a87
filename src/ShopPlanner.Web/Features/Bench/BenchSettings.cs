using System.Collections.Immutable;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>One cut of one physical board or sheet.</summary>
/// <param name="Stock">The board or sheet.</param>
/// <param name="Step">What to do, with its own marks.</param>
/// <param name="Made">Ticked.</param>
internal sealed record StockCut(BenchStock Stock, CutStep Step, bool Made);

/// <summary>What is cut at one setting, over all boards and sheets.</summary>
/// <param name="Material">The material's name.</param>
/// <param name="Setting">The setting.</param>
/// <param name="Number">From 1, over the whole plan.</param>
/// <param name="Cuts">In the order to make them.</param>
internal sealed record BenchSetting(string Material, SettingStep Setting, int Number, ImmutableArray<StockCut> Cuts)
{
    /// <summary>Whether nothing of it is left to cut: made, or its board is finished without.</summary>
    public bool IsDone => Cuts.All(cut => cut.Made || cut.Stock.Finished);
}

/// <summary>The cuts of a plan at the bench, by setting.</summary>
internal static class BenchSettings
{
    /// <summary>Returns the runs in the order to set them.</summary>
    public static ImmutableArray<BenchSetting> Of(BenchView view)
    {
        var (plan, marks) = (view.Plan, new PlanMarks(view.Plan));
        var stocks = view.Stocks.ToLookup(stock => stock.Layout);
        var steps = view.Stocks.ToDictionary(
            stock => stock.Number,
            stock => CutTexts.Steps(plan, stock.Layout, stock.Copy, marks)
        );
        var runs = ImmutableArray.CreateBuilder<BenchSetting>();
        foreach (var material in SettingList.Of(plan))
        foreach (var setting in material.Steps)
            runs.Add(
                new(
                    plan.Materials.GetValueOrDefault(material.Material, material.Material),
                    setting,
                    runs.Count + 1,
                    [.. Copies(setting, stocks).Select(one => Cut(one.Stock, one.N, steps[one.Stock.Number]))]
                )
            );
        return runs.ToImmutable();
    }

    // Copy by copy: cuts of one board that follow from one another at the setting keep their order.
    private static IEnumerable<(BenchStock Stock, int N)> Copies(SettingStep setting, ILookup<int, BenchStock> stocks) =>
        setting
            .Cuts.GroupBy(cut => cut.Layout)
            .SelectMany(same => stocks[same.Key].SelectMany(stock => same.Select(cut => (stock, cut.Step.Cut.N))));

    private static StockCut Cut(BenchStock stock, int n, ImmutableArray<CutStep> steps) =>
        new(stock, steps[n - 1], stock.Cuts[n - 1].Made);
}
