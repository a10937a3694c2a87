using System.Collections.Immutable;
using ShopPlanner.Cutting.Sequence;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Sheets, and boards that are ripped, which are narrow sheets without turning. A kerf is added to both sides of every part and
/// stock, and each direction divided by its common measure, or by one for both where a part may be turned.
/// </summary>
internal sealed class SheetJob
{
    private readonly Job job;
    private readonly long scaleX;
    private readonly long scaleY;

    private SheetJob(Job job)
    {
        this.job = job;
        var alongX = job.Parts.Select(part => part.Length.Ticks + job.Kerf)
            .Concat(job.Stock.Select(stock => job.UsableX(stock) + job.Kerf));
        var alongY = job.Parts.Select(part => part.Width.Ticks + job.Kerf).Concat(job.Stock.Select(stock => job.UsableY(stock) + job.Kerf));
        (scaleX, scaleY) = (Scale.Of(alongX), Scale.Of(alongY));
        if (job.Parts.Any(job.CanTurn)) scaleX = scaleY = Scale.Of([scaleX, scaleY]);
    }

    public static JobResult Solve(Job job, SearchControl control) => new SheetJob(job).Solve(control);

    private JobResult Solve(SearchControl control)
    {
        var problem = new SheetProblem([.. job.Stock.Select(Model)], [.. job.Parts.Select(Model)])
        {
            Seed = [.. EarlierLayouts.For(job, control.Earlier).Select(Seed).OfType<SheetSeed>()],
        };
        var solution = SheetSolver.Solve(problem, control);
        return new([.. solution.Layouts.Select(Lay)], solution.Unmet, solution.Cost, solution.Bound, false);
    }

    private static SheetSeed? Seed(KeptLayout kept) => SeedTree.Of(kept.Pieces) is { } root ? new(kept.Stock, kept.Times, root) : null;

    private SheetStock Model(CutStock stock)
    {
        var (keepX, keepY) = KeepSides();
        return new(
            (job.UsableX(stock) + job.Kerf) / scaleX, (job.UsableY(stock) + job.Kerf) / scaleY, stock.Price.Count, stock.Quantity, stock.Offcut,
            keepX is { } x ? Scale.Up(x + job.Kerf, scaleX) : null, keepY is { } y ? Scale.Up(y + job.Kerf, scaleY) : null);
    }

    private (long? X, long? Y) KeepSides() => job.IsBoard
        ? job.Keep.BoardLength is { } length ? (length.Ticks, job.Material.Width!.Value.Ticks / 2) : (null, null)
        : job.Keep is { SheetLength: { } x, SheetWidth: { } y } ? (x.Ticks, y.Ticks) : (null, null);

    private SheetItem Model(CutPart part) => new(
        (part.Length.Ticks + job.Kerf) / scaleX, (part.Width.Ticks + job.Kerf) / scaleY, job.CanTurn(part), part.Quantity);

    private CutUpStock Lay(SheetLayout layout)
    {
        var stock = job.Stock[layout.Stock];
        return new(stock, layout.Times, Real(layout.Root, stock)!);
    }

    // Node sizes carry one kerf; what is no wider than a kerf is sawdust.
    private Slab? Real(SheetNode node, CutStock stock)
    {
        var (dx, dy) = ((node.Dx * scaleX) - job.Kerf, (node.Dy * scaleY) - job.Kerf);
        if (dx <= 0 || dy <= 0) return null;
        var (x, y) = (job.StartX(stock) + (node.X * scaleX), job.StartY(stock) + (node.Y * scaleY));
        if (node.Item is { } item) return Slab.Piece(job.Parts[item].Id, node.Turned, x, y, dx, dy);
        var children = node.Children.Select(child => Real(child, stock)).OfType<Slab>().ToImmutableArray();
        return new(x, y, dx, dy, null, false, node.CutAlongX, children);
    }
}
