using System.Globalization;
using ShopPlanner.Cutting;
using Spectre.Console;

namespace ShopPlanner.Cli.Cut;

/// <summary>Cost, bound and gap while the search runs, on standard error and only when a person sits there.</summary>
internal static class LiveLine
{
    private static readonly Lazy<IAnsiConsole> Screen = new(() =>
        AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) })
    );

    private static bool IsWatched => !Console.IsErrorRedirected;

    /// <summary>Makes the plan with the line shown meanwhile.</summary>
    public static CutPlan While(CutRequest request, Func<CutRequest, Action<SearchProgress>?, CutPlan> plan) =>
        IsWatched
            ? Screen
                .Value.Live(new Text("planning"))
                .AutoClear(true)
                .Start(live => plan(request, progress => Show(live, progress)))
            : plan(request, null);

    /// <summary>One last line.</summary>
    public static void Say(string line)
    {
        if (IsWatched)
            Screen.Value.WriteLine(line);
    }

    // Progress comes from any thread.
    private static void Show(LiveDisplayContext live, SearchProgress progress)
    {
        lock (live)
            live.UpdateTarget(new Text(Line(progress)));
    }

    private static string Line(SearchProgress progress) =>
        progress.Cost is { } cost
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{progress.Elapsed.TotalSeconds:0} s  cost {cost}, none below {progress.Bound}, gap "
                    + $"{Gap(cost.Amount, progress.Bound.Amount):0.0}%"
            )
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{progress.Elapsed.TotalSeconds:0} s  no plan yet, none below {progress.Bound}"
            );

    private static decimal Gap(decimal cost, decimal bound) => cost > 0 ? 100 * (cost - bound) / cost : 0;
}
