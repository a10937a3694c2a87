using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Saves an idea when the hand rests, one save at a time.</summary>
public sealed class IdeaSaving
{
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(500);

    private readonly IIdeaService ideas;
    private readonly IdeaDraft draft;
    private readonly StepQueue steps = new();
    private string? title;
    private TaskCompletionSource<FieldAnswer> next = new();
    private int stamp;
    private Task running = Task.CompletedTask;

    /// <summary>Saves that draft as that project's.</summary>
    public IdeaSaving(IIdeaService ideas, IdeaView stored, IdeaDraft draft) =>
        (this.ideas, Stored, this.draft) = (ideas, stored, draft);

    /// <summary>As it was stored last.</summary>
    public IdeaView Stored { get; private set; }

    /// <summary>Raised when it could not be saved.</summary>
    public Action<ImmutableArray<Fault>> Refused { get; init; } = _ => { };

    /// <summary>Raised when a save that was put off is done.</summary>
    public Action Changed { get; init; } = () => { };

    /// <summary>Whether something is not stored.</summary>
    public bool IsOpen => title is not null || !running.IsCompleted;

    /// <summary>Notes a change and saves it when no other follows.</summary>
    /// <returns>What became of the save that it went with.</returns>
    public async Task<FieldAnswer> SoonAsync(string what)
    {
        // Another thing is touched: what was changed before is a step of its own.
        if (title is not null && title != what)
            await NowAsync();
        title = what;
        var (mine, saved) = (++stamp, next.Task);
        await Task.Delay(Rest);
        if (mine == stamp)
        {
            await NowAsync();
            Changed();
        }

        return await saved;
    }

    /// <summary>Saves at once what is open, after a save that is under way.</summary>
    public async Task NowAsync()
    {
        while (IsOpen)
        {
            if (running.IsCompleted)
                running = SaveAsync();
            await running;
        }
    }

    private async Task SaveAsync()
    {
        var (what, saved) = (title!, next);
        (title, next) = (null, new());
        try
        {
            var outcome = await ideas.SaveAsync(Stored.ProjectId, draft.Idea, Stored.Version, what);
            await SettleAsync(outcome);
            saved.SetResult(Answer(outcome.Kind));
        }
        catch (Exception problem)
        {
            saved.SetException(problem);
            throw;
        }
    }

    private static FieldAnswer Answer(OutcomeKind kind) =>
        kind switch
        {
            OutcomeKind.Ok => FieldAnswer.Stored,
            OutcomeKind.Conflict => FieldAnswer.Conflict,
            _ => FieldAnswer.Refused,
        };

    /// <summary>Takes the last step back; what is not stored yet is stored first.</summary>
    /// <returns>What became of it; null where there was nothing to take back.</returns>
    public Task<FieldAnswer?> UndoAsync() => StepAsync(() => Stored.Undo, ideas.UndoAsync);

    /// <summary>Does it again.</summary>
    /// <returns>What became of it; null where there was nothing to do again.</returns>
    public Task<FieldAnswer?> RedoAsync() => StepAsync(() => Stored.Redo, ideas.RedoAsync);

    // One at a time: the version that a step is asked for with is known only when the one before is done.
    private async Task<FieldAnswer?> StepAsync(
        Func<string?> next,
        Func<Guid, int, CancellationToken, Task<Outcome<IdeaView>>> step
    )
    {
        FieldAnswer? answer = null;
        await steps.StepAsync(async () =>
        {
            await NowAsync();
            answer = next() is null ? null : await MoveAsync(step);
            return answer is null or FieldAnswer.Stored;
        });
        return answer;
    }

    private async Task<FieldAnswer> MoveAsync(Func<Guid, int, CancellationToken, Task<Outcome<IdeaView>>> step)
    {
        var outcome = await step(Stored.ProjectId, Stored.Version, CancellationToken.None);
        if (outcome.Value is { } view)
            draft.Take(view.Idea);
        await SettleAsync(outcome);
        return Answer(outcome.Kind);
    }

    // After a conflict what stands there now is shown.
    private async Task SettleAsync(Outcome<IdeaView> outcome)
    {
        if (outcome.Value is { } view)
            Stored = view;
        else if (outcome.Kind == OutcomeKind.Conflict && await ideas.GetAsync(Stored.ProjectId) is { } now)
        {
            Stored = now;
            title = null;
            draft.Take(now.Idea);
        }

        if (outcome.Kind is not (OutcomeKind.Ok or OutcomeKind.Conflict))
            Refused(outcome.Faults);
    }
}
