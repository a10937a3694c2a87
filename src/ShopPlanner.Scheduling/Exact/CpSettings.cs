using System.Globalization;

namespace ShopPlanner.Scheduling.Exact;

/// <summary>How the constraint solver is set.</summary>
internal static class CpSettings
{
    // Left to itself the solver takes the program's answer to Ctrl-C away for good.
    private const string KeepsInterrupt = "catch_sigint_signal:false";

    /// <summary>A repeatable search, as long as no clock ends it: its ways take turns in one thread, each always in the same
    /// order.</summary>
    public static string Repeatable(double seconds, double work, int seed) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{KeepsInterrupt},num_workers:1,random_seed:{seed},relative_gap_limit:0,"
                + $"max_time_in_seconds:{seconds:0.###},max_deterministic_time:{work:0.###}"
        );
}
