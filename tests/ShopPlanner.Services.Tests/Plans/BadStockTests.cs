using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>What is noted of pieces on hand comes into requests, and the real planner keeps to it.</summary>
public sealed class BadStockTests : IAsyncLifetime
{
    private const int Rounds = 12,
        MostPieces = 6,
        MostPlaces = 4;

    private static readonly SearchControl Search = new() { Iterations = 40, Workers = 1 };

    private TestShop shop = null!;
    private ProjectView project = null!;
    private StoreView store = null!;

    private IStockConditionService Conditions => shop.Get<IStockConditionService>();

    private static CancellationToken Cancel => TestShop.Cancel;

    // Legs of a pine board and panels of birch plywood, and a store that sells both.
    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync(change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        project = await Some.ProjectAsync(shop);
        await shop.Parts.SaveAsync(
            project.Id,
            [Some.New(Some.Part("22", "A", "5")), Some.New(Some.Part("20", "P", "3", Some.Birch, "11 1/4"))],
            Cancel
        );
        store = await Some.StoreAsync(shop, Some.Price(), Some.Price("96", "64", Some.Birch, "48"));
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task No_part_touches_a_bad_place_and_sound_wood_costs_no_more(int seed)
    {
        var random = new Random(seed);
        var touched = 0;
        for (var round = 0; round < Rounds; round++)
        {
            var pieces = await AddAsync(random);
            var sound = (await RequestAsync()).Request;
            var spoiled = new Dictionary<string, StockCondition>();
            foreach (var piece in pieces)
                spoiled.Add(piece.Tag, await SpoilAsync(piece, random));
            var request = (await RequestAsync()).Request;
            Assert.All(spoiled, pair => Assert.Equal(pair.Value, ConditionIn(request, pair.Key)));
            var (bad, good) = (Planned(request), Planned(sound));
            Assert.True(bad.Cost >= good.CostLowerBound, $"{bad.Cost} is less than {good.CostLowerBound}");
            foreach (var layout in bad.Layouts)
            foreach (var place in request.Stock.Single(stock => stock.Id == layout.Stock).BadPlaces)
            {
                touched++;
                Assert.DoesNotContain(layout.Pieces, one => place.Touches(one.X, one.Y, one.Dx, one.Dy));
                Assert.DoesNotContain(layout.Leftovers, one => one.Keep && place.Touches(one.X, one.Y, one.Dx, one.Dy));
            }

            foreach (var piece in await shop.Stock.ListAsync(Cancel))
                Assert.True((await shop.Stock.DiscardAsync(piece.Id, piece.Version, "", Some.Device, Cancel)).Ok);
        }

        Assert.NotEqual(0, touched);
    }

    // The same trims come off in the rack as off a board of the store: the order says what a plan for new stock says.
    [Fact]
    public async Task What_is_bought_for_a_plan_is_enough_for_the_same_plan_from_the_rack()
    {
        var bought = await RequestAsync();
        var plan = Planned(bought.Request);
        foreach (var buy in plan.Buy)
        {
            var stock = bought.Request.Stock.Single(one => one.Id == buy.Stock);
            var addition = new StockAddition(
                StockPlace.Rack,
                stock.Material,
                LengthFormat.Exact(stock.Length, Some.Inch),
                LengthFormat.Exact(stock.Width, Some.Inch),
                $"{buy.Quantity}",
                ""
            );
            Assert.True((await shop.Stock.AddAsync(addition, Some.Inch, Some.Device, CommandId.New(), Cancel)).Ok);
        }

        var request = (await RequestAsync()).Request;
        foreach (var stock in request.Stock.Where(stock => stock.Offcut))
        {
            var form = request.Materials.Single(material => material.Id == stock.Material).Form;
            Assert.Equal(CutStock.EdgesAsBought(form), stock.EdgesToTrim(form));
        }

        var again = Planned(request);
        Assert.Equal((0, Money.Zero), (again.Buy.Length, again.Cost));
    }

    // 22 in four times and three kerfs between them: a board of 88 3/8 in has room for them, and none for a trim beside them.
    [Fact]
    public async Task An_end_as_bought_costs_the_trim_and_a_true_one_nothing()
    {
        var rack = new StockAddition(StockPlace.Rack, Some.Pine, "88 3/8", "", "1", "");
        var board = (await shop.Stock.AddAsync(rack, Some.Inch, Some.Device, CommandId.New(), Cancel)).Value!.Single();
        Assert.Equal(3, Planned((await RequestAsync()).Request).Layouts.Where(Uses).Sum(layout => layout.Pieces.Length));
        Assert.True((await Conditions.SetEdgeAsync(board.Id, StockEdges.Near, false, Some.Device, Cancel)).Ok);
        var request = (await RequestAsync()).Request;
        Assert.Null(request.Stock.Single(stock => stock.Id == board.Tag).Untrimmed);
        var four = request with
        {
            Stock = [.. request.Stock.Where(stock => stock.Id == board.Tag)],
            Parts = [.. request.Parts.Where(part => part.Material == Some.Pine).Select(part => part with { Quantity = 4 })],
            Materials = [.. request.Materials.Where(material => material.Id == Some.Pine)],
        };
        Assert.Empty(Planned(four).Unplaced);

        bool Uses(Layout layout) => layout.Stock == board.Tag;
    }

    [Fact]
    public async Task A_plan_says_that_a_piece_has_other_bad_places_or_edges_now()
    {
        var id = (await shop.Stock.AddAsync(Some.Offcut("50"), Some.Inch, Some.Device, CommandId.New(), Cancel))
            .Value!.Single()
            .Id;
        var plan = await PlanAsync();
        Assert.Empty((await shop.Plans.GetAsync(plan, Cancel))!.Changes);
        var end = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Far, "1", "");
        Assert.True((await Conditions.AddBadPlaceAsync(id, end, Some.Inch, Some.Device, CommandId.New(), Cancel)).Ok);
        Assert.Equal(["offcut B1 has other bad places now"], (await shop.Plans.GetAsync(plan, Cancel))!.Changes);
        var line = (await shop.Stock.HistoryAsync(id, 1, Cancel)).Single();
        Assert.True((await shop.Stock.UndoAsync(line.Id, Some.Device, Cancel)).Ok);
        Assert.Empty((await shop.Plans.GetAsync(plan, Cancel))!.Changes);
        Assert.True((await Conditions.SetEdgeAsync(id, StockEdges.Far, true, Some.Device, Cancel)).Ok);
        Assert.Equal(["offcut B1 is to be trimmed on other edges now"], (await shop.Plans.GetAsync(plan, Cancel))!.Changes);
    }

    // A piece that its trims leave nothing of is no reason to refuse all others.
    [Fact]
    public async Task A_piece_too_short_for_its_trims_is_left_alone()
    {
        var rack = new StockAddition(StockPlace.Rack, Some.Pine, "3/8", "", "1", "");
        Assert.True((await shop.Stock.AddAsync(rack, Some.Inch, Some.Device, CommandId.New(), Cancel)).Ok);
        Assert.Empty(Planned((await RequestAsync()).Request).Unplaced);
    }

    private async Task<Guid> PlanAsync()
    {
        var order = new PlanOrder([project.Id], null, [store.Id], true, true, 1, []);
        var job = (await shop.Plans.StartAsync(order, CommandId.New(), Cancel)).Value!;
        while (shop.Plans.FindJob(job.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(10, Cancel);
        return shop.Plans.FindJob(job.Id)!.PlanId!.Value;
    }

    private CutPlan Planned(CutRequest request)
    {
        var planner = shop.Get<ICutPlanner>();
        var plan = planner.Plan(request, Search);
        Assert.Empty(planner.Check(request, plan));
        Assert.Empty(plan.Unplaced);
        return plan;
    }

    private async Task<PlanDraft> RequestAsync()
    {
        var (order, plans) = (new PlanOrder([project.Id], null, [store.Id], true, true, 1, []), shop.Get<ReadPlans>());
        var now = await shop.Work.ReadAsync(db => Snapshot.ForOrderAsync(db, plans, order, Cancel), Cancel);
        var built = RequestBuilder.Build(order, now);
        Assert.True(built.Ok, string.Join("; ", built.Faults));
        return built.Value!;
    }

    private static StockCondition ConditionIn(CutRequest request, string tag)
    {
        var stock = request.Stock.Single(stock => stock.Id == tag);
        return new(stock.Untrimmed ?? StockEdges.None, stock.BadPlaces);
    }

    private async Task<List<StockPiece>> AddAsync(Random random)
    {
        var added = new List<StockPiece>();
        for (var left = random.Next(1, MostPieces + 1); left > 0; left--)
        {
            var (place, length) = ((StockPlace)random.Next(2), $"{random.Next(24, 97)}");
            var addition =
                random.Next(2) == 0
                    ? new StockAddition(place, Some.Pine, length, "", "1", "")
                    : new StockAddition(place, Some.Birch, length, $"{random.Next(12, 49)}", "1", "");
            added.AddRange((await shop.Stock.AddAsync(addition, Some.Inch, Some.Device, CommandId.New(), Cancel)).Value!);
        }

        return added;
    }

    private async Task<StockCondition> SpoilAsync(StockPiece piece, Random random)
    {
        for (var left = random.Next(1, MostPlaces + 1); left > 0; left--)
        {
            var outcome = await Conditions.AddBadPlaceAsync(
                piece.Id,
                Typed(piece, random),
                Some.Inch,
                Some.Device,
                CommandId.New(),
                Cancel
            );
            Assert.True(outcome.Ok || outcome.Faults.Single().Message.Contains("already"), string.Join("; ", outcome.Faults));
        }

        return (await shop.Stock.ListAsync(Cancel)).Single(one => one.Id == piece.Id).Condition;
    }

    private static BadPlaceTyped Typed(StockPiece piece, Random random)
    {
        string Of(Length whole, int share) =>
            LengthFormat.Exact(Length.FromTicks(random.NextInt64(1, whole.Ticks / share)), Some.Inch);
        var (end, edge) = (1 << random.Next(2), 4 << random.Next(2));
        return random.Next(4) switch
        {
            0 => new(BadPlaceKind.End, (StockEdges)end, Of(piece.Length, 4), ""),
            1 => new(BadPlaceKind.Edge, (StockEdges)edge, "", Of(piece.Width, 4)),
            2 => new(BadPlaceKind.Corner, (StockEdges)(end | edge), Of(piece.Length, 4), Of(piece.Width, 2)),
            _ => new(
                BadPlaceKind.Spot,
                StockEdges.None,
                Of(piece.Length, 8),
                Of(piece.Width, 2),
                Of(piece.Length, 2),
                Of(piece.Width, 2)
            ),
        };
    }
}
