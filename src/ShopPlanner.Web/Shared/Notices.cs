using System.Collections.Immutable;
using MudBlazor;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Shared;

/// <summary>Short notes at the foot of the page. What can be taken back offers it there instead of asking beforehand.</summary>
public sealed class Notices(ISnackbar bar, ILogger<Notices> log)
{
    private const int ShownMilliseconds = 6_000,
        UndoMilliseconds = 15_000;

    /// <summary>Says that something was done.</summary>
    public void Say(string text) => bar.Add(text, Severity.Normal, Calm);

    /// <summary>Says that something was done and offers to take it back.</summary>
    public void SayWithUndo(string text, Func<Task> undo) =>
        bar.Add(
            text,
            Severity.Normal,
            options =>
            {
                Calm(options);
                options.VisibleStateDuration = UndoMilliseconds;
                options.Action = "Undo";
                options.OnClick = _ => TakeBackAsync(undo);
            }
        );

    /// <summary>Says why something was not done.</summary>
    public void SayWrong(ImmutableArray<Fault> faults) =>
        bar.Add(
            string.Join(' ', faults.Take(3).Select(FaultWords.Line)),
            Severity.Error,
            options =>
            {
                Calm(options);
                options.VisibleStateDuration = UndoMilliseconds;
            }
        );

    // The component library waits for no answer here: a failure would be heard by nobody.
    private async Task TakeBackAsync(Func<Task> undo)
    {
        try
        {
            await undo();
        }
        catch (Exception problem)
        {
            log.LogError(problem, "A step was not taken back");
            SayWrong([Fault.Of("", "", "that was not undone. Open the page again and check; the program's log says why")]);
        }
    }

    private static void Calm(SnackbarOptions options)
    {
        options.VisibleStateDuration = ShownMilliseconds;
        options.ShowTransitionDuration = options.HideTransitionDuration = 120;
        options.HideIcon = true;
        options.DuplicatesBehavior = SnackbarDuplicatesBehavior.Allow;
    }
}
