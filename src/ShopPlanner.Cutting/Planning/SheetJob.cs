using System.Collections.Immutable;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Sheets, and boards that are ripped, which are narrow sheets without turning. A kerf is added to both sides of every part and
/// stock, and each direction divided by its common measure, or by one for both where a part may be turned. Where limits of saw or
/// car bind, or stock has bad places, nothing is divided: their figures need not share the measure.
/// </summary>
internal static class SheetJob
{
    /// <summary>The best answer found.</summary>
    /// <param name="job">Sheets, or boards that are ripped or limited; bad places lower no bound.</param>
    /// <param name="control">When to stop and whom to tell.</param>
    /// <param name="start">Layouts to begin with; they need not fit the job.</param>
    public static JobResult Solve(Job job, SearchControl control, ImmutableArray<KeptLayout> start)
    {
        var isRuled = job.IsLimited || job.HasBadPlaces;
        var (scaleX, scaleY) = isRuled ? (1, 1) : Measures(job);
        var measure = new SheetMeasure(job, scaleX, scaleY);
        var problem = new SheetProblem([.. job.Stock.Select(measure.Of)], [.. job.Parts.Select(measure.Of)])
        {
            Rule = isRuled ? new PracticableLayouts(job) : null,
            Seed = [.. start.Select(Seed).OfType<SheetSeed>()],
        };
        var solution = SheetSolver.Solve(problem, control);
        var writer = new WoodWriter(job, scaleX, scaleY);
        return new(
            [.. solution.Layouts.Select(layout => Lay(job, layout, writer))],
            solution.Unmet,
            solution.Cost,
            solution.Bound,
            false
        );
    }

    private static SheetSeed? Seed(KeptLayout kept) =>
        SeedLayout.Of(kept.Pieces) is { } root ? new(kept.Stock, kept.Times, root) : null;

    private static (long X, long Y) Measures(Job job)
    {
        var x = Scale.Of(
            job.Parts.Select(part => part.Length.Ticks + job.Kerf)
                .Concat(job.Stock.Select(stock => job.UsableX(stock) + job.Kerf))
        );
        var y = Scale.Of(
            job.Parts.Select(part => part.Width.Ticks + job.Kerf).Concat(job.Stock.Select(stock => job.UsableY(stock) + job.Kerf))
        );
        var both = Scale.Of([x, y]);
        return job.Parts.Any(job.CanTurn) ? (both, both) : (x, y);
    }

    private static CutUpStock Lay(Job job, SheetLayout layout, WoodWriter writer)
    {
        var stock = job.Stock[layout.Stock];
        return new(stock, layout.Times, writer.Write(layout.Root, stock));
    }
}
