using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Tests.Fields;

public sealed class PressGateTests
{
    private static readonly Guid Press = Guid.NewGuid();
    private readonly PressGate gate = new();
    private int times;

    [Fact]
    public async Task A_press_repeated_while_it_is_under_way_is_done_once_and_answered_once()
    {
        var work = new TaskCompletionSource();
        var first = gate.PassAsync(Press, async press => await DoAsync(press, work.Task));
        Assert.False(await gate.PassAsync(Press, press => DoAsync(press, Task.CompletedTask)));
        Assert.Equal((1, 0), (times, gate.Answers));
        work.SetResult();
        Assert.True(await first);
        Assert.Equal((1, 1), (times, gate.Answers));
    }

    [Fact]
    public async Task A_press_repeated_after_it_was_done_is_answered_and_reaches_nobody()
    {
        Assert.True(await gate.PassAsync(Press, press => DoAsync(press, Task.CompletedTask)));
        Assert.False(await gate.PassAsync(Press, press => DoAsync(press, Task.CompletedTask)));
        Assert.Equal((1, 2), (times, gate.Answers));
    }

    [Fact]
    public async Task A_refused_press_may_be_tried_again()
    {
        Assert.False(await gate.PassAsync(Press, _ => Task.FromResult(times++)));
        Assert.True(await gate.PassAsync(Press, press => DoAsync(press, Task.CompletedTask)));
        Assert.Equal(2, times);
    }

    [Fact]
    public async Task Another_press_is_not_held_up()
    {
        var work = new TaskCompletionSource();
        var first = gate.PassAsync(Press, async press => await DoAsync(press, work.Task));
        Assert.True(await gate.PassAsync(Guid.NewGuid(), press => DoAsync(press, Task.CompletedTask)));
        work.SetResult();
        Assert.True(await first);
    }

    [Fact]
    public async Task A_press_that_failed_may_be_tried_again()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(() =>
            gate.PassAsync(Press, _ => throw new InvalidOperationException("the disk is full"))
        );
        Assert.True(await gate.PassAsync(Press, press => DoAsync(press, Task.CompletedTask)));
    }

    private async Task DoAsync(CommandPress press, Task work)
    {
        times++;
        await work;
        press.IsDone = true;
    }
}
