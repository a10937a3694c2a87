using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Verification;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>Random projects, planned by the real planner; a random cut goes wrong at a random moment. No piece may be lost or
/// promised twice, and no wood may come from nowhere.</summary>
public sealed class WrongCutPropertyTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public async Task What_was_cut_stays_cut_and_the_rest_is_planned_from_what_is_there(int seed)
    {
        var random = new Random(seed);
        await using var shop = await TestShop.OpenAsync(change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        var plan = await PlanAsync(shop, random);
        await TickAsync(shop, plan, random);
        var (wrong, view) = await WrongAsync(shop, plan, random);
        var before = await StateAsync(shop, plan);

        var service = shop.Get<IWrongCutService>();
        var proposal = await service.ProposeAsync(wrong, TestShop.Cancel);
        Assert.True(proposal.Ok, string.Join("; ", proposal.Faults));
        Assert.Empty(PlanVerifier.Check(proposal.Value.Plan.Request, proposal.Value.Plan.Plan));
        Assert.Equal(before, await StateAsync(shop, plan));

        var accepted = await service.AcceptAsync(wrong, proposal.Value.Key, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(accepted.Ok, string.Join("; ", accepted.Faults));
        var rest = (await shop.Plans.GetAsync(accepted.Value.RestPlan!.Value, TestShop.Cancel))!;
        NothingIsLost(view, wrong, rest);
        WoodIsConserved(view, wrong, accepted.Value);
        NothingIsPromisedTwice(shop, rest);

        var undone = await service.UndoAsync(accepted.Value.Id, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(undone.Ok, string.Join("; ", undone.Faults));
        Assert.Equal(before, await StateAsync(shop, plan));
    }

    private static async Task<Guid> PlanAsync(TestShop shop, Random random)
    {
        var project = await Some.ProjectAsync(shop);
        string Inches(int from, int to) => $"{random.Next(from, to)} {random.Next(1, 8)}/8";
        await shop.Parts.SaveAsync(
            project.Id,
            [
                Some.New(Some.Part(Inches(20, 40), "A", $"{random.Next(2, 7)}")),
                Some.New(Some.Part(Inches(8, 20), "B", $"{random.Next(2, 6)}")),
                Some.New(Some.Part(Inches(10, 24), "C", $"{random.Next(1, 4)}", width: "1 1/4")),
                Some.New(Some.Part(Inches(14, 34), "P", $"{random.Next(2, 6)}", Some.Birch, Inches(8, 20))),
            ],
            TestShop.Cancel
        );
        var store = await Some.StoreAsync(shop, Some.Price(), Some.Price("96", "64.00", Some.Birch, "48"));
        await shop.Stock.AddAsync(Some.Offcut(Inches(24, 60)), Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        var order = new PlanOrder([project.Id], null, [store.Id], true, true, 1, []);
        var job = (await shop.Plans.StartAsync(order, CommandId.New(), TestShop.Cancel)).Value!;
        while (shop.Plans.FindJob(job.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(10, TestShop.Cancel);
        return shop.Plans.FindJob(job.Id)!.PlanId!.Value;
    }

    // Some boards are finished, some begun, some whole.
    private static async Task TickAsync(TestShop shop, Guid plan, Random random)
    {
        foreach (var stock in (await shop.Bench.GetAsync(plan, TestShop.Cancel))!.Stocks)
        {
            // The first board is begun with a part at least, and not finished.
            var least =
                stock.Number > 1 ? 0 : stock.Cuts.TakeWhile(cut => cut.Cut is { FirstPart: null, SecondPart: null }).Count() + 1;
            foreach (var cut in stock.Cuts.Take(random.Next(least, Math.Max(least, stock.Cuts.Length) + 1)))
                await shop.Bench.SetCutAsync(
                    plan,
                    stock.Layout,
                    stock.Copy,
                    cut.Cut.N,
                    true,
                    Some.Device,
                    CommandId.New(),
                    TestShop.Cancel
                );
            if (stock.Number > 1 && random.Next(4) == 0)
                await shop.Bench.FinishAsync(
                    plan,
                    new(stock.Layout, stock.Copy, true, []),
                    Some.Device,
                    CommandId.New(),
                    TestShop.Cancel
                );
        }
    }

    // A cut that is made, or is the next one, and gives a part.
    private static async Task<(WrongCut Wrong, BenchView View)> WrongAsync(TestShop shop, Guid plan, Random random)
    {
        var view = (await shop.Bench.GetAsync(plan, TestShop.Cancel))!;
        var open = view.Stocks.Where(stock => !stock.Finished && stock.Cuts.Length > 0).ToList();
        Assert.NotEmpty(open);
        var stocks = open.OrderBy(_ => random.Next()).ToList();
        foreach (var stock in stocks)
        {
            var next = stock.Cuts.Count(cut => cut.Made);
            foreach (var cut in stock.Cuts.Take(next + 1).OrderBy(_ => random.Next()))
            {
                var start = (await shop.Get<IWrongCutService>().OfCutAsync(plan, stock.Number, cut.Cut.N, TestShop.Cancel))!;
                if (start.Given.FirstOrDefault(piece => piece.IsOfCut) is not { } piece)
                    continue;
                var less = piece.Area.Dx - Length.FromInches(random.Next(1, 6));
                var left = new WrongPiece(
                    piece.Piece,
                    LengthFormat.Exact(less, Some.Inch),
                    LengthFormat.Exact(piece.Area.Dy, Some.Inch),
                    random.Next(2) == 0
                );
                return (new WrongCut(plan, stock.Number, cut.Cut.N, WrongReason.Short, [left], []), view);
            }
        }

        throw new InvalidOperationException("no cut that is made, or is next, gives a part: choose another seed");
    }

    private static void NothingIsLost(BenchView view, WrongCut wrong, PlanView rest)
    {
        var plan = view.Plan;
        var good = view
            .Stocks.SelectMany(stock => GivenOf(view, stock, wrong).Select(i => (stock, i)))
            .Where(one => one.stock.Number != wrong.Number || one.i != wrong.Pieces[0].Piece)
            .GroupBy(one => plan.Plan.Layouts[one.stock.Layout].Pieces[one.i].Part)
            .ToDictionary(part => part.Key, part => part.Count());
        foreach (var part in plan.Request.Parts)
        {
            var wanted = part.Quantity - good.GetValueOrDefault(part.Id);
            Assert.Equal(wanted, rest.Request.Parts.Where(one => one.Id == part.Id).Sum(one => one.Quantity));
            var placed = rest.Plan.Layouts.Sum(layout => layout.Copies * layout.Pieces.Count(piece => piece.Part == part.Id));
            Assert.Equal(wanted, placed + rest.Plan.Unplaced.Where(one => one.Part == part.Id).Sum(one => one.Quantity));
        }
    }

    private static HashSet<int> GivenOf(BenchView view, BenchStock stock, WrongCut wrong)
    {
        var made = Made(stock, wrong);
        return [.. PlanLayouts.Given(view.Plan.Request, view.Plan.Plan.Layouts[stock.Layout], made, stock.Finished)];
    }

    private static HashSet<int> Made(BenchStock stock, WrongCut wrong) =>
        [
            .. stock
                .Cuts.Where(cut => cut.Made || (stock.Number == wrong.Number && cut.Cut.N == wrong.Cut))
                .Select(cut => cut.Cut.N),
        ];

    // Parts, what is in hand and the kerfs are the board; what went into the bin is some of what was in hand, or is left of the
    // wrong piece.
    private static void WoodIsConserved(BenchView view, WrongCut wrong, WrongCutView accepted)
    {
        foreach (var stopped in accepted.Stopped)
        {
            var stock = view.Stocks[stopped.Number - 1];
            var (layout, whole) = (view.Plan.Plan.Layouts[stock.Layout], PlanLayouts.StockOf(view.Plan, stock.Layout));
            var made = Made(stock, wrong);
            var parts = GivenOf(view, stock, wrong).Sum(i => Size(layout.Pieces[i].Dx, layout.Pieces[i].Dy));
            var hand = Remaining.InHand(view.Plan, stock.Layout, made).Sum(area => Size(area.Dx, area.Dy));
            var kerf = PlanLayouts
                .Trace(view.Plan, stock.Layout)
                .Where(cut => made.Contains(cut.Cut.N))
                .Sum(cut => Size(cut.Kerf.Dx, cut.Kerf.Dy));
            Assert.Equal(Size(whole.Length, whole.Width), parts + hand + kerf);
            var binned = stopped.Pieces.Sum(piece => Size(piece.Length, piece.Width));
            var spoiled = stock.Number == wrong.Number ? layout.Pieces[wrong.Pieces[0].Piece] : null;
            Assert.True(binned <= hand + (spoiled is null ? 0 : Size(spoiled.Dx, spoiled.Dy)), $"board {stopped.Number}");
        }
    }

    private static decimal Size(Length length, Length width) => (decimal)length.Ticks * width.Ticks;

    private static void NothingIsPromisedTwice(TestShop shop, PlanView rest)
    {
        const string Twice =
            "SELECT COUNT(*) FROM (SELECT PieceId FROM Promises WHERE Active = 1 GROUP BY PieceId HAVING COUNT(*) > 1)";
        Assert.Equal("0", shop.Ask(Twice));
        var onHand = rest.Request.Stock.Where(stock => stock.Offcut).Select(stock => stock.Id).ToHashSet();
        var used = rest.Plan.Layouts.Where(layout => onHand.Contains(layout.Stock)).ToList();
        Assert.All(used, layout => Assert.Equal(1, layout.Copies));
        Assert.Equal(used.Count, used.Select(layout => layout.Stock).Distinct().Count());
    }

    private static async Task<string> StateAsync(TestShop shop, Guid plan)
    {
        var stock = (await shop.Stock.ListAsync(TestShop.Cancel)).Select(piece =>
            $"{piece.Tag} {piece.Length} × {piece.Width} {piece.Condition} {piece.PromisedPlanId}"
        );
        var view = (await shop.Bench.GetAsync(plan, TestShop.Cancel))!;
        var cuts = view.Stocks.Select(one => $"{one.Number} {one.Finished} {string.Join(' ', one.Cuts.Select(cut => cut.Made))}");
        return string.Join(
            '\n',
            [.. stock, .. cuts, $"{view.Plan.Summary.State}", shop.Ask("SELECT COUNT(*) FROM Purchases WHERE Standing = 1")]
        );
    }
}
