using System.Globalization;

namespace ShopPlanner.Scheduling.Exact;

/// <summary>How the constraint solver is set.</summary>
internal static class CpSettings
{
    // Left to itself the solver takes the program's answer to Ctrl-C away for good.
    private const string KeepsInterrupt = "catch_sigint_signal:false";

    /// <summary>One worker with a seed: the same search every time, as long as no clock ends it.</summary>
    /// <param name="seconds">By the clock.</param>
    /// <param name="work">As the solver counts its own, about seconds.</param>
    /// <param name="seed">Where its random numbers start.</param>
    public static string Repeatable(double seconds, double work, int seed) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{KeepsInterrupt},num_workers:1,random_seed:{seed},relative_gap_limit:0,"
                + $"max_time_in_seconds:{seconds:0.###},max_deterministic_time:{work:0.###}"
        );
}
