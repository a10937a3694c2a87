using System.Globalization;

namespace ShopPlanner.Cutting.Steering;

/// <summary>How the constraint solver is set.</summary>
internal static class CpParameters
{
    /// <summary>Left to itself the solver takes the program's answer to Ctrl-C away for good.</summary>
    public const string KeepsInterrupt = "catch_sigint_signal:false";

    /// <summary>A repeatable search: one worker, so much work, and a clock for a loaded machine.</summary>
    public static string Repeatable(double work, double seconds) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{KeepsInterrupt},num_workers:1,random_seed:1,relative_gap_limit:0,"
                + $"max_deterministic_time:{work:0.###},max_time_in_seconds:{seconds:0.###}"
        );
}
