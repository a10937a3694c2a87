using CsCheck;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Stock;

/// <summary>One offcut, one owner.</summary>
public sealed class PromiseTests : IAsyncLifetime
{
    private const int Racers = 64;

    private PlannedShop given = null!;

    private TestShop Shop => given.Shop;

    public async ValueTask InitializeAsync() => given = await PlannedShop.OpenAsync();

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task Of_64_plans_that_want_one_offcut_exactly_one_gets_it_and_the_others_hear_who()
    {
        await given.OffcutAsync("41 3/8");
        var (draft, plan) = await Drafts.WantingAsync(given, "B1");
        var storage = Shop.Get<PlanStorage>();
        var outcomes = await Task.WhenAll(
            Enumerable
                .Range(0, Racers)
                .Select(_ => Task.Run(() => storage.StoreAsync(draft, plan, "test", null, TestShop.Cancel)))
        );
        Assert.Single(outcomes, outcome => outcome.Ok);
        Assert.All(
            outcomes.Where(outcome => !outcome.Ok),
            outcome =>
            {
                Assert.Equal(OutcomeKind.Conflict, outcome.Kind);
                Assert.Equal(("B1", "Boot-room bench"), (outcome.Faults.Single().Field, outcome.Faults.Single().Value));
            }
        );
        Assert.Equal((1, 1), (Shop.CountRows()["Plans"], Shop.CountRows()["Promises"]));
    }

    // Past the services, straight at the file: the database alone must hold the rule.
    [Fact]
    public async Task Of_64_writers_that_pass_the_services_by_the_database_lets_one_through()
    {
        var piece = await given.OffcutAsync("41 3/8");
        var plan = (await given.PlanAsync()).Summary.Id;
        await Shop.Plans.WithdrawAsync(plan, TestShop.Cancel);
        var won = await Task.WhenAll(Enumerable.Range(0, Racers).Select(_ => Task.Run(() => TryPromiseAsync(piece, plan))));
        Assert.Single(won, true);
    }

    // Takes, gives back, cuts, reopens, throws away and undoes in any order, also at once.
    [Fact]
    public async Task No_interleaving_gives_a_piece_to_two_plans_or_cuts_it_twice()
    {
        for (var i = 0; i < 3; i++)
            await given.OffcutAsync("91");
        var drafts = new[]
        {
            await Drafts.WantingAsync(given, "B1"),
            await Drafts.WantingAsync(given, "B2"),
            await Drafts.WantingAsync(given, "B3"),
        };
        var step = Gen.Select(Gen.Int[0, 5], Gen.Int[0, 2], Gen.Int[0, 1000]);
        await step.Array[4]
            .Array[6]
            .SampleAsync(
                async rounds =>
                {
                    foreach (var round in rounds)
                    {
                        await Task.WhenAll(round.Select(s => Task.Run(() => StepAsync(s.Item1, drafts[s.Item2], s.Item3))));
                        CheckInvariants();
                    }
                },
                iter: 25,
                threads: 1
            );
    }

    private async Task<bool> TryPromiseAsync(Guid piece, Guid plan)
    {
        await using var db = Shop.Get<IDbContextFactory<ShopContext>>().CreateDbContext();
        db.Promises.Add(
            new()
            {
                Id = Guid.CreateVersion7(),
                PieceId = piece,
                PlanId = plan,
                Active = true,
            }
        );
        try
        {
            await db.SaveChangesAsync(TestShop.Cancel);
            return true;
        }
        catch (DbUpdateException problem)
        {
            Assert.Equal(OutcomeKind.Conflict, StorageFaults.Find(problem)?.Kind);
            return false;
        }
    }

    private async Task StepAsync(int kind, (PlanDraft Draft, Cutting.CutPlan Plan) wanted, int pick)
    {
        var plans = await Shop.Plans.ListAsync(true, TestShop.Cancel);
        var plan = plans.Count == 0 ? Guid.NewGuid() : plans[pick % plans.Count].Id;
        var stock = await Shop.Stock.ListAsync(TestShop.Cancel);
        switch (kind)
        {
            case 0:
                await Shop.Get<PlanStorage>().StoreAsync(wanted.Draft, wanted.Plan, "test", null, TestShop.Cancel);
                break;
            case 1:
                await Shop.Plans.WithdrawAsync(plan, TestShop.Cancel);
                break;
            case 2:
                await Shop.Plans.ReinstateAsync(plan, TestShop.Cancel);
                break;
            case 3:
                await Shop.Bench.FinishAsync(
                    plan,
                    new FinishedStock(0, 1, true, [new MeasuredLeftover(0, "5", "", true)]),
                    Some.Device,
                    CommandId.New(),
                    TestShop.Cancel
                );
                break;
            case 4:
                await Shop.Bench.ReopenAsync(plan, 0, 1, Some.Device, CommandId.New(), TestShop.Cancel);
                break;
            default:
                await DiscardOrUndoAsync(stock, pick);
                break;
        }
    }

    private async Task DiscardOrUndoAsync(IReadOnlyList<Services.Stock.StockPiece> stock, int pick)
    {
        if (pick % 2 == 0 && stock.Count > 0)
            await Shop.Stock.DiscardAsync(
                stock[pick % stock.Count].Id,
                stock[pick % stock.Count].Version,
                "test",
                Some.Device,
                TestShop.Cancel
            );
        else if (await Shop.Stock.HistoryAsync(null, 20, TestShop.Cancel) is { Count: > 0 } entries)
            await Shop.Stock.UndoAsync(entries[pick % entries.Count].Id, Some.Device, TestShop.Cancel);
    }

    private void CheckInvariants()
    {
        Assert.Equal(
            "0",
            Shop.Ask("SELECT COUNT(*) FROM (SELECT 1 FROM Promises WHERE Active = 1 GROUP BY PieceId HAVING COUNT(*) > 1)")
        );
        Assert.Equal(
            "0",
            Shop.Ask("SELECT COUNT(*) FROM (SELECT 1 FROM StockLedger GROUP BY PieceId HAVING SUM(Count) NOT IN (0, 1))")
        );
        Assert.Equal(
            "0",
            Shop.Ask(
                "SELECT COUNT(*) FROM Promises p JOIN Plans l ON l.Id = p.PlanId WHERE p.Active = 1 AND l.State NOT IN (0, 1)"
            )
        );
        Assert.Equal(
            "0",
            Shop.Ask(
                "SELECT COUNT(*) FROM (SELECT 1 FROM StockLedger e JOIN Finishes f ON f.Id = e.FinishId WHERE e.Kind = 4 AND f.Standing = 1 GROUP BY e.PieceId HAVING COUNT(*) > 1)"
            )
        );
        Assert.Equal("0", Shop.Ask("SELECT COUNT(*) FROM (SELECT 1 FROM Pieces GROUP BY Tag HAVING COUNT(*) > 1)"));
    }
}
