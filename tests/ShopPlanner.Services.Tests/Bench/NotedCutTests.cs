using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>Cuts noted by tablets that keep them until there is a network: lost, repeated and out of order.</summary>
public sealed class NotedCutTests : IAsyncLifetime
{
    private const int Board = 2;
    private static readonly Guid Tablet = new("0b6f1d52-3a54-4c6e-9d7d-2f3c6f0a1b11");
    private static readonly Guid Phone = new("7c1e9a10-51f6-4f0e-8f37-5d1f7b8a2c22");

    private PlannedShop given = null!;
    private Guid plan;

    // Board 1 is an offcut with one leg; board 2 a new board with two cuts.
    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
        plan = (await given.PlanAsync()).Summary.Id;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    // Oracle: per cut, the command with the highest number among those that arrived.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public async Task Any_order_loss_and_repetition_ends_in_what_the_tablet_said_last(int seed)
    {
        var random = new Random(seed);
        var said = Enumerable
            .Range(1, 40)
            .Select(number => new Said(Guid.CreateVersion7(), number, random.Next(1, 3), random.Next(2) == 0))
            .ToList();
        var arrived = said.Where(_ => random.Next(5) > 0).ToList();
        var sent = arrived.Concat(arrived.Where(_ => random.Next(3) == 0)).OrderBy(_ => random.Next()).ToList();
        foreach (var one in sent)
            Assert.True((await NoteAsync(one, Tablet)).Ok);
        var latest = arrived.GroupBy(one => one.Cut).ToDictionary(same => same.Key, same => same.MaxBy(one => one.Number)!.Made);
        var expected = Enumerable.Range(1, 2).Select(cut => latest.GetValueOrDefault(cut));
        Assert.Equal(expected, await MadeAsync());
        foreach (var one in sent)
            Assert.True((await NoteAsync(one, Tablet)).Ok);
        Assert.Equal(expected, await MadeAsync());
    }

    [Fact]
    public async Task Between_two_tablets_what_comes_last_holds()
    {
        Assert.True((await NoteAsync(new(Guid.CreateVersion7(), 900, 1, true), Tablet)).Ok);
        Assert.True((await NoteAsync(new(Guid.CreateVersion7(), 1, 1, false), Phone)).Ok);
        Assert.Equal([false, false], await MadeAsync());
        Assert.True((await NoteAsync(new(Guid.CreateVersion7(), 901, 1, true), Tablet)).Ok);
        Assert.Equal([true, false], await MadeAsync());
    }

    [Fact]
    public async Task A_cut_made_by_a_plan_that_was_canceled_meanwhile_is_kept_and_the_plan_stays_canceled()
    {
        Assert.True((await given.Shop.Plans.WithdrawAsync(plan, TestShop.Cancel)).Ok);
        Assert.True((await NoteAsync(new(Guid.CreateVersion7(), 1, 1, true), Tablet)).Ok);
        Assert.Equal([true, false], await MadeAsync());
        var view = (await given.Shop.Bench.GetAsync(plan, TestShop.Cancel))!;
        Assert.Equal(PlanState.Withdrawn, view.Plan.Summary.State);
        // At the bench itself it is refused as before: the person is there to be told.
        var here = await given.Shop.Bench.SetCutAsync(plan, 1, 1, 2, true, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Faulty, here.Kind);
    }

    [Fact]
    public async Task A_cut_of_a_board_that_is_not_there_is_refused()
    {
        var outcome = await given.Shop.Bench.NoteCutAsync(plan, 9, 1, true, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal((OutcomeKind.Missing, "board or sheet"), (outcome.Kind, outcome.Faults.Single().Field));
    }

    private Task<Outcome<Done>> NoteAsync(Said one, Guid sender) =>
        given.Shop.Bench.NoteCutAsync(
            plan,
            Board,
            one.Cut,
            one.Made,
            Some.Device,
            new CommandId(one.Id) { Turn = new(sender, one.Number) },
            TestShop.Cancel
        );

    private async Task<IEnumerable<bool>> MadeAsync() =>
        (await given.Shop.Bench.GetAsync(plan, TestShop.Cancel))!.Stocks[Board - 1].Cuts.Take(2).Select(cut => cut.Made);

    private sealed record Said(Guid Id, long Number, int Cut, bool Made);
}
