using System.Diagnostics;
using System.Globalization;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Thousands of pieces: names do not matter to the search, limits of time are kept, and spare time is used. The times allowed
/// here are wide, for machines that are busy with other tests; the figures of a quiet one stand with the benchmarks.</summary>
public sealed class LargeJobTests
{
    private static readonly SearchControl Rounds = new() { Iterations = 3, Workers = 1 };

    [Fact]
    public void Many_names_for_one_length_are_planned_as_one()
    {
        var (one, many) = (Some.Planned(Boards(8, 6, named: false), Rounds), Some.Planned(Boards(8, 6, named: true), Rounds));
        Assert.Equal((one.Cost, one.CostLowerBound, one.Status), (many.Cost, many.CostLowerBound, many.Status));
        Assert.Equal(Lengths(one), Lengths(many));
    }

    [Fact]
    public void Each_of_many_names_gets_its_pieces_also_where_stock_is_short()
    {
        var request = Boards(8, 6, named: true);
        var plan = Some.Planned(request with { Stock = [request.Stock[0] with { Quantity = 8 }] }, Rounds);
        Assert.Equal(PlanStatus.Incomplete, plan.Status);
        Assert.Equal(48, plan.AllPieces().Length + plan.Unplaced.Sum(part => part.Quantity));
    }

    [Theory]
    [InlineData(200, 50, false)]
    [InlineData(700, 28, true)]
    public void Ten_and_twenty_thousand_board_parts_are_planned_within_the_time_given(int lengths, int each, bool named) =>
        AssertPlanned(Boards(lengths, each, named), 2, 0.01m);

    [Theory]
    [InlineData(100, 20, false)]
    [InlineData(2000, 1, true)]
    public void Two_thousand_sheet_parts_are_planned_within_the_time_given(int sizes, int each, bool named) =>
        AssertPlanned(Sheets(sizes, each, named), 3, 0.10m);

    [Fact]
    public void Time_that_a_later_material_leaves_goes_back_to_an_earlier_one()
    {
        // The boards come last, with more than half of the time by their number, and are proven long before it is over.
        var sheets = Sheets(40, 3, named: false);
        var request = sheets with
        {
            Materials = [.. sheets.Materials, Some.Board()],
            Stock = [.. sheets.Stock, Some.Stock("b", "96", price: 6)],
            Parts = [.. sheets.Parts, .. Boards(40, 30, named: true).Parts],
        };
        var looks = new List<string>();
        var plan = Some.Planned(
            request,
            new SearchControl
            {
                Time = TimeSpan.FromSeconds(1.5),
                Workers = 1,
                Progress = one => Note(looks, one.Material),
            }
        );
        Assert.True(plan.Seconds > 1.2, $"gave up after {plan.Seconds} s, looking at {string.Join(' ', looks)}");
    }

    private static void Note(List<string> looks, string material)
    {
        lock (looks)
            if (looks.Count == 0 || looks[^1] != material)
                looks.Add(material);
    }

    private static void AssertPlanned(CutRequest request, double seconds, decimal gap)
    {
        var watch = Stopwatch.StartNew();
        var plan = Some.Planned(request, new SearchControl { Time = TimeSpan.FromSeconds(seconds) });
        Assert.True(plan.Seconds < seconds * 10, $"planned for {plan.Seconds} s of {seconds} s");
        Assert.True(watch.Elapsed.TotalSeconds < seconds * 20, $"planned and checked for {watch.Elapsed}");
        Assert.Empty(plan.Unplaced);
        Assert.True(
            plan.Cost.Amount - plan.CostLowerBound.Amount <= plan.Cost.Amount * gap,
            $"{plan.Cost} and at least {plan.CostLowerBound}"
        );
    }

    private static CutRequest Boards(int lengths, int each, bool named)
    {
        var chance = new Random(7);
        var sizes = Enumerable.Range(0, lengths).Select(_ => $"{chance.Next(96, 960)}/16").ToList();
        return Some.Request(
            [Some.Board()],
            [Some.Stock("8", "96", price: 5.35m), Some.Stock("10", "120", price: 6.90m), Some.Stock("12", "144", price: 7.95m)],
            Parts(lengths, each, named, (id, i, quantity) => Some.Part(id, sizes[i], quantity))
        );
    }

    private static CutRequest Sheets(int sizes, int each, bool named)
    {
        var chance = new Random(150);
        var sides = Enumerable.Range(0, sizes).Select(_ => ($"{chance.Next(48, 320)}/8", $"{chance.Next(24, 192)}/8")).ToList();
        return Some.Request(
            [Some.Sheet()],
            [Some.Stock("full", "96", "48", 58, material: "ply"), Some.Stock("half", "48", "48", 34, material: "ply")],
            Parts(
                sizes,
                each,
                named,
                (id, i, quantity) =>
                    Some.Part(id, sides[i].Item1, quantity, sides[i].Item2, i % 3 == 0 ? Grain.Any : Grain.Length, "ply")
            )
        );
    }

    private static IEnumerable<CutPart> Parts(int sizes, int each, bool named, Func<string, int, int, CutPart> part) =>
        named
            ? Enumerable.Range(0, sizes * each).Select(i => part("N" + i.ToString(CultureInfo.InvariantCulture), i % sizes, 1))
            : Enumerable.Range(0, sizes).Select(i => part("P" + i.ToString(CultureInfo.InvariantCulture), i, each));

    private static IEnumerable<string> Lengths(CutPlan plan) =>
        plan
            .Layouts.SelectMany(layout =>
                Enumerable.Repeat(
                    $"{layout.Stock}: {string.Join(' ', layout.Pieces.Select(piece => piece.Dx.Ticks))}",
                    layout.Copies
                )
            )
            .Order(StringComparer.Ordinal);
}
