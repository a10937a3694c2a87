using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>A shop in which cuts go wrong. Three legs of 30 in: the first from an offcut of 41 3/8 in (board 1), two from a new board
/// of 96 in (board 2).</summary>
public abstract class WrongCutTest : IAsyncLifetime
{
    private PlannedShop given = null!;

    private protected PlannedShop Given => given;

    private protected Guid PlanId { get; set; }

    private protected IWrongCutService Wrong => given.Shop.Get<IWrongCutService>();

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
        PlanId = (await given.PlanAsync()).Summary.Id;
    }

    public async ValueTask DisposeAsync()
    {
        await given.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    private protected WrongCut Spoiled(int number, int cut, int piece, string length) =>
        new(PlanId, number, cut, WrongReason.Short, [new WrongPiece(piece, length, "", Keep: length.Length > 0)], []);

    private protected async Task<RestProposal> ProposeAsync(WrongCut wrong)
    {
        var outcome = await Wrong.ProposeAsync(wrong, TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private protected async Task<WrongCutView> AcceptAsync(WrongCut wrong)
    {
        var key = (await ProposeAsync(wrong)).Key;
        var outcome = await Wrong.AcceptAsync(wrong, key, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private protected async Task<WrongCutView> NoteAsync(WrongCut wrong)
    {
        var outcome = await Wrong.NoteAsync(wrong, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private protected async Task TickAsync(int layout, int cut) =>
        Assert.True(
            (await given.Shop.Bench.SetCutAsync(PlanId, layout, 1, cut, true, Some.Device, CommandId.New(), TestShop.Cancel)).Ok
        );

    private protected async Task FinishAsync(int layout, bool allCutsMade = true)
    {
        var finished = new FinishedStock(layout, 1, allCutsMade, []);
        Assert.True((await given.Shop.Bench.FinishAsync(PlanId, finished, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
    }

    private protected async Task<int> WantedAsync() =>
        (await given.Shop.Plans.PreviewAsync(given.Order(replaces: PlanId), TestShop.Cancel))
            .Value!.Request.Parts.Single()
            .Quantity;

    private protected async Task<ProjectState> ProjectAsync() =>
        (await given.Shop.Projects.GetAsync(given.Project.Id, TestShop.Cancel))!.State;

    private protected async Task<string> StateAsync() =>
        string.Join('\n', (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Select(one => $"{one with { Version = 0 }}"))
        + $"\n{(await given.ReadAsync(PlanId)).Summary.State}";

    private protected async Task<string> BenchAsync(Guid of) =>
        string.Join(
            ' ',
            (await given.Shop.Bench.GetAsync(of, TestShop.Cancel))!.Stocks.SelectMany(stock =>
                stock.Cuts.Select(cut => $"{stock.Number}/{cut.Cut.N}:{cut.Made}/{stock.Finished}")
            )
        );
}
