using System.Collections.Immutable;
using System.Diagnostics;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Sequence;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Puts the answers for all materials together as one plan.</summary>
internal static class PlanWriter
{
    public static CutPlan Write(
        CutRequest request,
        ImmutableArray<Job> jobs,
        ImmutableArray<JobResult> results,
        ImmutableArray<UnplacedPart> unplaced,
        Stopwatch watch
    )
    {
        ImmutableArray<Layout> layouts = [.. jobs.Zip(results).SelectMany(pair => Layouts(pair.First, pair.Second, request))];
        ImmutableArray<UnplacedPart> missing =
        [
            .. unplaced,
            .. jobs.Zip(results).SelectMany(pair => Missing(pair.First, pair.Second)),
        ];
        var cost = Money.FromCount(jobs.Zip(results).Sum(pair => pair.First.Paid(pair.Second)));
        var bound = Money.FromCount(jobs.Zip(results).Sum(pair => pair.First.PaidAtLeast(pair.Second)));
        var status =
            !missing.IsEmpty ? PlanStatus.Incomplete
            : cost == bound ? PlanStatus.Proven
            : PlanStatus.BestFound;
        return new(
            request.Unit,
            status,
            cost,
            bound,
            Math.Round(watch.Elapsed.TotalSeconds, 3),
            Purchases(request, layouts),
            layouts,
            missing
        );
    }

    private static IEnumerable<Layout> Layouts(Job job, JobResult result, CutRequest request)
    {
        if (result.Kept is { } kept)
            return kept;
        var order = request.Stock.Select((stock, i) => (stock.Id, i)).ToDictionary(pair => pair.Id, pair => pair.i);
        return Alike(result.Stocks).OrderBy(cut => order[cut.Stock.Id]).Select(cut => Layout(job, cut));
    }

    private static IEnumerable<CutUpStock> Alike(ImmutableArray<CutUpStock> stocks) =>
        stocks
            .GroupBy(cut => (cut.Stock.Id, string.Join(';', cut.Root.Whole().Select(Key))))
            .Select(group => group.First() with { Times = group.Sum(cut => cut.Times) });

    private static string Key(LayoutNode node) =>
        $"{node.X},{node.Y},{node.Dx},{node.Dy},{node.Item},{node.Turned},{node.AlongX}";

    private static Layout Layout(Job job, CutUpStock cut)
    {
        var nodes = cut.Root.Whole().ToList();
        return new(
            cut.Stock.Id,
            cut.Times,
            [.. nodes.Where(node => node.Item is not null).Select(node => Piece(job, node))],
            [.. nodes.Where(node => node.IsRemnant).Select(node => Left(job, node))],
            CutSequencer.Order(
                job.Material.Form,
                cut.Root,
                cut.Stock.Length.Ticks,
                cut.Stock.Width.Ticks,
                job.Kerf,
                item => job.Parts[item].Id,
                job.IsLimited ? SawReach.Of(job.Saw) : null
            )
        );
    }

    private static PlacedPiece Piece(Job job, LayoutNode node) =>
        new(
            job.Parts[node.Item!.Value].Id,
            Length.FromTicks(node.X),
            Length.FromTicks(node.Y),
            Length.FromTicks(node.Dx),
            Length.FromTicks(node.Dy),
            node.Turned
        );

    private static Leftover Left(Job job, LayoutNode node) =>
        new(
            Length.FromTicks(node.X),
            Length.FromTicks(node.Y),
            Length.FromTicks(node.Dx),
            Length.FromTicks(node.Dy),
            !node.Blocked && job.Keep.Keeps(job.Material, Length.FromTicks(node.Dx), Length.FromTicks(node.Dy))
        );

    private static IEnumerable<UnplacedPart> Missing(Job job, JobResult result) =>
        job
            .Parts.Zip(result.Unmet)
            .Where(pair => pair.Second > 0)
            .Select(pair => new UnplacedPart(pair.First.Id, pair.Second, "the stock is used up"));

    private static ImmutableArray<Purchase> Purchases(CutRequest request, ImmutableArray<Layout> layouts)
    {
        var used = layouts
            .GroupBy(layout => layout.Stock)
            .ToDictionary(group => group.Key, group => group.Sum(layout => layout.Copies));
        return
        [
            .. request
                .Stock.Where(stock => !stock.Offcut && used.ContainsKey(stock.Id))
                .Select(stock => new Purchase(stock.Id, used[stock.Id], stock.Price * used[stock.Id])),
        ];
    }
}
