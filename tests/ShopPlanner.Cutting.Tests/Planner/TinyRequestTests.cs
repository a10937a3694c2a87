using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Tiny requests of whole millimetres, with kerf, trims and offcuts, cost what trying every cut finds, and but for a few use up as much of the bin.</summary>
public sealed class TinyRequestTests
{
    private const int Requests = 300,
        MostMissed = 3;
    private static readonly SearchControl Rounds = new() { Iterations = 30_000, Workers = 1 };

    [Theory]
    [InlineData(StockForm.Board, 41)]
    [InlineData(StockForm.Sheet, 42)]
    public void Three_hundred_tiny_requests_cost_what_trying_every_cut_finds(StockForm form, int seed)
    {
        var random = new Random(seed);
        var (placed, missed) = (0, 0);
        for (var n = 0; n < Requests; n++)
        {
            var request = Next(random, form);
            var (plan, best) = (Some.Planned(request, Rounds), EveryWayToCut.Best(request));
            Assert.True(plan.Unplaced.IsEmpty == best is not null, $"request {n}: {plan.Status}");
            if (best is not { } worth)
                continue;
            Assert.True(plan.Cost == worth.Cost, $"request {n} costs {plan.Cost}, trying everything {worth.Cost}");
            missed += FromBin(request, plan) == worth.FromBin ? 0 : 1;
            placed++;
        }

        Assert.True(placed * 2 > Requests, $"{placed} of {Requests} can be placed");
        // The choice among plans of equal cost is searched, not proven.
        Assert.True(missed <= MostMissed, $"{missed} of {Requests} use up less of the bin than they could");
    }

    private static decimal FromBin(CutRequest request, CutPlan plan)
    {
        var bin = request.Stock.Where(stock => stock.Offcut).Select(stock => stock.Id).ToHashSet();
        return plan
            .Layouts.Where(layout => bin.Contains(layout.Stock))
            .Sum(layout => layout.Copies * layout.Pieces.Sum(piece => piece.Dx.ToMillimetres() * piece.Dy.ToMillimetres()));
    }

    private static CutRequest Next(Random random, StockForm form)
    {
        var board = form == StockForm.Board;
        var (width, most) = (random.Next(4, 8), random.Next(2, 6));
        var parts = new List<CutPart>();
        while (parts.Sum(part => part.Quantity) < most)
            parts.Add(Part(random, $"P{parts.Count}", board ? width : null));
        return new(
            LengthUnit.Millimetre,
            new(Mm(random, 0, 2), Mm(random, 0, 2), Mm(random, 0, 1)),
            new(null, null, null),
            [new("m", form, null, board ? Length.FromMillimetres(width) : null)],
            [.. Enumerable.Range(0, random.Next(1, 4)).Select(i => Stock(random, i, board ? width : null))],
            [.. parts],
            new(5)
        );
    }

    private static CutPart Part(Random random, string id, int? board)
    {
        var width = board is { } full && random.Next(2) == 0 ? Length.FromMillimetres(full) : Mm(random, 1, board ?? 7);
        return new(id, "", "m", Mm(random, 1, 9), width, board is null && random.Next(2) == 0 ? Grain.Any : Grain.Length, 1);
    }

    private static CutStock Stock(Random random, int i, int? width)
    {
        var offcut = random.Next(3) == 0;
        return new(
            $"S{i}",
            "m",
            Mm(random, 5, 14),
            width is { } w ? Length.FromMillimetres(w) : Mm(random, 5, 11),
            Money.From(offcut ? 0 : random.Next(1, 9)),
            offcut ? random.Next(0, 3)
                : random.Next(3) == 0 ? random.Next(1, 3)
                : null,
            offcut
        );
    }

    private static Length Mm(Random random, int from, int to) => Length.FromMillimetres(random.Next(from, to + 1));
}
