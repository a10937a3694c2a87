using Microsoft.AspNetCore.Components;

namespace ShopPlanner.Web.Frame;

/// <summary>
/// A component that is called from outside the page's own events: by a script, an event of a service, the address. Nobody waits
/// for such a call, so a failure in it is handed to the page (<see cref="Mishap"/>), which shows it.
/// </summary>
public abstract class HeardComponent : ComponentBase
{
    /// <summary>Does work that nobody waits for, in the page's own turn.</summary>
    // Without a task: what even the page cannot be told reaches the live connection, which ends with its own notice.
    protected async void Hear(Func<Task> work) => await HearAsync(work);

    /// <inheritdoc cref="Hear(Func{Task})" />
    protected void Hear(Action work) =>
        Hear(() =>
        {
            work();
            return Task.CompletedTask;
        });

    /// <summary>Does what a script asked for. The script learns that the call was taken; the page shows a failure.</summary>
    protected async Task HearAsync(Func<Task> work)
    {
        try
        {
            await InvokeAsync(work);
        }
        catch (Exception problem)
        {
            await DispatchExceptionAsync(problem);
        }
    }
}
