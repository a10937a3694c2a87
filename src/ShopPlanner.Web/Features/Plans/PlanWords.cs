using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Web.Features.Plans;

/// <summary>A layout with the numbers that its boards or sheets have at the bench.</summary>
/// <param name="Index">Into the plan's layouts.</param>
/// <param name="Layout">The layout.</param>
/// <param name="First">Number of its first copy, from 1.</param>
/// <param name="Form">Board or sheet.</param>
public sealed record NumberedLayout(int Index, Layout Layout, int First, StockForm Form)
{
    /// <summary><c>board 3</c>, <c>boards 3–5</c>.</summary>
    public string Numbers =>
        Layout.Copies == 1
            ? string.Create(CultureInfo.InvariantCulture, $"{Noun} {First}")
            : string.Create(CultureInfo.InvariantCulture, $"{Noun}s {First}–{First + Layout.Copies - 1}");

    /// <summary><c>board</c> or <c>sheet</c>.</summary>
    public string Noun => Form == StockForm.Board ? "board" : "sheet";
}

/// <summary>A plan's cuts in plain words.</summary>
public static class PlanWords
{
    /// <summary>The layouts with their numbers, in the order to cut.</summary>
    public static IEnumerable<NumberedLayout> Numbered(PlanView plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var first = 1;
        for (var i = 0; i < plan.Plan.Layouts.Length; i++)
        {
            var layout = plan.Plan.Layouts[i];
            yield return new NumberedLayout(i, layout, first, FormOf(plan, layout));
            first += layout.Copies;
        }
    }

    /// <summary>Board or sheet.</summary>
    public static StockForm FormOf(PlanView plan, Layout layout)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(layout);
        var material = plan.Request.Stock.First(stock => stock.Id == layout.Stock).Material;
        return plan.Request.Materials.First(one => one.Id == material).Form;
    }

    /// <summary>The setting of fence or stop, in the layout's unit.</summary>
    public static string Setting(PlanView plan, int layoutIndex, CutStep step)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return CutSentences.Setting(step, plan.UnitOfLayout(layoutIndex));
    }

    /// <summary>Sizes of a leftover.</summary>
    public static string Size(PlanView plan, int layoutIndex, Leftover leftover)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(leftover);
        var (layout, unit) = (plan.Plan.Layouts[layoutIndex], plan.UnitOfLayout(layoutIndex));
        var length = LengthFormat.WithUnit(leftover.Dx, unit);
        return FormOf(plan, layout) == StockForm.Board && leftover.Dy == Width(plan, layout)
            ? length
            : $"{length} × {LengthFormat.WithUnit(leftover.Dy, unit)}";
    }

    private static Length Width(PlanView plan, Layout layout) =>
        plan.Request.Stock.First(stock => stock.Id == layout.Stock).Width;
}
