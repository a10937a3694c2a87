using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Sawing;

/// <summary>One cut to ask for at the store's counter.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Sizes">What it gives, with the names to write on: <c>1a 48 ⅛″ × 48″, 1b 47 ¾″ × 48″</c>.</param>
public sealed record StoreCut(Cut Cut, string Sizes);

/// <summary>The cuts that the store makes, as they are asked for: by sizes, since nobody there knows the parts.</summary>
public static class StoreCutTexts
{
    /// <summary>The store's cuts of a layout, in order; empty where there are none.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layoutIndex">Index into its layouts.</param>
    public static ImmutableArray<StoreCut> Of(PlanView plan, int layoutIndex)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (!plan.Plan.Layouts[layoutIndex].Cuts.Any(cut => cut.ByStore))
            return [];
        var fullWidth = PlanLayouts.IsBoard(plan, layoutIndex) ? PlanLayouts.StockOf(plan, layoutIndex).Width : (Length?)null;
        var unit = plan.UnitOfLayout(layoutIndex);
        string Size(string name, StockArea area) => $"{name} {SizeOf(area, fullWidth, unit)}";
        return
        [
            .. PlanLayouts
                .Trace(plan, layoutIndex)
                .Where(step => step.Cut.ByStore)
                .Select(step => new StoreCut(step.Cut, Sizes(step, Size))),
        ];
    }

    private static string Sizes(TracedCut step, Func<string, StockArea, string> size)
    {
        var first = size(step.Cut.First, step.First);
        return step is { Second: { } rest, Cut.Second: { } name } ? $"{first}, {size(name, rest)}" : first;
    }

    // The width of a board that keeps it goes without saying.
    private static string SizeOf(StockArea area, Length? fullWidth, LengthUnit unit) =>
        area.Dy == fullWidth
            ? LengthFormat.WithUnit(area.Dx, unit)
            : $"{LengthFormat.WithUnit(area.Dx, unit)} × {LengthFormat.WithUnit(area.Dy, unit)}";
}
