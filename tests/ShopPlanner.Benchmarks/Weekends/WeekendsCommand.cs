using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Formats;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Verification;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>weekends PATH [--seconds S] [--take N] [--json FILE] [--verbose]</c>: schedules the requests of PATH, one a line with the
/// known optimum beside it (<c>expected.finish</c>). A run is faulty, exit code 1, when a schedule breaks a rule, goes below
/// a known
/// optimum or is said to be proven and is not.
/// </summary>
public static class WeekendsCommand
{
    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.Parse(words, ["seconds", "take", "json"], ["verbose"]);
        using var lines = new JsonLines(options.Text("json"));
        var instances = InstanceFiles.Read(options.Path).ToList();
        var every = Math.Max(1, options.Whole("take", 0) is > 0 and var take ? instances.Count / take : 1);
        var outcomes = new List<Outcome>();
        foreach (var instance in instances.Where((_, n) => n % every == 0))
        {
            var outcome = Measure(instance, options.Number("seconds", 30));
            outcomes.Add(outcome);
            lines.Write(outcome);
            if (options.Has("verbose"))
                Console.WriteLine(outcome.ToString());
        }

        Summarize(outcomes);
        return outcomes.Exists(one => one.Faults > 0) ? 1 : 0;
    }

    private static Outcome Measure(JsonElement instance, double seconds)
    {
        var (request, faults) = ScheduleRequestJson.Read(Encoding.UTF8.GetBytes(instance.GetRawText()));
        if (request is null)
            throw new UsageException(string.Join(Environment.NewLine, faults));
        double? expected = instance.TryGetProperty("expected", out var known) ? InstanceFiles.FirstNumber(known, "finish") : null;
        var clock = Stopwatch.StartNew();
        var schedule = SchedulePlanner.Plan(request with { Seconds = seconds }, new ScheduleControl());
        var elapsed = clock.Elapsed.TotalSeconds;
        var wrong = ScheduleVerifier.Check(request, schedule);
        foreach (var fault in wrong)
            Console.Error.WriteLine($"{InstanceFiles.Name(instance)}: {fault}");
        var isBelow = schedule.Finish < expected;
        var isWronglyProven = schedule.Status == ScheduleStatus.Proven && schedule.Finish != expected;
        return new Outcome(
            InstanceFiles.Name(instance),
            schedule.Finish,
            schedule.Bound,
            expected,
            schedule.Status == ScheduleStatus.Proven,
            elapsed,
            wrong.Length + (expected is not null && (isBelow || isWronglyProven) ? 1 : 0)
        );
    }

    private static void Summarize(List<Outcome> outcomes)
    {
        var times = outcomes.Select(one => one.Seconds).Order().ToList();
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{outcomes.Count} requests, {outcomes.Count(one => one.Finish == one.Expected)} at the known optimum, "
                    + $"{outcomes.Count(one => one.IsProven)} proven, median {times[times.Count / 2]:0.000} s, "
                    + $"9 of 10 within {times[times.Count * 9 / 10]:0.000} s, slowest {times[^1]:0.000} s, "
                    + $"{outcomes.Count(one => one.Faults > 0)} faulty"
            )
        );
    }

    // A line of the results.
    private sealed record Outcome(
        string Name,
        int? Finish,
        int? Bound,
        double? Expected,
        bool IsProven,
        double Seconds,
        int Faults
    );
}
