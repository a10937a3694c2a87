using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Benchmarks;

/// <summary>One instance's result, for a program to read.</summary>
/// <param name="Kerf">The saw's, in the unit of the sides.</param>
/// <param name="Layouts">Every sheet cut, so that an outsider can check; null when not asked for.</param>
public sealed record SheetLine(
    string Set,
    string Name,
    double Value,
    double? Best,
    double Bound,
    bool Proven,
    bool Complete,
    double Seconds,
    long Kerf,
    IReadOnlyList<SheetLayoutLine>? Layouts
)
{
    public static SheetLine From(SheetInstance instance, Outcome outcome, SheetSolution solution, bool layouts) =>
        new(
            outcome.Set,
            outcome.Name,
            outcome.Value,
            outcome.Best,
            outcome.Bound,
            outcome.Proven,
            solution.Complete,
            outcome.Seconds,
            instance.Kerf,
            layouts ? [.. solution.Layouts.Select(layout => SheetLayoutLine.From(instance, layout))] : null
        );
}

/// <summary>How one sheet, or several alike, is cut.</summary>
/// <param name="Stock">Index of the stock in the instance.</param>
/// <param name="Times">How many are cut like this.</param>
/// <param name="Pieces">Item index, x, y, dx, dy of every piece, without the kerf.</param>
public sealed record SheetLayoutLine(int Stock, int Times, IReadOnlyList<long[]> Pieces)
{
    public static SheetLayoutLine From(SheetInstance instance, SheetLayout layout) =>
        new(layout.Stock, layout.Times, [.. Below(layout.Root, instance.Kerf)]);

    private static IEnumerable<long[]> Below(LayoutNode node, long kerf) =>
        node.Item is { } item
            ?
            [
                [item, node.X, node.Y, node.Dx - kerf, node.Dy - kerf],
            ]
            : node.Children.SelectMany(child => Below(child, kerf));
}
