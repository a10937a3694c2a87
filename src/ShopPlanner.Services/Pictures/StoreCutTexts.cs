using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Pictures;

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
        return plan.Plan.Layouts[layoutIndex].Cuts.Any(cut => cut.ByStore)
            ? [.. PlanPictures.Trace(plan, layoutIndex).Where(step => step.Cut.ByStore).Select(step => new StoreCut(step.Cut, Sizes(step, plan.Request.Unit)))]
            : [];
    }

    private static string Sizes(TracedCut step, LengthUnit unit)
    {
        var pieces = new List<string> { Size(step.Cut.First, step.First, unit) };
        if (step is { Second: { } rest, Cut.Second: { } name }) pieces.Add(Size(name, rest, unit));
        return string.Join(", ", pieces);
    }

    private static string Size(string name, StockArea area, LengthUnit unit) =>
        $"{name} {LengthFormat.WithUnit(area.Dx, unit)} × {LengthFormat.WithUnit(area.Dy, unit)}";
}
