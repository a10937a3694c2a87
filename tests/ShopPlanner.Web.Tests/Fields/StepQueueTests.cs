using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Tests.Fields;

public sealed class StepQueueTests
{
    private readonly StepQueue queue = new();
    private readonly List<string> done = [];

    [Fact]
    public async Task Each_waits_for_the_one_before()
    {
        var gate = new TaskCompletionSource();
        var first = queue.StepAsync(async () =>
        {
            await gate.Task;
            return Note("first");
        });
        var second = queue.StepAsync(() => Task.FromResult(Note("second")));
        Assert.Empty(done);
        gate.SetResult();
        await Task.WhenAll(first, second);
        Assert.Equal(["first", "second"], done);
    }

    [Fact]
    public async Task Steps_behind_a_refusal_are_let_go_and_other_work_is_not()
    {
        var gate = new TaskCompletionSource();
        var refused = queue.RunAsync(async () =>
        {
            await gate.Task;
            return false;
        });
        var behind = queue.StepAsync(() => Task.FromResult(Note("step")));
        var work = queue.RunAsync(() => Task.FromResult(Note("work")));
        gate.SetResult();
        await Task.WhenAll(refused, behind, work);
        await queue.StepAsync(() => Task.FromResult(Note("later step")));
        Assert.Equal(["work", "later step"], done);
    }

    [Fact]
    public async Task What_fails_is_told_to_whom_asked_and_holds_nothing_up()
    {
        var failed = queue.StepAsync(() => throw new InvalidOperationException("the disk is gone"));
        await Assert.ThrowsAsync<InvalidOperationException>(() => failed);
        await queue.StepAsync(() => Task.FromResult(Note("next")));
        Assert.Equal(["next"], done);
    }

    private bool Note(string what)
    {
        done.Add(what);
        return true;
    }
}
