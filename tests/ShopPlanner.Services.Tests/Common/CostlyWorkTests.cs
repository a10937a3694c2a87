using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Common;

/// <summary>Few costly things at once.</summary>
public sealed class CostlyWorkTests
{
    [Fact]
    public async Task Of_many_that_are_asked_for_at_once_few_are_made_at_once_and_all_in_the_end()
    {
        using var costly = new CostlyWork();
        var (running, most) = (0, 0);
        async Task<int> MakeAsync(int number)
        {
            InterlockedMax(ref most, Interlocked.Increment(ref running));
            await Task.Yield();
            Interlocked.Decrement(ref running);
            return number;
        }

        var made = await Task.WhenAll(Enumerable.Range(0, 32).Select(n => costly.RunAsync(() => MakeAsync(n), TestShop.Cancel)));
        Assert.Equal(Enumerable.Range(0, 32), made);
        Assert.InRange(most, 1, CostlyWork.Most);
    }

    [Fact]
    public async Task One_that_fails_or_is_no_longer_waited_for_lets_the_next_one_in()
    {
        using var costly = new CostlyWork();
        using var gone = new CancellationTokenSource();
        var held = new TaskCompletionSource<int>();
        var holding = Enumerable
            .Range(0, CostlyWork.Most)
            .Select(_ => costly.RunAsync(() => held.Task, TestShop.Cancel))
            .ToList();
        var passed = costly.RunAsync(() => Task.FromResult(1), gone.Token);
        await gone.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => passed);
        held.SetException(new InvalidOperationException("failed"));
        foreach (var one in holding)
            await Assert.ThrowsAsync<InvalidOperationException>(() => one);
        Assert.Equal(2, await costly.RunAsync(() => Task.FromResult(2), TestShop.Cancel));
    }

    private static void InterlockedMax(ref int most, int now)
    {
        for (var seen = most; now > seen; seen = most)
            Interlocked.CompareExchange(ref most, now, seen);
    }
}
