using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.BadWood;

/// <summary>Tiny requests of whole millimetres with bad places: what trying every cut finds is found.</summary>
public sealed class TinyBadTests
{
    private const int Requests = 250;
    private static readonly SearchControl Rounds = new() { Iterations = 3_000, Workers = 1 };

    [Fact]
    public void Boards_cost_what_trying_every_cut_finds()
    {
        var random = new Random(71);
        var placed = 0;
        for (var n = 0; n < Requests; n++)
        {
            var request = Boards(random);
            var (plan, least) = (Some.Planned(request, Rounds), EveryClearCut.Least(request));
            Assert.True(plan.Unplaced.IsEmpty == least is not null, $"request {n}: {plan.Status}, least {least}");
            if (least is not { } cost)
                continue;
            Assert.True(plan.Cost == cost, $"request {n} costs {plan.Cost}, trying everything {cost}");
            placed++;
        }

        Assert.True(placed * 3 > Requests, $"{placed} of {Requests} can be placed");
    }

    [Theory]
    [InlineData(StockForm.Board, 72)]
    [InlineData(StockForm.Sheet, 73)]
    public void One_or_two_parts_are_cut_whenever_they_can_be(StockForm form, int seed)
    {
        var random = new Random(seed);
        var (placed, left) = (0, 0);
        for (var n = 0; n < Requests; n++)
        {
            var request = Pieces(random, form);
            var (plan, least) = (Some.Planned(request, Rounds), EveryClearCut.Least(request));
            Assert.True(plan.Unplaced.IsEmpty == least is not null, $"request {n}: {plan.Status}, least {least}");
            placed += least is null ? 0 : 1;
            left += least is null ? 1 : 0;
        }

        Assert.True(placed > Requests / 5 && left > Requests / 5, $"{placed} placed, {left} left");
    }

    // Bad places between two lots are two kerfs wide at least: what is narrower is not planned to the last kerf.
    private static CutRequest Boards(Random random)
    {
        var kerf = random.Next(0, 2);
        var width = random.Next(3, 6);
        return new(
            LengthUnit.Millimetre,
            new(Mm(kerf), Mm(random.Next(0, 3)), Length.Zero),
            new(null, null, null),
            [new("m", StockForm.Board, null, Mm(width))],
            [.. Enumerable.Range(0, random.Next(1, 4)).Select(i => Board(random, $"S{i}", width, kerf))],
            [
                .. Enumerable
                    .Range(0, random.Next(1, 5))
                    .Select(i => new CutPart($"P{i}", "", "m", Mm(random.Next(2, 8)), Mm(width), Grain.Length, 1)),
            ],
            new(5)
        );
    }

    private static CutStock Board(Random random, string id, int width, int kerf)
    {
        var (length, offcut) = (random.Next(8, 18), random.Next(2) == 0);
        var stock = new CutStock(id, "m", Mm(length), Mm(width), Money.From(offcut ? 0 : random.Next(1, 9)), 1, offcut);
        if (random.Next(3) == 0)
            return stock with { Quantity = random.Next(1, 3) };
        var places = Enumerable
            .Range(0, random.Next(1, 3))
            .Select(_ =>
            {
                var (x, y) = (random.Next(0, length - (2 * kerf)), random.Next(0, width));
                var dx = random.Next(Math.Max(1, 2 * kerf), Math.Max(2 * kerf, Math.Min(5, length - x)) + 1);
                return new BadPlace(Mm(x), Mm(y), Mm(Math.Min(dx, length - x)), Mm(random.Next(1, width - y + 1)));
            });
        return stock with { BadPlaces = [.. places], Untrimmed = Ends(random, offcut) };
    }

    private static StockEdges? Ends(Random random, bool offcut) =>
        random.Next(2) == 0 ? null
        : offcut ? (StockEdges)random.Next(0, 4)
        : StockEdges.Near;

    private static CutRequest Pieces(Random random, StockForm form)
    {
        var (dx, dy) = (random.Next(7, 14), form == StockForm.Board ? 5 : random.Next(5, 11));
        var (x, y) = (random.Next(0, dx - 1), random.Next(0, dy - 1));
        var place = new BadPlace(
            Mm(x),
            Mm(y),
            Mm(random.Next(1, Math.Min(4, dx - x) + 1)),
            Mm(random.Next(1, Math.Min(4, dy - y) + 1))
        );
        return new(
            LengthUnit.Millimetre,
            new(Mm(random.Next(0, 2)), Length.Zero, Length.Zero),
            new(null, null, null),
            [new("m", form, null, form == StockForm.Board ? Mm(dy) : null)],
            [new CutStock("S", "m", Mm(dx), Mm(dy), Money.Zero, 1, true) { BadPlaces = [place] }],
            [
                .. Enumerable
                    .Range(0, random.Next(1, 3))
                    .Select(i => new CutPart(
                        $"P{i}",
                        "",
                        "m",
                        Mm(random.Next(2, dx)),
                        Mm(random.Next(1, dy)),
                        form == StockForm.Sheet && random.Next(2) == 0 ? Grain.Any : Grain.Length,
                        1
                    )),
            ],
            new(5)
        );
    }

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}
