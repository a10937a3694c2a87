namespace ShopPlanner.Web.Fields;

/// <summary>Does what was asked of a page that keeps steps, one after another: each begins when the page shows what the one
/// before left, so that two quick presses are two steps.</summary>
internal sealed class StepQueue
{
    private Task last = Task.CompletedTask;
    private int refusals;

    /// <summary>Runs something when everything asked for before is done.</summary>
    /// <param name="work">Returns whether it was done.</param>
    public Task RunAsync(Func<Task<bool>> work) => last = AfterAsync(last, work);

    /// <summary>Runs a step that takes back what the page shows, or does it again. Behind something that was refused it is
    /// let go: the page shows something else by then than the hand that pressed meant.</summary>
    /// <param name="step">Returns whether it was done.</param>
    public Task StepAsync(Func<Task<bool>> step)
    {
        var asked = refusals;
        return RunAsync(() => asked == refusals ? step() : Task.FromResult(true));
    }

    private async Task AfterAsync(Task before, Func<Task<bool>> work)
    {
        // Its failure was told where it was asked for; here it only ends the waiting.
        await before.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing | ConfigureAwaitOptions.ContinueOnCapturedContext);
        var isDone = false;
        try
        {
            isDone = await work();
        }
        finally
        {
            if (!isDone)
                refusals++;
        }
    }
}
