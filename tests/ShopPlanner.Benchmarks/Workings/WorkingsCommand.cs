using System.Diagnostics;
using System.Globalization;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>workings [--seconds S] [--json FILE]</c>: works every form out again and again, with its defaults and everyday values, and
/// prints the warm mean. A form that gives no answer, or takes a millisecond or more, makes exit code 1.
/// </summary>
public static class WorkingsCommand
{
    private const double UsualSeconds = 0.2;
    private const int WarmUp = 200;
    private const double MostMicroseconds = 1000;

    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.ParseWithoutPath(words, ["seconds", "json"], []);
        using var lines = new JsonLines(options.Text("json"));
        Console.WriteLine($"{"working", -16}{"mean µs", 10}{"rounds", 10}");
        var faulty = false;
        foreach (var form in WorkingForms.All)
            faulty |= !Measure(form, options.Number("seconds", UsualSeconds), lines);
        return faulty ? 1 : 0;
    }

    private static bool Measure(WorkingForm form, double seconds, JsonLines lines)
    {
        var given = EverydayValues.Of(form);
        if (form.Run(given, LengthUnit.Inch) is { Answer: null } refused)
        {
            foreach (var fault in refused.Faults)
                Console.Error.WriteLine($"{form.Name}: {fault}");
            return false;
        }

        for (var round = 0; round < WarmUp; round++)
            form.Run(given, LengthUnit.Inch);
        var (rounds, clock) = (0, Stopwatch.StartNew());
        for (; clock.Elapsed.TotalSeconds < seconds; rounds++)
            form.Run(given, LengthUnit.Inch);
        var mean = clock.Elapsed.TotalMicroseconds / rounds;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{form.Name, -16}{mean, 10:0.0}{rounds, 10}"));
        lines.Write(
            new
            {
                Working = form.Name,
                MeanMicroseconds = mean,
                Rounds = rounds,
            }
        );
        return mean < MostMicroseconds;
    }
}
