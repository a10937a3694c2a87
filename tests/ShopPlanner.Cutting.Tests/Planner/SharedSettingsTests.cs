using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Sequence;
using ShopPlanner.Cutting.Tests.Limits;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Like cuts at one setting over all boards and sheets.</summary>
public sealed class SharedSettingsTests
{
    [Fact]
    public void Cuts_of_two_boards_at_one_setting_are_made_together()
    {
        // Board 1: 30, 30, 20; board 2: 30, 20. Each setting is needed once.
        var order = Assert.Single(Of(["30", "30", "20"], ["30", "20"]));
        Assert.Equal(2, order.Changes);
        Assert.Equal([(0, 1), (0, 2), (1, 1)], order.Runs[0].Cuts.Select(cut => (cut.Layout, cut.N)));
        Assert.Equal((CutKind.Crosscut, Some.Of("20")), (order.Runs[1].Kind, order.Runs[1].At));
    }

    // 10 then 20 on one board, 20 then 10 on the other: one of the two is set twice.
    [Fact]
    public void What_waits_for_its_piece_is_cut_when_it_is_there() =>
        Assert.Equal(3, Assert.Single(Of(["10", "20"], ["20", "10"])).Changes);

    [Fact]
    public void Materials_are_set_apart_and_copies_told()
    {
        var request = Some.Request(
            [Some.Board(), Some.Board("oak")],
            [Some.Stock("p", "96", price: 6), Some.Stock("o", "96", price: 9, material: "oak")],
            [Some.Part("A", "31", 6), Some.Part("B", "31", 3, material: "oak")]
        );
        var orders = SharedSettings.Of(request, Some.Planned(request));
        Assert.Equal([("pine", 1), ("oak", 1)], orders.Select(order => (order.Material, order.Changes)));
        Assert.NotEmpty(orders[0].Runs[0].Cuts);
        Assert.All(orders[0].Runs[0].Cuts, cut => Assert.Equal(2, cut.Copies));
    }

    [Fact]
    public void The_store_cuts_first_and_its_cuts_are_no_settings_at_home()
    {
        var request = Limited.Sheets([Limited.Panel("A", "20", "15", 12)]).By(3, "1/8", "60", "30");
        var plan = Some.Planned(request);
        var order = Assert.Single(SharedSettings.Of(request, plan));
        var store = order.Runs.TakeWhile(run => run.ByStore).ToList();
        Assert.Equal(3, store.Sum(run => run.Cuts.Length));
        Assert.DoesNotContain(order.Runs[store.Count..], run => run.ByStore);
        Assert.Equal(order.Changes, PlanMeasures.Of(request, plan).SettingChanges);
    }

    [Fact]
    public void Every_cut_is_made_once_and_never_before_its_piece_is_there() =>
        PlanPropertyTests.Requests.Sample(
            request =>
            {
                var plan = Some.Planned(request, new SearchControl { Iterations = 20, Workers = 1 });
                foreach (var order in SharedSettings.Of(request, plan))
                    CheckOrder(plan, order);
                var measures = PlanMeasures.Of(request, plan);
                Assert.InRange(measures.SettingChanges, measures.Settings, plan.Layouts.Sum(layout => layout.Cuts.Length));
            },
            iter: 60,
            threads: 1
        );

    // The fewest settings of small forests of cuts, by trying every order.
    [Fact]
    public void Few_orders_of_small_plans_take_more_settings_than_the_fewest()
    {
        var random = new Random(7);
        var (more, plans) = (0, 300);
        for (var n = 0; n < plans; n++)
        {
            var boards = Enumerable
                .Range(0, random.Next(2, 5))
                .Select(_ => Enumerable.Range(0, random.Next(1, 6)).Select(_ => $"{random.Next(1, 5)}0").ToArray())
                .ToArray();
            var changes = Assert.Single(Of(boards)).Changes;
            var fewest = Fewest(boards, [.. boards.Select(_ => 0)], []);
            Assert.True(changes >= fewest);
            if (changes > fewest)
                more++;
        }

        Assert.True(more == 0, $"{more} of {plans} are set more often than the fewest times");
    }

    private static void CheckOrder(CutPlan plan, SharedSettings order)
    {
        var there = plan.Layouts.Select(layout => new HashSet<string> { "board", "sheet" }).ToList();
        foreach (var (run, made) in order.Runs.SelectMany(run => run.Cuts.Select(made => (run, made))))
        {
            var cut = plan.Layouts[made.Layout].Cuts[made.N - 1];
            Assert.Equal((run.Kind, run.At, run.ByStore), (cut.Kind, cut.At, cut.ByStore));
            Assert.Contains(cut.Piece, there[made.Layout]);
            Assert.True(there[made.Layout].Add(cut.First));
            if (cut.Second is { } second)
                there[made.Layout].Add(second);
        }

        Assert.Equal(plan.Layouts.Sum(layout => layout.Cuts.Length), order.Runs.Sum(run => run.Cuts.Length));
    }

    // One chain of crosscuts for each board, each cut in what the one before left.
    private static ImmutableArray<SharedSettings> Of(params string[][] boards)
    {
        var request = Some.Request([Some.Board()], [Some.Stock("s", "960")], [Some.Part("A", "10")]);
        var plan = Some.Planned(request) with
        {
            Layouts = [.. boards.Select(settings => new Layout("s", 1, [], [], Cuts(settings)))],
        };
        return SharedSettings.Of(request, plan);
    }

    private static ImmutableArray<Cut> Cuts(string[] settings) =>
        [
            .. settings.Select(
                (at, i) =>
                    new Cut(
                        i + 1,
                        i == 0 ? "board" : $"{i}b",
                        CutKind.Crosscut,
                        Some.Of(at),
                        $"{i + 1}a",
                        $"{i + 1}b",
                        null,
                        null
                    )
            ),
        ];

    private static int Fewest(string[][] boards, int[] done, Dictionary<string, int> known)
    {
        var key = string.Join(',', done);
        if (known.TryGetValue(key, out var fewest))
            return fewest;
        var next = boards.Select((board, i) => done[i] < board.Length ? board[done[i]] : null).ToArray();
        var settings = next.OfType<string>().Distinct().ToList();
        fewest =
            settings.Count == 0
                ? 0
                : 1
                    + settings.Min(setting =>
                        Fewest(boards, [.. boards.Select((board, i) => After(board, done[i], setting))], known)
                    );
        return known[key] = fewest;
    }

    private static int After(string[] board, int done, string setting)
    {
        while (done < board.Length && board[done] == setting)
            done++;
        return done;
    }
}
