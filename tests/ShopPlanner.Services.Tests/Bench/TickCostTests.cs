using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Benchmarks;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>A tick reads and writes what it touches, however much lies in the shop.</summary>
public sealed class TickCostTests : IAsyncLifetime
{
    private readonly CommandCounter counter = new();
    private PlannedShop given = null!;
    private Guid plan;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync(change: services => services.AddSingleton<IInterceptor>(counter));
        plan = (await given.PlanAsync()).Summary.Id;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    // The command, what stands at the bench; then the tick, the plan's state, the command. The bounds of the transaction are not
    // counted.
    [Fact]
    public async Task A_tick_takes_at_most_five_commands()
    {
        Assert.InRange(await TickAsync(1, true), 1, 5);
        Assert.InRange(await TickAsync(2, true), 1, 5);
        Assert.InRange(await TickAsync(2, false), 1, 5);
        Assert.InRange(await TickAsync(1, false), 1, 5);
    }

    [Fact]
    public async Task A_tick_sent_again_takes_fewer()
    {
        var command = CommandId.New();
        await TickAsync(1, true, command);
        Assert.InRange(await TickAsync(1, true, command), 1, 2);
    }

    private async Task<int> TickAsync(int cut, bool made, CommandId? command = null)
    {
        counter.Take();
        var outcome = await given.Shop.Bench.SetCutAsync(
            plan,
            0,
            1,
            cut,
            made,
            Some.Device,
            command ?? CommandId.New(),
            TestShop.Cancel
        );
        Assert.True(outcome.Ok);
        return counter.Take();
    }
}
