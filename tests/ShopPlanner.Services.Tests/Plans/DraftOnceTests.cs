using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>An order is worked out once, and again only where the shop changed since.</summary>
public sealed class DraftOnceTests : IAsyncLifetime
{
    private readonly PriceReads reads = new();
    private PlannedShop given = null!;

    public async ValueTask InitializeAsync() =>
        given = await PlannedShop.OpenAsync(change: services => services.AddSingleton<IInterceptor>(reads));

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task Preview_queue_and_run_read_the_shop_once()
    {
        reads.Count = 0;
        Assert.True((await given.Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel)).Ok);
        Assert.Equal(PlanJobState.Done, (await given.RunAsync(given.Order())).State);
        Assert.Equal(1, reads.Count);
    }

    [Fact]
    public async Task A_preview_after_a_change_reads_the_shop_again()
    {
        await given.Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel);
        await given.OffcutAsync("41 3/8");
        var preview = (await given.Shop.Plans.PreviewAsync(given.Order(), TestShop.Cancel)).Value!;
        Assert.Contains(preview.Request.Stock, stock => stock.Id == "B1");
        preview = (await given.Shop.Plans.PreviewAsync(given.Order(useBin: false), TestShop.Cancel)).Value!;
        Assert.DoesNotContain(preview.Request.Stock, stock => stock.Id == "B1");
    }

    // The first run is held up while the second waits and the price goes up.
    [Fact]
    public async Task A_run_that_waited_while_the_shop_changed_is_made_from_the_shop_as_it_is()
    {
        using var held = new SemaphoreSlim(0);
        var isBegun = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        given.Planner.Before = (_, _) =>
        {
            isBegun.TrySetResult();
            held.Wait(TestShop.Cancel);
        };
        var first = (await given.Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Value!;
        await isBegun.Task.WaitAsync(TestShop.Cancel);
        var second = (await given.Shop.Plans.StartAsync(given.Order(), CommandId.New(), TestShop.Cancel)).Value!;
        var price = Some.Price(price: "7.50") with { Id = given.Store.Prices[0].Id, Version = given.Store.Prices[0].Version };
        Assert.True((await given.Shop.Stores.SavePriceAsync(given.Store.Id, price, CommandId.New(), TestShop.Cancel)).Ok);
        held.Release(2);
        Assert.Equal(Money.From(6.48m), (await given.EndOfAsync(first.Id)).Cost);
        Assert.Equal(Money.From(7.50m), (await given.EndOfAsync(second.Id)).Cost);
    }

    private sealed class PriceReads : DbCommandInterceptor
    {
        public int Count { get; set; }

        public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
            DbCommand command,
            CommandEventData eventData,
            InterceptionResult<DbDataReader> result,
            CancellationToken cancellationToken = default
        )
        {
            Count += command.CommandText.Contains("FROM \"Prices\"", StringComparison.Ordinal) ? 1 : 0;
            return ValueTask.FromResult(result);
        }
    }
}
