using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Shared;

/// <summary>A short note about what was just done, or was not.</summary>
/// <param name="Text">What it says.</param>
/// <param name="IsWrong">Whether something was not done.</param>
/// <param name="Undo">Takes back what was done; null where it cannot be.</param>
public sealed record Notice(string Text, bool IsWrong = false, Func<Task>? Undo = null)
{
    /// <summary>How long it stays.</summary>
    public TimeSpan Stay => Undo is null && !IsWrong ? TimeSpan.FromSeconds(6) : TimeSpan.FromSeconds(15);
}

/// <summary>
/// The notice of a page: one at a time, the newest. It leaves by itself, and stays while the pointer or the focus is on it. What
/// can be undone offers it there instead of asking beforehand.
/// </summary>
public sealed class Notices(TimeProvider clock, ILogger<Notices> log) : IDisposable
{
    private readonly Lock turn = new();
    private ITimer? timer;
    private Notice? now;

    /// <summary>Raised, on any thread, when another notice is shown or none.</summary>
    public event Action? Changed;

    /// <summary>The notice that is shown; null when there is none.</summary>
    public Notice? Now
    {
        get
        {
            lock (turn)
                return now;
        }
    }

    /// <summary>Says that something was done.</summary>
    public void Say(string text) => Show(new Notice(text));

    /// <summary>Says that something was done and offers to take it back.</summary>
    public void SayWithUndo(string text, Func<Task> undo) => Show(new Notice(text, Undo: undo));

    /// <summary>Says why something was not done.</summary>
    public void SayWrong(ImmutableArray<Fault> faults) =>
        Show(new Notice(string.Join(' ', faults.Take(3).Select(FaultWords.Line)), IsWrong: true));

    /// <summary>Takes the notice away.</summary>
    public void Close() => Show(null);

    /// <summary>Keeps the notice until it is let go: somebody is about to use it.</summary>
    public void Hold()
    {
        lock (turn)
            timer?.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }

    /// <summary>Lets the notice go its time again.</summary>
    public void LetGo()
    {
        lock (turn)
            if (now is { } notice)
                timer?.Change(notice.Stay, Timeout.InfiniteTimeSpan);
    }

    /// <summary>Takes back what the notice tells of, and says so.</summary>
    public async Task UndoAsync()
    {
        if (Now is not { Undo: { } undo })
            return;
        Close();
        try
        {
            await undo();
        }
        catch (Exception problem)
        {
            log.LogError(problem, "A step was not undone");
            SayWrong([Fault.Of("", "", "that was not undone. Reload the page and check; the program's log says why")]);
        }

        if (Now is null)
            Say("Undone.");
    }

    /// <inheritdoc />
    public void Dispose()
    {
        lock (turn)
            timer?.Dispose();
    }

    private void Show(Notice? notice)
    {
        lock (turn)
        {
            timer?.Dispose();
            now = notice;
            timer = notice is null ? null : clock.CreateTimer(_ => Leave(notice), null, notice.Stay, Timeout.InfiniteTimeSpan);
        }

        Changed?.Invoke();
    }

    private void Leave(Notice notice)
    {
        if (ReferenceEquals(Now, notice))
            Close();
    }
}
